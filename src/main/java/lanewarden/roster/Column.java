package lanewarden.roster;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** A column of the roster. */
enum Column {
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

  /** As the header line writes it. */
  String title() {
    return title;
  }

  /** Whether every competitor needs a value in it. */
  boolean isRequired() {
    return required;
  }

  static List<Column> required() {
    return Arrays.stream(values()).filter(Column::isRequired).toList();
  }

  static Optional<Column> titled(String title) {
    return Arrays.stream(values()).filter(column -> column.title.equals(title)).findFirst();
  }

  static List<String> titles() {
    return Arrays.stream(values()).map(Column::title).toList();
  }
}
