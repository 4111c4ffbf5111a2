package lanewarden.station;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import lanewarden.chronograph.RawBytes;
import lanewarden.chronograph.Reading;
import lanewarden.chronograph.Reason;
import lanewarden.chronograph.SentenceProfile;
import lanewarden.chronograph.Signal;
import lanewarden.chronograph.TypedEntry;
import lanewarden.journal.Interpreter.Before;
import lanewarden.journal.Interpreter.Heard;
import lanewarden.journal.Untimely;
import lanewarden.quantity.SpeedUnit;

/**
 * A refused line tried anew: whether its bytes, by the profile of its instrument and after what
 * came before, are refused for the reason that was signed.
 *
 * @param profile of the instrument that sent it
 * @param raw its bytes
 * @param typed whether an official typed it
 */
record Retrial(SentenceProfile profile, RawBytes raw, boolean typed) {
  private static final Duration LATE = Duration.ofSeconds(1);

  /** What the bytes are by themselves; of typed ones without a unit, in each unit. */
  private List<Signal> signals() {
    if (!typed) {
      return List.of(profile.reread(raw, Instant.EPOCH));
    }
    TypedEntry entry =
        new TypedEntry(profile.plausible(), Clock.fixed(Instant.EPOCH, ZoneOffset.UTC));
    String text = new String(raw.bytes(), StandardCharsets.UTF_8);
    return Arrays.stream(SpeedUnit.values()).map(unit -> entry.read(text, unit)).toList();
  }

  /** The reading that they are; empty where they are none, or it is open in which unit. */
  Optional<Heard> heard() {
    List<Signal> signals = signals();
    return typed ? Optional.empty() : said(signals.get(0));
  }

  /** The reading in words; of typed bytes, the one in the first unit in which they are one. */
  Stream<String> said() {
    return signals().stream()
        .flatMap(signal -> said(signal).stream())
        .limit(1)
        .map(heard -> heard.speed().toString());
  }

  private static Optional<Heard> said(Signal signal) {
    return signal instanceof Signal.Heard heard
        ? Optional.of(new Heard(heard.reading().speed(), heard.reading().sequence()))
        : Optional.empty();
  }

  /** What speaks against the reason; nothing where it is what the bytes give in any unit. */
  Optional<String> against(String reason, Before before) {
    Optional<Reason> known =
        Arrays.stream(Reason.values()).filter(one -> one.word().equals(reason)).findFirst();
    boolean untimely = Untimely.of(reason).isPresent();
    if (known.isEmpty() && !untimely) {
      return Optional.of("“" + reason + "” is no reason for which a station refuses a line");
    }
    List<Optional<String>> all =
        signals().stream()
            .map(
                signal ->
                    against(signal, known.filter(r -> !untimely || r == Reason.REPEATED), before))
            .toList();
    return all.stream().allMatch(Optional::isPresent) ? all.get(0) : Optional.empty();
  }

  private Optional<String> against(Signal signal, Optional<Reason> reason, Before before) {
    if (reason.isEmpty() || reason.get() == Reason.UNPAIRED) {
      return signal instanceof Signal.Refused none
          ? Optional.of("its bytes are no reading (" + none.refusal().reason().word() + ")")
          : Optional.empty();
    }
    Optional<Reading> reading =
        signal instanceof Signal.Heard heard ? Optional.of(heard.reading()) : Optional.empty();
    return switch (reason.get()) {
      case REPEATED ->
          reading.isPresent() ? repeated(reading.get(), before) : otherwise(signal, reason.get());
      case TORN -> torn(signal, before);
      case OVERLONG -> overlong(signal, before);
      default -> otherwise(signal, reason.get());
    };
  }

  /** The bytes alone decide: they must be refused, and for the same reason. */
  private static Optional<String> otherwise(Signal signal, Reason reason) {
    if (signal instanceof Signal.Refused refused) {
      Reason own = refused.refusal().reason();
      return own == reason
          ? Optional.empty()
          : Optional.of("its bytes are to be refused as “" + own.word() + "”");
    }
    return Optional.of(
        said(signal)
            .map(heard -> "its bytes are a whole line of the instrument and say " + heard.speed())
            .orElse("its bytes are no line"));
  }

  /** A whole line is torn only where it may have been joined midway and does not prove itself. */
  private Optional<String> torn(Signal signal, Before before) {
    if (before.midway() || before.uncertain()) {
      boolean damaged =
          signal instanceof Signal.Refused refused
              && (refused.refusal().reason() == Reason.PATTERN
                  || refused.refusal().reason() == Reason.CHECKSUM);
      if (damaged || !profile.provesWhole()) {
        return Optional.empty();
      }
    }
    return otherwise(signal, Reason.TORN);
  }

  private Optional<String> overlong(Signal signal, Before before) {
    boolean mayBeRest = before.overlong() || before.uncertain();
    if (typed || mayBeRest || profile.isOverlong(raw)) {
      return typed ? otherwise(signal, Reason.OVERLONG) : Optional.empty();
    }
    return signal instanceof Signal.Heard
        ? otherwise(signal, Reason.OVERLONG)
        : Optional.of("it is no longer than a line of the instrument may be");
  }

  private Optional<String> repeated(Reading reading, Before before) {
    if (before.uncertain()) {
      return Optional.empty();
    }
    String says = "its bytes say " + reading.speed() + ", and ";
    String number = reading.sequence();
    if (number != null) {
      return before.last().filter(last -> Objects.equals(last.line(), number)).isPresent()
              || isTooSoon(before)
          ? Optional.empty()
          : Optional.of(says + "no line of the instrument just before it had the number " + number);
    }
    return isTooSoon(before)
        ? Optional.empty()
        : Optional.of(
            says
                + "no reading stood within the "
                + profile.apart().toMillis()
                + " ms before it in which a line counts as the same");
  }

  /**
   * The times are those of the wall clock, which is read a little later than the wire; a line that
   * came before the other by more than that did not come after it.
   */
  private boolean isTooSoon(Before before) {
    return !profile.apart().isZero()
        && before
            .elapsed()
            .filter(time -> time.compareTo(profile.apart().plus(LATE)) < 0)
            .filter(time -> !time.plus(LATE).isNegative())
            .isPresent();
  }
}
