package lanewarden.audit.press;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import lanewarden.audit.press.Style.Sides;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.jspecify.annotations.Nullable;

/**
 * A page while it is drawn; points, from the upper left corner, y downwards.
 *
 * <p>Words belong to a tag; rules and frames are ornaments, which nobody needs to hear, and are
 * drawn last. Owned by one thread.
 */
final class Sheet {
  private final PDPage page;
  private final float height;
  private final PrintedFaces faces;
  private final List<PDStream> finished = new ArrayList<>();
  private final StringBuilder ornaments = new StringBuilder();
  private final COSArray pieces = new COSArray();
  private StringBuilder words = new StringBuilder();
  private @Nullable Tag open;
  private boolean repeating;
  private @Nullable Lettering before;

  Sheet(float width, float height, PrintedFaces faces) {
    this.page = new PDPage(new PDRectangle(width, height));
    this.height = height;
    this.faces = faces;
    page.setResources(faces.resources());
  }

  PDPage page() {
    return page;
  }

  /** The tags of its pieces, in their order. */
  COSArray pieces() {
    return pieces;
  }

  /** What is drawn from here on belongs to this tag. */
  void mark(Tag tag) {
    if (repeating || tag.equals(open)) {
      return;
    }
    endMark();
    open = tag;
    words.append('/').append(tag.type()).append(" <</MCID ").append(pieces.size());
    words.append(">> BDC\n");
    tag.holds(page, pieces.size());
    pieces.add(tag.element());
  }

  private void endMark() {
    if (open != null) {
      words.append("EMC\n");
      open = null;
    }
  }

  /** A drawing that may fail. */
  interface Work {
    void run() throws IOException;
  }

  /** What is drawn in this work was said before, or is said on every page: it has no tag. */
  void repeat(Work work) throws IOException {
    endMark();
    repeating = true;
    words.append("/Artifact <</Type /Pagination>> BDC\n");
    work.run();
    words.append("EMC\n");
    repeating = false;
  }

  /** A line of text from this point of its base line on. */
  void text(String text, Lettering letters, float x, float y) throws IOException {
    words.append("BT ");
    if (before == null || before.cut() != letters.cut() || before.size() != letters.size()) {
      words.append('/').append(letters.cut().name()).append(' ');
      put(words, letters.size()).append("Tf ");
    }
    if (before == null || before.colour() != letters.colour()) {
      colour(words, letters.colour()).append("rg ");
    }
    before = letters;
    words.append("1 0 0 1 ");
    put(put(words, x), height - y).append("Tm ");
    faces.of(letters.cut()).write(text, words);
    words.append(" Tj ET\n");
  }

  /** A straight line. */
  void rule(float x1, float y1, float x2, float y2, float width, int colour) {
    colour(ornaments, colour).append("RG ");
    put(ornaments, width).append("w ");
    put(put(ornaments, x1), height - y1).append("m ");
    put(put(ornaments, x2), height - y2).append("l S\n");
  }

  /** The borders of a box between these corners, as far as it has any. */
  void frame(Sides border, int colour, float x1, float y1, float x2, float y2) {
    if (border.top() > 0) {
      float y = y1 + border.top() / 2;
      rule(x1, y, x2, y, border.top(), colour);
    }
    if (border.bottom() > 0) {
      float y = y2 - border.bottom() / 2;
      rule(x1, y, x2, y, border.bottom(), colour);
    }
    if (border.left() > 0) {
      float x = x1 + border.left() / 2;
      rule(x, y1, x, y2, border.left(), colour);
    }
    if (border.right() > 0) {
      float x = x2 - border.right() / 2;
      rule(x, y1, x, y2, border.right(), colour);
    }
  }

  /** A picture in PDF's own words, in units of its own with y downwards. */
  void picture(Tag tag, String strokes, float x, float y, float scale) {
    mark(tag);
    words.append("q ").append(scale).append(" 0 0 ").append(-scale).append(' ');
    put(put(words, x), height - y).append("cm\n");
    words.append(strokes).append("Q\n");
  }

  /** A height on this page as PDF counts it: from below. */
  float fromBelow(float y) {
    return height - y;
  }

  private static StringBuilder colour(StringBuilder out, int colour) {
    for (int shift = 16; shift >= 0; shift -= 8) {
      put(out, (colour >> shift & 0xFF) / 255.0);
    }
    return out;
  }

  private static StringBuilder put(StringBuilder out, double number) {
    return Drawing.number(number, out).append(' ');
  }

  /** Puts what was drawn since the last time into the document. */
  void finish(PDDocument document) throws IOException {
    endMark();
    if (ornaments.length() > 0) {
      words.append("/Artifact BMC\n").append(ornaments).append("EMC\n");
      ornaments.setLength(0);
    }
    PDStream stream = new PDStream(document);
    try (OutputStream out = stream.createOutputStream(COSName.FLATE_DECODE)) {
      out.write(words.toString().getBytes(StandardCharsets.US_ASCII));
    }
    finished.add(stream);
    page.setContents(finished);
    words = new StringBuilder();
    before = null;
  }
}
