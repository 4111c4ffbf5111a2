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
      return texts.of(unlimited(view));
    }
    Speed allowed = fastest.get();
    Optional<Speed> limit = view.limit();
    if (limit.isEmpty()) {
      return texts.of(
          "limit.energy",
          sentence(view.limitInWords().map(texts::of).orElse("")),
          plain(allowed, texts));
    }
    String edge = view.isBelow() ? "limit.below" : "limit.plain";
    return limit.get().compareTo(allowed) == 0
        ? texts.of(edge, plain(allowed, texts))
        : texts.of(
            view.isBelow() ? "limit.tolerance.below" : "limit.tolerance",
            plain(limit.get(), texts),
            plain(allowed, texts));
  }

  /** No limit at all, none for this arrow, or one that depends on what was not stated yet. */
  private static String unlimited(CheckView view) {
    if (!view.isLimited()) {
      return "limit.none";
    }
    return view.missingFigures().isEmpty() ? "limit.none-here" : "limit.unknown";
  }

  /** The outcome in a word, or what the check does until there is one. */
  public static String outcome(CheckView view, Texts texts) {
    if (view.check().inQuestion()) {
      return texts.of("outcome.in-question");
    }
    if (view.outcome().isEmpty()) {
      return texts.of(view.takesShots() ? "outcome.running" : "outcome.waiting");
    }
    return outcome(view.outcome().get(), texts);
  }

  /** An outcome in a word. */
  public static String outcome(Outcome outcome, Texts texts) {
    return switch (outcome) {
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
  private static String plain(Speed speed, Texts texts) {
    return texts.number(speed.value().stripTrailingZeros())
        + NO_BREAK_SPACE
        + speed.unit().symbol();
  }
}
