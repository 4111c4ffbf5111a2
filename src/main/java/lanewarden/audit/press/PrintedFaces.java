package lanewarden.audit.press;

import java.io.IOException;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDResources;

/**
 * Every cut of the typeface in one document, embedded once; a page calls each by the name of its
 * cut. Owned by one thread.
 */
final class PrintedFaces {
  private final Map<Cut, PrintedFace> faces = new EnumMap<>(Cut.class);
  private final PDResources resources = new PDResources();

  PrintedFaces(Typefaces typefaces, PDDocument document) throws IOException {
    for (Cut cut : Cut.values()) {
      PrintedFace face = new PrintedFace(typefaces.of(cut), document);
      faces.put(cut, face);
      resources.put(COSName.getPDFName(cut.name()), face.font());
    }
  }

  PrintedFace of(Cut cut) {
    return Objects.requireNonNull(faces.get(cut));
  }

  /** What every page needs. */
  PDResources resources() {
    return resources;
  }

  /** Puts what was used into the document; nothing may be written after this. */
  void finish() throws IOException {
    for (PrintedFace face : faces.values()) {
      face.finish();
    }
  }
}
