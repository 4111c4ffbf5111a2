package lanewarden.audit.press;

import java.io.IOException;
import java.io.OutputStream;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.PageMode;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;

/**
 * A file that travels inside a report (an associated file of ISO 19005-3, 6.8).
 *
 * @param name as whoever takes it out saves it
 * @param type its media type
 * @param description for whoever sees the list of enclosures
 * @param relation what it is to the report
 */
public record Enclosure(
    String name, String type, String description, Relation relation, Packed content) {

  /** What an enclosure is to its report (ISO 32000-2, table 43). */
  public enum Relation {
    /** What the report was made from. */
    SOURCE("Source"),
    /** What it was judged by. */
    DATA("Data");

    private final String word;

    Relation(String word) {
      this.word = word;
    }
  }

  private static final COSName ASSOCIATED = COSName.getPDFName("AF");
  private static final COSName RELATION = COSName.getPDFName("AFRelationship");

  /** Puts the files into a document, associated with it as a whole. */
  static void into(PDDocument document, List<Enclosure> enclosures, Instant made)
      throws IOException {
    if (enclosures.isEmpty()) {
      return;
    }
    Map<String, PDComplexFileSpecification> byName = new LinkedHashMap<>();
    COSArray associated = new COSArray();
    Calendar time = GregorianCalendar.from(made.atZone(ZoneOffset.UTC));
    for (Enclosure enclosure : enclosures) {
      PDComplexFileSpecification file = enclosure.file(document, time);
      byName.put(enclosure.name, file);
      associated.add(file);
    }
    PDEmbeddedFilesNameTreeNode tree = new PDEmbeddedFilesNameTreeNode();
    tree.setNames(byName);
    PDDocumentNameDictionary names = new PDDocumentNameDictionary(document.getDocumentCatalog());
    names.setEmbeddedFiles(tree);
    document.getDocumentCatalog().setNames(names);
    document.getDocumentCatalog().getCOSObject().setItem(ASSOCIATED, associated);
    document.getDocumentCatalog().setPageMode(PageMode.USE_OUTLINES);
  }

  private PDComplexFileSpecification file(PDDocument document, Calendar time) throws IOException {
    PDEmbeddedFile stream = new PDEmbeddedFile(document);
    try (OutputStream raw = stream.getCOSObject().createRawOutputStream()) {
      raw.write(content.deflated());
    }
    stream.getCOSObject().setItem(COSName.FILTER, COSName.FLATE_DECODE);
    stream.setSubtype(type);
    stream.setSize(Math.toIntExact(content.size()));
    stream.setCreationDate(time);
    stream.setModDate(time);
    PDComplexFileSpecification file = new PDComplexFileSpecification();
    file.setFile(name);
    file.setFileUnicode(name);
    file.setFileDescription(description);
    file.setEmbeddedFile(stream);
    file.setEmbeddedFileUnicode(stream);
    file.getCOSObject().setName(RELATION, relation.word);
    return file;
  }
}
