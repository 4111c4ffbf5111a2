package lanewarden.audit.press;

import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PageMode;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageXYZDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;

/**
 * The bookmarks of a document.
 *
 * @param anchors where each leads, in their order
 */
record Bookmarks(Map<String, String> anchors) {

  /** Puts them into the document. */
  void into(PDDocument document, Map<String, Sheets.Place> places) {
    PDDocumentOutline outline = new PDDocumentOutline();
    anchors.forEach(
        (name, anchor) -> {
          Sheets.Place place = places.get(anchor);
          if (place == null) {
            throw new IllegalStateException("A bookmark leads nowhere: " + name + ".");
          }
          PDPageXYZDestination point = new PDPageXYZDestination();
          point.setPage(place.sheet().page());
          point.setLeft(0);
          point.setTop(Math.round(place.sheet().fromBelow(place.y())));
          PDOutlineItem item = new PDOutlineItem();
          item.setTitle(name);
          item.setDestination(point);
          outline.addLast(item);
        });
    outline.openNode();
    document.getDocumentCatalog().setDocumentOutline(outline);
    document.getDocumentCatalog().setPageMode(PageMode.USE_OUTLINES);
  }
}
