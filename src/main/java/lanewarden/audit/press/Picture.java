package lanewarden.audit.press;

import java.util.Optional;

/**
 * A picture of lines and areas, with the words for whoever cannot see it.
 *
 * <p>Owned by one thread.
 */
final class Picture implements Block {
  private final Tag tag;
  private final String alternative;
  private final String strokes;
  private final float width;
  private final float height;
  private final float units;

  /**
   * @param alternative what it shows
   * @param strokes in PDF's own words, y downwards
   * @param width in points
   * @param height in points
   * @param units how many of its own units are as wide as it is
   */
  Picture(Tag tag, String alternative, String strokes, float width, float height, float units) {
    this.tag = tag;
    this.alternative = alternative;
    this.strokes = strokes;
    this.width = width;
    this.height = height;
    this.units = units;
  }

  @Override
  public float above() {
    return 0;
  }

  @Override
  public float below() {
    return 0;
  }

  @Override
  public void fit(float ignored) {
    // Its size is its own.
  }

  @Override
  public float height() {
    return height;
  }

  @Override
  public float least() {
    return height;
  }

  @Override
  public Optional<Block> draw(Sheet sheet, float x, float y, float room) {
    if (height > room) {
      return Optional.of(this);
    }
    float bottom = sheet.fromBelow(y + height);
    tag.picture(alternative, x, bottom, x + width, bottom + height);
    sheet.picture(tag, strokes, x, y, width / units);
    return Optional.empty();
  }
}
