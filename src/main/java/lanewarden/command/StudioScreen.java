package lanewarden.command;

import lanewarden.station.RuleDraft;

/** The way to the rule studio, which this room does not know. */
@FunctionalInterface
public interface StudioScreen {

  /**
   * Shows the studio on a rule book until its window is closed.
   *
   * @throws NoDisplay if no window can be opened; then nothing was changed
   */
  void show(RuleDraft draft) throws NoDisplay;
}
