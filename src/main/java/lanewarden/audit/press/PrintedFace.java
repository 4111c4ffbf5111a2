package lanewarden.audit.press;

import java.io.IOException;
import java.util.BitSet;
import lanewarden.audit.press.Typeface.Glyph;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * A typeface in one document: how wide its words are, and how they are written into a page.
 *
 * <p>Owned by one thread.
 */
final class PrintedFace {
  private static final String HEX = "0123456789ABCDEF";

  private final Typeface face;
  private final PDType0Font font;
  private final BitSet used = new BitSet();
  private final double rise;
  private final double height;

  PrintedFace(Typeface face, PDDocument document) throws IOException {
    this.face = face;
    this.font = face.in(document);
    this.rise = face.ascent();
    this.height = face.ascent() + face.descent();
  }

  /** How wide a character is, in ems. */
  double width(int character) throws IOException {
    return face.glyph(character).width();
  }

  /** From the top of a line to its base line, in points. */
  float rise(Lettering letters) {
    return (float) ((letters.lineHeight() - height * letters.size()) / 2 + rise * letters.size());
  }

  /** Writes a text as the numbers of its glyphs, which is how the font is encoded. */
  void write(String text, StringBuilder out) throws IOException {
    out.append('<');
    for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
      int character = text.codePointAt(i);
      Glyph glyph = face.glyph(character);
      if (!used.get(character)) {
        used.set(character);
        font.addToSubset(character);
      }
      for (int shift = 12; shift >= 0; shift -= 4) {
        out.append(HEX.charAt(glyph.number() >> shift & 0xF));
      }
    }
    out.append('>');
  }

  /** Puts what was used into the document; nothing may be written after this. */
  void finish() throws IOException {
    font.subset();
  }

  /** The font, for the resources of the pages. */
  PDType0Font font() {
    return font;
  }
}
