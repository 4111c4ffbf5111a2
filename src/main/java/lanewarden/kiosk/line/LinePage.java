package lanewarden.kiosk.line;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import lanewarden.journal.Docket;
import lanewarden.journal.Protest;
import lanewarden.kiosk.look.Sign;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.look.Wording;
import lanewarden.rules.Phase;
import lanewarden.station.LineView;
import lanewarden.station.Trouble;

/**
 * The whole line in the words of the screen; immutable, made from one {@link LineView} and nothing
 * else.
 *
 * @param place event and station
 * @param official who is signed in
 * @param head the ledger's last entry
 * @param linkSign shape of the link's state
 * @param link the link's state in words
 * @param linkWords the same in a sentence
 * @param phase of the event, in a word
 * @param check the check at the line
 * @param refused the line refused last
 * @param progress how far the roster is, in two short lines
 * @param share how far the roster is, 0 to 1
 * @param stop why the line is not clear, while it is not
 * @param stopWaits whether that is not signed yet
 * @param proving how far the instrument can be believed
 * @param ruled of every check on which a judge ruled, which check counts by that
 * @param trouble what keeps the line from going on
 * @param unwritten signals that wait to be written
 */
public record LinePage(
    String place,
    String official,
    String head,
    Sign linkSign,
    String link,
    String linkWords,
    String phase,
    Optional<CheckPage> check,
    Optional<RefusedLine> refused,
    String progress,
    double share,
    Optional<String> stop,
    boolean stopWaits,
    ProvingPage proving,
    Map<Long, Long> ruled,
    Optional<Trouble> trouble,
    int unwritten) {

  private static Map<Long, Long> ruled(Docket docket) {
    Map<Long, Long> ruled = new HashMap<>();
    for (Protest protest : docket.protests()) {
      docket
          .rulingOn(protest.fact().check())
          .ifPresent(
              given -> protest.all().forEach(check -> ruled.put(check, given.fact().stands())));
    }
    return Map.copyOf(ruled);
  }

  /** The phases of an event, in words. */
  static List<String> phases(Texts texts) {
    return Stream.of(Phase.values()).map(phase -> Wording.phase(phase, texts)).toList();
  }

  private static String now(Phase phase) {
    return switch (phase) {
      case BEFORE -> "phase.now.before";
      case DURING -> "phase.now.during";
      case AFTER -> "phase.now.after";
    };
  }

  /** The phase that is meant by one of those words; anything else is left to the station. */
  static String phaseOf(String words, Texts texts) {
    return Stream.of(Phase.values())
        .filter(phase -> Wording.phase(phase, texts).equals(words))
        .map(Phase::word)
        .findFirst()
        .orElse(words);
  }

  /** The page of a line. */
  public static LinePage of(LineView view, Texts texts) {
    LineView.Progress progress = view.progress();
    int done = progress.within() + progress.over();
    return new LinePage(
        texts.of("line.place", view.event(), view.station()),
        view.official().orElseGet(() -> texts.of("line.nobody-on-duty")),
        view.head().shortForm(),
        Sign.of(view.link()),
        switch (view.link()) {
          case UP -> texts.of("link.up");
          case LOST -> texts.of("link.lost");
          case CLOSED -> texts.of("link.closed");
        },
        view.linkWords(),
        texts.of(now(view.phase())),
        view.check()
            .map(check -> CheckPage.of(check, view.stop().isPresent() || view.stopWaits(), texts)),
        view.refused().map(RefusedLine::of),
        texts.of("line.progress", done, progress.competitors(), progress.within(), progress.over()),
        progress.competitors() == 0 ? 0 : (double) done / progress.competitors(),
        view.stop()
            .map(stop -> stop.reason().orElseGet(() -> texts.of("stop.unsaid")))
            .or(() -> view.stopWaits() ? Optional.of(texts.of("stop.waits")) : Optional.empty()),
        view.stopWaits(),
        ProvingPage.of(view.verification(), texts),
        ruled(view.docket()),
        view.trouble(),
        view.unwritten());
  }
}
