package lanewarden.audit.press;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDMarkedContent;
import org.apache.pdfbox.text.PDFMarkedContentExtractor;
import org.apache.pdfbox.text.TextPosition;

/**
 * A tag of a PDF with what is inside it, as a screen reader finds it: through the structure tree to
 * the pieces of the pages, whatever stands where on them.
 *
 * @param scope which cells a heading stands for; empty for other tags
 * @param text its own, without that of the tags inside
 */
public record TaggedText(String type, String scope, String text, List<TaggedText> inside) {

  /** The tag of the whole document. */
  public static TaggedText of(Path pdf) throws Exception {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      Map<COSDictionary, Map<Integer, String>> pieces = new HashMap<>();
      for (PDPage page : document.getPages()) {
        pieces.put(page.getCOSObject(), pieces(page));
      }
      COSDictionary root = document.getDocumentCatalog().getStructureTreeRoot().getCOSObject();
      return of((COSDictionary) value(root.getDictionaryObject(COSName.K)), pieces);
    }
  }

  private static COSBase value(COSBase base) {
    return base instanceof COSObject reference ? reference.getObject() : base;
  }

  private static Map<Integer, String> pieces(PDPage page) throws Exception {
    PDFMarkedContentExtractor extractor = new PDFMarkedContentExtractor();
    extractor.setSuppressDuplicateOverlappingText(false);
    extractor.processPage(page);
    Map<Integer, String> pieces = new HashMap<>();
    for (PDMarkedContent marked : extractor.getMarkedContents()) {
      StringBuilder text = new StringBuilder();
      for (Object one : marked.getContents()) {
        if (one instanceof TextPosition letter) {
          text.append(letter.getUnicode());
        }
      }
      pieces.put(marked.getMCID(), text.toString());
    }
    return pieces;
  }

  private static TaggedText of(
      COSDictionary element, Map<COSDictionary, Map<Integer, String>> pieces) {
    StringBuilder text = new StringBuilder();
    List<TaggedText> inside = new ArrayList<>();
    COSBase kids = value(element.getDictionaryObject(COSName.K));
    for (COSBase kid : kids instanceof COSArray many ? many.toList() : List.of(kids)) {
      COSBase one = value(kid);
      if (one instanceof COSInteger number) {
        text.append(pieces.get(element.getCOSDictionary(COSName.PG)).get(number.intValue()));
      } else if (one instanceof COSDictionary other && other.containsKey(COSName.MCID)) {
        text.append(pieces.get(other.getCOSDictionary(COSName.PG)).get(other.getInt(COSName.MCID)));
      } else {
        inside.add(of((COSDictionary) one, pieces));
      }
    }
    COSDictionary attributes = element.getCOSDictionary(COSName.A);
    String scope = attributes == null ? null : attributes.getNameAsString("Scope");
    return new TaggedText(
        element.getNameAsString(COSName.S),
        scope == null ? "" : scope,
        text.toString().strip(),
        inside);
  }

  /** All tags of a type in it, in their order. */
  public List<TaggedText> all(String wanted) {
    List<TaggedText> found = new ArrayList<>();
    if (type.equals(wanted)) {
      found.add(this);
    }
    inside.forEach(one -> found.addAll(one.all(wanted)));
    return found;
  }
}
