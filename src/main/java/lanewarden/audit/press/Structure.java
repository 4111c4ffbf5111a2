package lanewarden.audit.press;

import java.util.List;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkInfo;

/**
 * The structure of a document: one tree of tags, and the way back from every piece of a page to its
 * tag (ISO 32000-1, 14.7). Owned by one thread.
 */
final class Structure {
  private final COSDictionary root = new COSDictionary();
  private final Tag document = Tag.document(root);

  /** The tag that all others are inside of. */
  Tag document() {
    return document;
  }

  /** Puts it into the document, when all of its pages are drawn. */
  void into(PDDocument pdf, List<Sheet> sheets) {
    COSArray wayBack = new COSArray();
    for (int i = 0; i < sheets.size(); i++) {
      sheets.get(i).page().setStructParents(i);
      sheets.get(i).page().getCOSObject().setName("Tabs", "S");
      wayBack.add(COSInteger.get(i));
      wayBack.add(sheets.get(i).pieces());
    }
    COSDictionary numbers = new COSDictionary();
    numbers.setItem(COSName.NUMS, wayBack);
    root.setName(COSName.TYPE, "StructTreeRoot");
    root.setItem(COSName.K, document.element());
    root.setItem(COSName.PARENT_TREE, numbers);
    root.setInt(COSName.PARENT_TREE_NEXT_KEY, sheets.size());
    pdf.getDocumentCatalog().getCOSObject().setItem(COSName.STRUCT_TREE_ROOT, root);
    PDMarkInfo marked = new PDMarkInfo();
    marked.setMarked(true);
    pdf.getDocumentCatalog().setMarkInfo(marked);
  }
}
