package lanewarden.kiosk.setups;

import java.nio.file.Path;
import java.util.function.Consumer;
import lanewarden.kiosk.desk.SideTable;
import lanewarden.station.Outlook;
import lanewarden.station.Trouble;
import lanewarden.station.WrittenRules;

/** A rule book that somebody brings, in force nowhere; used on the screen's thread. */
public final class BroughtRules implements ProspectsViewModel.Asking {
  private final SideTable work;
  private Path file;

  /**
   * @param file the rule book, or an event's folder with one
   * @param work reads it
   */
  public BroughtRules(Path file, SideTable work) {
    this.file = file;
    this.work = work;
  }

  /** Reckons by another one from now on. */
  public void turnTo(Path other) {
    file = other;
  }

  /** Reads it anew: whoever tries a rule and a set-up in turn is told what the file says now. */
  @Override
  public void ask(
      ProspectsViewModel.Asked asked, Consumer<Outlook> answer, Consumer<Trouble> missed) {
    Path by = file;
    work.ask(
        () ->
            Outlook.of(
                WrittenRules.read(by).wanted(asked.only()), asked.brought(), asked.scatter()),
        answer,
        missed);
  }
}
