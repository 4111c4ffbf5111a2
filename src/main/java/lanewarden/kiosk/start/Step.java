package lanewarden.kiosk.start;

import java.util.Arrays;
import java.util.Set;
import lanewarden.station.EventForm;

/** A page of the form of a new event. */
enum Step {
  PLACE("make.place", Set.of(EventForm.FOLDER, EventForm.STATION, EventForm.RULE_BOOK)),
  COMPETITORS("make.competitors", Set.of(EventForm.ROSTER, EventForm.COLUMN)),
  INSTRUMENT("make.instrument", Set.of(EventForm.PROFILE, EventForm.PORT)),
  PEOPLE("make.people", Set.of(EventForm.PERSON));

  private final String title;
  private final Set<String> fields;

  Step(String title, Set<String> fields) {
    this.title = title;
    this.fields = fields;
  }

  /** The text that names it. */
  String title() {
    return title;
  }

  /** How the names of its fields begin. */
  Set<String> fields() {
    return fields;
  }

  /** Its place among the pages, from 1. */
  int number() {
    return 1 + Arrays.asList(values()).indexOf(this);
  }

  boolean isLast() {
    return this == PEOPLE;
  }

  Step next() {
    return switch (this) {
      case PLACE -> COMPETITORS;
      case COMPETITORS -> INSTRUMENT;
      case INSTRUMENT, PEOPLE -> PEOPLE;
    };
  }

  Step before() {
    return switch (this) {
      case PLACE, COMPETITORS -> PLACE;
      case INSTRUMENT -> COMPETITORS;
      case PEOPLE -> INSTRUMENT;
    };
  }
}
