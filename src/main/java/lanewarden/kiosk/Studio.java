package lanewarden.kiosk;

import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import lanewarden.kiosk.form.Chooser;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.rulebook.Adoption;
import lanewarden.kiosk.rulebook.EffectViewModel;
import lanewarden.kiosk.rulebook.RuleBookScreen;
import lanewarden.kiosk.rulebook.RuleBookViewModel;
import lanewarden.station.RuleDraft;

/** The rule studio's parts, joined over a shell. */
final class Studio {

  /**
   * Where work is done, and when.
   *
   * @param clock gives the file that is kept of each saving its time
   * @param files saves, one task after the other
   * @param curves draws curves, one task after the other
   * @param screen the screen's thread
   */
  record Threads(Clock clock, Executor files, Executor curves, Executor screen) {}

  private Studio() {}

  /**
   * The studio's screen on a rule book.
   *
   * @param chooser with what a file is chosen, if there is anything at the time
   * @param adoption how it comes into force, where it is an event's
   * @param leave goes back
   */
  static RuleBookScreen over(
      Shell shell,
      RuleDraft draft,
      Texts texts,
      KeyButton theme,
      Supplier<Optional<Chooser>> chooser,
      Optional<Adoption> adoption,
      Runnable leave,
      Threads threads) {
    RuleBookViewModel book =
        new RuleBookViewModel(draft, threads.clock(), threads.files(), threads.screen());
    EffectViewModel effect = new EffectViewModel(book, texts, threads.curves(), threads.screen());
    return new RuleBookScreen(book, effect, texts, shell, theme, chooser, adoption, leave);
  }
}
