package lanewarden.audit;

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

/**
 * A TrueType file that comes with the program, so that a report needs no font of the machine.
 *
 * <p>Owned by one thread.
 */
final class Typeface implements AutoCloseable {
  private final TrueTypeFont font;
  private final CmapLookup glyphs;
  private final Map<Integer, Boolean> covered = new HashMap<>();

  private Typeface(TrueTypeFont font) throws IOException {
    this.font = font;
    this.glyphs = font.getUnicodeCmapLookup();
  }

  /** The typeface of this cut. */
  static Typeface open(Cut cut) throws IOException {
    try (InputStream bytes = cut.bytes()) {
      return new Typeface(new TTFParser().parse(new RandomAccessReadBuffer(bytes)));
    }
  }

  /** Whether there is a picture of this character. */
  boolean covers(int character) {
    return covered.computeIfAbsent(character, c -> glyphs.getGlyphId(c) != 0);
  }

  /** The outline of a line of text, in ems: it starts at the origin and y grows downwards. */
  GeneralPath outline(String text) throws IOException {
    GeneralPath line = new GeneralPath();
    double em = font.getUnitsPerEm();
    double x = 0;
    for (int character : text.codePoints().toArray()) {
      int glyph = glyphs.getGlyphId(character);
      GlyphData shape = font.getGlyph().getGlyph(glyph);
      if (shape != null) {
        AffineTransform place = new AffineTransform(1 / em, 0, 0, -1 / em, x, 0);
        line.append(shape.getPath().getPathIterator(place), false);
      }
      x += font.getAdvanceWidth(glyph) / em;
    }
    return line;
  }

  /** The width of a line of text in ems. */
  double width(String text) throws IOException {
    double units = 0;
    for (int character : text.codePoints().toArray()) {
      units += font.getAdvanceWidth(glyphs.getGlyphId(character));
    }
    return units / font.getUnitsPerEm();
  }

  @Override
  public void close() throws IOException {
    font.close();
  }
}
