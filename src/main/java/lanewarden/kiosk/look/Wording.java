package lanewarden.kiosk.look;

import java.util.Locale;
import java.util.Optional;
import lanewarden.journal.Outcome;
import lanewarden.quantity.Speed;
import lanewarden.station.CheckView;

/** How a check reads on every screen. */
public final class Wording {
  private static final char NO_BREAK_SPACE = '\u00a0';

  private Wording() {}

  /** The limit, and what is allowed where a tolerance makes that another. */
  public static String limit(CheckView view, Texts texts) {
    Optional<Speed> fastest = view.fastest();
    if (fastest.isEmpty()) {
      return texts.of("limit.none");
    }
    Speed allowed = fastest.get();
    return view.limit()
        .filter(limit -> limit.compareTo(allowed) != 0)
        .map(limit -> texts.of("limit.tolerance", plain(limit), plain(allowed)))
        .orElseGet(() -> texts.of("limit.plain", plain(allowed)));
  }

  /** The outcome in a word, or that there is none yet. */
  public static String outcome(Optional<Outcome> outcome, Texts texts) {
    if (outcome.isEmpty()) {
      return texts.of("outcome.running");
    }
    return switch (outcome.get()) {
      case WITHIN -> texts.of("outcome.within");
      case OVER -> texts.of("outcome.over");
      case NOT_DECIDED -> texts.of("outcome.not-decided");
      case NOT_ADMITTED -> texts.of("outcome.not-admitted");
    };
  }

  /** With a capital letter in front. */
  public static String sentence(String words) {
    return words.isEmpty()
        ? words
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  /** Without zeros that say nothing, and never broken between number and unit. */
  private static String plain(Speed speed) {
    return speed.value().stripTrailingZeros().toPlainString()
        + NO_BREAK_SPACE
        + speed.unit().symbol();
  }
}
