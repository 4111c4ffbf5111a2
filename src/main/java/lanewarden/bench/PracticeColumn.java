package lanewarden.bench;

import lanewarden.written.CsvColumn;
import lanewarden.written.CsvTable;

/** A column of a practice file. */
enum PracticeColumn implements CsvColumn {
  BOW("bow", true),
  ARROW("arrow", true),
  ARROW_MASS("arrow-mass", true),
  SPEED("speed", true),
  MISREAD("misread", false),
  REMARK("remark", false),
  DRAW_WEIGHT("draw-weight", false),
  DRAW_LENGTH("draw-length", false),
  BRACE_HEIGHT("brace-height", false),
  RATED_SPEED("rated-speed", false),
  RATED_DRAW_WEIGHT("rated-draw-weight", false),
  RATED_DRAW_LENGTH("rated-draw-length", false),
  RATED_ARROW_MASS("rated-arrow-mass", false);

  /** A practice file. */
  static final CsvTable<PracticeColumn> TABLE =
      new CsvTable<>(
          PracticeColumn.class,
          "bow,arrow,arrow-mass,speed",
          PracticeTold.SHOT,
          PracticeTold.WRITE_HEADER,
          PracticeTold.ADD_LINES);

  private final String title;
  private final boolean required;

  PracticeColumn(String title, boolean required) {
    this.title = title;
    this.required = required;
  }

  @Override
  public String title() {
    return title;
  }

  @Override
  public boolean isRequired() {
    return required;
  }
}
