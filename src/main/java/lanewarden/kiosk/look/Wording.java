package lanewarden.kiosk.look;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.util.Locale;
import java.util.Optional;
import lanewarden.journal.Occasion;
import lanewarden.journal.Outcome;
import lanewarden.quantity.Speed;
import lanewarden.rules.Phase;
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

  /**
   * Writes a day with its time and how far the clock is from UTC, as on every screen: {@code
   * 2026-05-02 11:30:05 UTC+02:00}, and {@code UTC} alone where it is that.
   */
  public static DateTimeFormatter clock(ZoneId zone) {
    return new DateTimeFormatterBuilder()
        .appendPattern("yyyy-MM-dd HH:mm:ss 'UTC'")
        .appendOffset("+HH:MM", "")
        .toFormatter(Locale.ROOT)
        .withZone(zone);
  }

  /** Where a reading came from, in a word of this language. */
  public static String source(String word, Texts texts) {
    return switch (word) {
      case "serial port" -> texts.of("source.serial");
      case "typed" -> texts.of("source.typed");
      case "replay" -> texts.of("source.replay");
      case "simulator" -> texts.of("source.simulator");
      default -> word;
    };
  }

  /** Why the instrument is verified, in words of this language; as signed where they are others. */
  public static String occasion(String signed, Texts texts) {
    return Occasion.of(signed).map(occasion -> texts.of(key(occasion))).orElse(signed);
  }

  private static String key(Occasion occasion) {
    return switch (occasion) {
      case OPENING -> "verification.opening";
      case INTERVAL -> "verification.interval";
      case CLOSING -> "verification.closing";
      case AFTER_HOLD -> "verification.after-hold";
      case ON_REQUEST -> "verification.on-request";
    };
  }

  /** A phase of the event, in words. */
  public static String phase(Phase phase, Texts texts) {
    return switch (phase) {
      case BEFORE -> texts.of("phase.pick.before");
      case DURING -> texts.of("phase.pick.during");
      case AFTER -> texts.of("phase.pick.after");
    };
  }

  /** About how fast the arrow of a reading left the bow; blank where that is not known. */
  public static String atBow(Speed reading, CheckView view, Texts texts) {
    if (view.hasNoSpeedAtBow(reading)) {
      return texts.of("reading.no-bow");
    }
    return view.atBow(reading).map(speed -> texts.of("reading.at-bow", speed)).orElse("");
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
