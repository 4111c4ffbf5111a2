package lanewarden.audit.press;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a picture in SVG out of a page. */
final class PictureReader {
  private static final Pattern SIZE = Pattern.compile("width: ([0-9.]+mm); height: ([0-9.]+mm)");

  private final Manuscript page;

  /**
   * @param page stands at the beginning of the picture, and at its end afterwards
   */
  PictureReader(Manuscript page) {
    this.page = page;
  }

  Picture picture(Tag tag) {
    Matcher size = SIZE.matcher(page.attribute("style"));
    if (!size.matches()) {
      throw new IllegalStateException("A picture does not say its size.");
    }
    String alternative = page.attribute("alt");
    String[] view = page.attribute("viewBox").split(" ", -1);
    Strokes strokes = new Strokes();
    while (page.nextChild()) {
      switch (page.name()) {
        case "path" -> strokes.path(page::attribute);
        case "circle" -> strokes.circle(page::attribute);
        default ->
            throw new IllegalStateException("A picture has the element " + page.name() + ".");
      }
      page.words();
    }
    return new Picture(
        tag,
        alternative,
        strokes.inPdf(),
        Look.points(size.group(1), 0),
        Look.points(size.group(2), 0),
        Float.parseFloat(view[2]));
  }
}
