package lanewarden.audit.press;

import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import java.io.IOException;

/**
 * A picture in SVG, written stroke by stroke.
 *
 * <p>Letters are drawn as outlines of the program's own typeface: the drawing library would ask the
 * machine for fonts, and a bare machine has none. What the picture says stands in its alternative
 * text too. Owned by one thread.
 */
public final class Drawing {
  private static final long HUNDRED = 100;
  private static final String ELLIPSIS = "…";

  /** As wide as the text of an A4 page, in millimetres. */
  private static final int PAPER_WIDTH = 180;

  private final StringBuilder body = new StringBuilder();
  private final Typeface face;
  private final int width;
  private final int height;

  /** Where a text stands relative to its point. */
  public enum Anchor {
    /** It starts there. */
    START(0),
    /** It is centred there. */
    MIDDLE(0.5),
    /** It ends there. */
    END(1);

    private final double share;

    Anchor(double share) {
      this.share = share;
    }
  }

  /**
   * @param face its words are set in
   * @param width in its own units, which the style sheet scales
   * @param height in the same units
   */
  public Drawing(Typeface face, int width, int height) {
    this.face = face;
    this.width = width;
    this.height = height;
  }

  /** A straight line, with its attributes. */
  public void line(double x1, double y1, double x2, double y2, String style) {
    path("M" + at(x1, y1) + "L" + at(x2, y2), "fill=\"none\" " + style);
  }

  /** A path in SVG's own words, with its attributes. */
  public void path(String d, String style) {
    body.append("<path d=\"").append(d).append("\" ").append(style).append("/>");
  }

  /** A circle, with its attributes. */
  public void circle(double x, double y, double r, String style) {
    body.append("<circle cx=\"")
        .append(number(x))
        .append("\" cy=\"")
        .append(number(y))
        .append("\" r=\"")
        .append(number(r))
        .append("\" ")
        .append(style)
        .append("/>");
  }

  /** A line of text on its base line. */
  public void text(String text, double x, double y, double size, Anchor anchor) throws IOException {
    letters(text, new AffineTransform(size, 0, 0, size, x, y), anchor);
  }

  /** A line of text that runs upwards. */
  public void textUpwards(String text, double x, double y, double size, Anchor anchor)
      throws IOException {
    letters(text, new AffineTransform(0, -size, size, 0, x, y), anchor);
  }

  private void letters(String text, AffineTransform place, Anchor anchor) throws IOException {
    place.translate(-anchor.share * face.width(text), 0);
    StringBuilder d = new StringBuilder();
    double[] p = new double[6];
    for (PathIterator i = face.outline(text).getPathIterator(place); !i.isDone(); i.next()) {
      switch (i.currentSegment(p)) {
        case PathIterator.SEG_MOVETO -> d.append('M').append(at(p[0], p[1]));
        case PathIterator.SEG_LINETO -> d.append('L').append(at(p[0], p[1]));
        case PathIterator.SEG_QUADTO ->
            d.append('Q').append(at(p[0], p[1])).append(' ').append(at(p[2], p[3]));
        case PathIterator.SEG_CUBICTO ->
            d.append('C')
                .append(at(p[0], p[1]))
                .append(' ')
                .append(at(p[2], p[3]))
                .append(' ')
                .append(at(p[4], p[5]));
        default -> d.append('Z');
      }
    }
    if (d.length() > 0) {
      path(d.toString(), "fill=\"#111111\"");
    }
  }

  /** How wide a line of text is. */
  public double widthOf(String text, double size) throws IOException {
    return size * face.width(text);
  }

  /** As much of a line of text as a width has room for, with an ellipsis where some was cut. */
  public String fitting(String text, double size, double width) throws IOException {
    if (widthOf(text, size) <= width) {
      return text;
    }
    double room = width - widthOf(ELLIPSIS, size);
    StringBuilder shown = new StringBuilder();
    for (int character : text.codePoints().toArray()) {
      room -= widthOf(Character.toString(character), size);
      if (room < 0) {
        break;
      }
      shown.appendCodePoint(character);
    }
    return shown.append(ELLIPSIS).toString();
  }

  /** A point. */
  public static String at(double x, double y) {
    return number(x) + " " + number(y);
  }

  private static String number(double value) {
    return number(value, new StringBuilder()).toString();
  }

  /** A number with two decimals. Written by hand: a formatter would take most of the time. */
  static StringBuilder number(double value, StringBuilder out) {
    long hundredths = Math.round(value * HUNDRED);
    long whole = Math.abs(hundredths);
    if (hundredths < 0) {
      out.append('-');
    }
    out.append(whole / HUNDRED).append('.');
    return out.append(whole / 10 % 10).append(whole % 10);
  }

  /**
   * The whole picture.
   *
   * @param escapedAlt what it shows, for whoever cannot see it; already escaped
   */
  public String svg(String escapedAlt) {
    return "<svg xmlns=\"http://www.w3.org/2000/svg\" style=\"width: "
        + PAPER_WIDTH
        + "mm; height: "
        + number((double) PAPER_WIDTH * height / width)
        + "mm\" viewBox=\"0 0 "
        + width
        + ' '
        + height
        + "\" alt=\""
        + escapedAlt
        + "\">"
        + body
        + "</svg>";
  }
}
