package lanewarden.audit.press;

import java.util.Map;
import java.util.Set;
import lanewarden.audit.press.Style.Sides;
import lanewarden.audit.press.Style.Width;

/** Turns what a stylesheet says of an element into its style. */
final class Look {
  private static final float MILLIMETRE = 72 / 25.4f;
  private static final int HEX = 16;
  private static final float HUNDRED = 100;
  private static final Set<String> UNDERSTOOD =
      Set.of(
          "font-size",
          "font-family",
          "font-weight",
          "line-height",
          "color",
          "text-decoration",
          "white-space",
          "text-align",
          "vertical-align",
          "list-style-type",
          "width",
          "border-color",
          "page-break-after",
          "page-break-inside");

  private Look() {}

  /**
   * The style of an element.
   *
   * @param says what the stylesheet says of it
   * @param around the letters it inherits
   */
  static Style of(Map<String, String> says, Lettering around) {
    for (String property : says.keySet()) {
      if (!UNDERSTOOD.contains(property) && !property.matches("(margin|padding|border)-[a-z]+")) {
        throw new IllegalStateException("A stylesheet says " + property + ", which nobody reads.");
      }
    }
    Lettering letters = letters(says, around);
    return new Style(
        letters,
        says(says, "vertical-align", "bottom", false),
        sides(says, "margin", letters.size()),
        sides(says, "padding", letters.size()),
        sides(says, "border", letters.size()),
        colour(says.getOrDefault("border-color", "#000000")),
        width(says.get("width") == null ? "" : said(says, "width"), letters.size()),
        says(says, "page-break-after", "avoid", false),
        says(says, "page-break-inside", "avoid", false));
  }

  private static Lettering letters(Map<String, String> says, Lettering around) {
    String colour = says.get("color");
    String leading = says.get("line-height");
    String bullet = says.get("list-style-type");
    return new Lettering(
        cut(says, around.cut()),
        points(says.getOrDefault("font-size", "1em"), around.size()),
        leading == null ? around.leading() : Float.parseFloat(leading),
        colour == null ? around.colour() : colour(colour),
        says(says, "text-decoration", "line-through", around.struck()),
        says(says, "white-space", "pre-wrap", around.kept()),
        says(says, "text-align", "right", around.right()),
        bullet == null ? around.bullet() : bullet.equals("circle") ? "◦" : "•");
  }

  /** The letters of fixed width have one weight only. */
  private static Cut cut(Map<String, String> says, Cut around) {
    String family = says.getOrDefault("font-family", around == Cut.FIXED ? "fixed" : "text");
    boolean bold = says(says, "font-weight", "700", around == Cut.BOLD);
    return family.equals("fixed") ? Cut.FIXED : bold ? Cut.BOLD : Cut.TEXT;
  }

  private static boolean says(
      Map<String, String> says, String property, String value, boolean otherwise) {
    String said = says.get(property);
    return said == null ? otherwise : said.equals(value);
  }

  static Sides sides(Map<String, String> says, String property, float em) {
    return new Sides(
        points(says.getOrDefault(property + "-top", "0"), em),
        points(says.getOrDefault(property + "-right", "0"), em),
        points(says.getOrDefault(property + "-bottom", "0"), em),
        points(says.getOrDefault(property + "-left", "0"), em));
  }

  private static Width width(String value, float em) {
    if (value.isEmpty()) {
      return Width.OPEN;
    }
    return value.endsWith("%")
        ? new Width(Float.parseFloat(value.substring(0, value.length() - 1)) / HUNDRED, true)
        : new Width(points(value, em), false);
  }

  /**
   * A length in points.
   *
   * @param em how long an em is
   */
  static float points(String length, float em) {
    String unit = length.replaceAll("[0-9.]", "");
    float number = Float.parseFloat(length.substring(0, length.length() - unit.length()));
    return switch (unit) {
      case "mm" -> number * MILLIMETRE;
      case "pt", "" -> number;
      case "em" -> number * em;
      default -> throw new IllegalStateException("A stylesheet has the length " + length + ".");
    };
  }

  private static int colour(String value) {
    return Integer.parseInt(value.substring(1), HEX);
  }

  /** What must be said. */
  static String said(Map<String, String> says, String property) {
    String value = says.get(property);
    if (value == null) {
      throw new IllegalStateException("A stylesheet does not say " + property + ".");
    }
    return value;
  }
}
