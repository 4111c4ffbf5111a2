package lanewarden.audit.press;

import java.util.function.UnaryOperator;

/**
 * Turns the strokes of a picture from SVG into the words of PDF: the part of SVG that the program's
 * own pictures use.
 *
 * <p>What is not understood is a fault of the picture and never passed over. Owned by one thread.
 */
final class Strokes {
  /** How far the handles of four curves lie that make a circle, in radii. */
  private static final double HANDLE = 4 * (Math.sqrt(2) - 1) / 3;

  private static final int HEX = 16;

  private final StringBuilder out = new StringBuilder();

  /**
   * Adds a path.
   *
   * @param path its attributes by their names; empty where it has none
   */
  void path(UnaryOperator<String> path) {
    Paint paint = paint(path);
    new Pen(path.apply("d")).draw();
    paint(paint);
  }

  /** Adds a circle, given in the same way. */
  void circle(UnaryOperator<String> circle) {
    Paint paint = paint(circle);
    double x = Double.parseDouble(circle.apply("cx"));
    double y = Double.parseDouble(circle.apply("cy"));
    double r = Double.parseDouble(circle.apply("r"));
    double h = r * HANDLE;
    put("m", x + r, y);
    put("c", x + r, y + h, x + h, y + r, x, y + r);
    put("c", x - h, y + r, x - r, y + h, x - r, y);
    put("c", x - r, y - h, x - h, y - r, x, y - r);
    put("c", x + h, y - r, x + r, y - h, x + r, y);
    out.append("h ");
    paint(paint);
  }

  /** All of them, in PDF's words. */
  String inPdf() {
    return out.toString();
  }

  /** Whether a path is filled and drawn along. */
  private record Paint(boolean filled, boolean drawn) {}

  private Paint paint(UnaryOperator<String> of) {
    String fill = of.apply("fill");
    String stroke = of.apply("stroke");
    boolean filled = !fill.equals("none");
    if (filled) {
      colour(fill.isEmpty() ? "#000000" : fill, "rg");
    }
    if (!stroke.isEmpty()) {
      colour(stroke, "RG");
      String width = of.apply("stroke-width");
      put("w", width.isEmpty() ? 1 : Double.parseDouble(width));
      out.append('[').append(of.apply("stroke-dasharray")).append("] 0 d ");
    }
    return new Paint(filled, !stroke.isEmpty());
  }

  private void paint(Paint paint) {
    out.append(paint.filled ? paint.drawn ? "B\n" : "f\n" : paint.drawn ? "S\n" : "n\n");
  }

  private void colour(String colour, String operator) {
    int all = Integer.parseInt(colour.substring(1), HEX);
    put(operator, (all >> 16) / 255.0, (all >> 8 & 0xFF) / 255.0, (all & 0xFF) / 255.0);
  }

  private void put(String operator, double... numbers) {
    for (double number : numbers) {
      Drawing.number(number, out).append(' ');
    }
    out.append(operator).append(' ');
  }

  /** Follows the commands of a path. */
  private final class Pen {
    private final String d;
    private int at;
    private double x;
    private double y;

    Pen(String d) {
      this.d = d;
    }

    void draw() {
      char command = ' ';
      while (more()) {
        if (Character.isLetter(d.charAt(at))) {
          command = d.charAt(at);
          at++;
        }
        follow(command);
      }
    }

    private boolean more() {
      while (at < d.length() && (d.charAt(at) == ' ' || d.charAt(at) == ',')) {
        at++;
      }
      return at < d.length();
    }

    private double number() {
      more();
      int from = at;
      while (at < d.length()
          && (Character.isDigit(d.charAt(at))
              || d.charAt(at) == '.'
              || d.charAt(at) == 'E'
              || (d.charAt(at) == '-' && (at == from || d.charAt(at - 1) == 'E')))) {
        at++;
      }
      return Double.parseDouble(d.substring(from, at));
    }

    private void follow(char command) {
      switch (command) {
        case 'M' -> to("m", number(), number());
        case 'L' -> to("l", number(), number());
        case 'H' -> to("l", number(), y);
        case 'h' -> to("l", x + number(), y);
        case 'V' -> to("l", x, number());
        case 'v' -> to("l", x, y + number());
        case 'Q' -> quadratic(number(), number(), number(), number());
        case 'C' -> cubic(number(), number(), number(), number(), number(), number());
        case 'Z', 'z' -> out.append("h ");
        default -> throw new IllegalStateException("A picture has the command " + command + ".");
      }
    }

    private void to(String operator, double newX, double newY) {
      put(operator, newX, newY);
      x = newX;
      y = newY;
    }

    /** PDF knows cubic curves only: their handles lie two thirds of the way. */
    private void quadratic(double handleX, double handleY, double newX, double newY) {
      cubic(
          x + 2 * (handleX - x) / 3,
          y + 2 * (handleY - y) / 3,
          newX + 2 * (handleX - newX) / 3,
          newY + 2 * (handleY - newY) / 3,
          newX,
          newY);
    }

    private void cubic(double x1, double y1, double x2, double y2, double newX, double newY) {
      put("c", x1, y1, x2, y2, newX, newY);
      x = newX;
      y = newY;
    }
  }
}
