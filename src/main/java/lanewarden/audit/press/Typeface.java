package lanewarden.audit.press;

import java.awt.geom.AffineTransform;
import java.awt.geom.GeneralPath;
import java.io.IOException;
import java.io.InputStream;
import java.util.HashMap;
import java.util.Map;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * A TrueType file that comes with the program, so that a report needs no font of the machine.
 *
 * <p>Owned by one thread.
 */
public final class Typeface implements AutoCloseable {
  private final TrueTypeFont font;
  private final CmapLookup characters;
  private final Map<Integer, Glyph> glyphs = new HashMap<>();

  /**
   * The picture of a character.
   *
   * @param number in the file; 0 where there is none
   * @param width in ems
   */
  record Glyph(int number, double width) {}

  private Typeface(TrueTypeFont font) throws IOException {
    this.font = font;
    this.characters = font.getUnicodeCmapLookup();
  }

  /** The typeface of this cut. */
  public static Typeface open(Cut cut) throws IOException {
    try (InputStream bytes = cut.bytes()) {
      TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(bytes));
      // Ligatures would make two letters one that cannot be searched for.
      font.setEnableGsub(false);
      return new Typeface(font);
    }
  }

  /** The picture of this character. */
  Glyph glyph(int character) throws IOException {
    Glyph known = glyphs.get(character);
    if (known == null) {
      int number = characters.getGlyphId(character);
      known = new Glyph(number, (double) font.getAdvanceWidth(number) / font.getUnitsPerEm());
      glyphs.put(character, known);
    }
    return known;
  }

  /** Whether there is a picture of this character. */
  boolean covers(int character) {
    return characters.getGlyphId(character) != 0;
  }

  /** The outline of a line of text, in ems: it starts at the origin and y grows downwards. */
  GeneralPath outline(String text) throws IOException {
    GeneralPath line = new GeneralPath();
    double em = font.getUnitsPerEm();
    double x = 0;
    for (int character : text.codePoints().toArray()) {
      Glyph glyph = glyph(character);
      GlyphData shape = font.getGlyph().getGlyph(glyph.number());
      if (shape != null) {
        AffineTransform place = new AffineTransform(1 / em, 0, 0, -1 / em, x, 0);
        line.append(shape.getPath().getPathIterator(place), false);
      }
      x += glyph.width();
    }
    return line;
  }

  /** The width of a line of text in ems. */
  double width(String text) throws IOException {
    double ems = 0;
    for (int character : text.codePoints().toArray()) {
      ems += glyph(character).width();
    }
    return ems;
  }

  /** The typeface as a font of a document; only what is used of it gets into the file. */
  PDType0Font in(PDDocument document) throws IOException {
    return PDType0Font.load(document, font, true);
  }

  /** How far letters reach above the base line, in ems. */
  double ascent() throws IOException {
    return (double) font.getHorizontalHeader().getAscender() / font.getUnitsPerEm();
  }

  /** How far letters reach below the base line, in ems. */
  double descent() throws IOException {
    return (double) -font.getHorizontalHeader().getDescender() / font.getUnitsPerEm();
  }

  @Override
  public void close() throws IOException {
    font.close();
  }
}
