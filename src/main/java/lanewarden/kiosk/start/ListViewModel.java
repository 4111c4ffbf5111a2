package lanewarden.kiosk.start;

import java.util.Set;
import java.util.concurrent.Executor;
import lanewarden.station.EventForm;
import lanewarden.station.ListForm;

/** A list of competitors that is only looked at; used on the screen's thread. */
public final class ListViewModel {
  private final Draft draft;

  /**
   * @param files does work on files, one task after the other
   * @param screen the screen's thread
   */
  public ListViewModel(Executor files, Executor screen) {
    draft =
        new Draft(
            files,
            screen,
            () -> {
              ListForm form = form();
              return form::examine;
            });
    draft.tell(Set.of(EventForm.COLUMN));
  }

  /** The list, the rule book and the columns, with what is wrong. */
  Draft draft() {
    return draft;
  }

  private ListForm form() {
    return new ListForm(
        draft.text(EventForm.ROSTER).get(), draft.columns(), draft.text(EventForm.RULE_BOOK).get());
  }

  /** Reads the files, and says from now on what is wrong with what was typed. */
  void look() {
    draft.tell(Set.of(EventForm.ROSTER, EventForm.RULE_BOOK));
    draft.changed();
  }
}
