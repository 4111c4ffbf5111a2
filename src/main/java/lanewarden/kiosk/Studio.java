package lanewarden.kiosk;

import java.time.Clock;
import java.util.concurrent.Executor;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.rulebook.EffectViewModel;
import lanewarden.kiosk.rulebook.RuleBookScreen;
import lanewarden.kiosk.rulebook.RuleBookViewModel;
import lanewarden.station.RuleDraft;

/** The rule studio's parts, joined over one shell. */
final class Studio {

  /**
   * Where work is done.
   *
   * @param files saves, one task after the other
   * @param curves draws curves, one task after the other
   * @param screen the screen's thread
   */
  record Threads(Executor files, Executor curves, Executor screen) {}

  private Studio() {}

  /**
   * The studio's screen on a rule book.
   *
   * @param inForce what a saved rule book needs to come into force; blank where there is no event
   * @param leave goes back
   */
  static RuleBookScreen over(
      Shell shell,
      RuleDraft draft,
      Clock clock,
      Texts texts,
      KeyButton theme,
      String inForce,
      Runnable leave,
      Threads threads) {
    RuleBookViewModel book = new RuleBookViewModel(draft, clock, threads.files(), threads.screen());
    EffectViewModel effect = new EffectViewModel(book, texts, threads.curves(), threads.screen());
    return new RuleBookScreen(book, effect, texts, shell, theme, inForce, leave);
  }
}
