package lanewarden.station;

import java.util.Map;

/**
 * What a person says of a list of competitors that is only looked at; its fields are named as those
 * of {@link EventForm}.
 *
 * @param roster the list
 * @param columns which of its columns are which of the roster's, from 0 by the roster's title;
 *     empty as long as nobody chose
 * @param ruleBook the rule book, or an event's folder with one, whose divisions the list must keep
 *     to; blank to leave the divisions unexamined
 */
public record ListForm(String roster, Map<String, Integer> columns, String ruleBook) {

  /** Copies the columns. */
  public ListForm {
    columns = Map.copyOf(columns);
  }

  /** Says what comes of the list, and what is wrong with it. Reads files; makes nothing. */
  public EventFormFindings examine() {
    return EventFormFindings.of(this);
  }

  NewEvent.Source ruleBookSource() throws StationException {
    return NewEvent.Source.of(WrittenRules.fileAt(EventForm.path(ruleBook)));
  }
}
