package lanewarden.roster;

import java.util.List;
import lanewarden.quantity.ForceUnit;
import lanewarden.quantity.LengthUnit;
import lanewarden.quantity.MassUnit;
import lanewarden.quantity.Unit;
import lanewarden.written.CsvColumn;

/** A column of the roster. */
enum Column implements CsvColumn {
  BIB("bib"),
  NAME("name"),
  DIVISION("division"),
  ARROW_MASS("arrow-mass", MassUnit.values()),
  DRAW_WEIGHT("draw-weight", ForceUnit.values()),
  CERTIFIED_DRAW_WEIGHT("certified-draw-weight", ForceUnit.values()),
  DRAW_LENGTH("draw-length", LengthUnit.values()),
  BRACE_HEIGHT("brace-height", LengthUnit.values());

  private final String title;
  private final boolean required;
  private final List<Unit> units;

  /** One of words, which every competitor has. */
  Column(String title) {
    this(title, true, List.of());
  }

  /** One of figures in one of these units, which may stay empty. */
  Column(String title, Unit[] units) {
    this(title, false, List.of(units));
  }

  Column(String title, boolean required, List<Unit> units) {
    this.title = title;
    this.required = required;
    this.units = units;
  }

  /** The units that its figures may be written in; none where it has words. */
  List<Unit> units() {
    return units;
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
