package lanewarden.roster;

import lanewarden.written.CsvColumn;

/** A column of the roster. */
enum Column implements CsvColumn {
  BIB("bib", true),
  NAME("name", true),
  DIVISION("division", true),
  ARROW_MASS("arrow-mass", false),
  DRAW_WEIGHT("draw-weight", false),
  CERTIFIED_DRAW_WEIGHT("certified-draw-weight", false),
  DRAW_LENGTH("draw-length", false),
  BRACE_HEIGHT("brace-height", false);

  private final String title;
  private final boolean required;

  Column(String title, boolean required) {
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
