package lanewarden.station;

import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import lanewarden.chronograph.Companion;
import lanewarden.chronograph.Reading;
import lanewarden.chronograph.Refusal;
import lanewarden.chronograph.Signal;
import lanewarden.journal.Check;
import lanewarden.journal.Fact;
import lanewarden.journal.SecondReading;
import lanewarden.journal.TakenShot;
import lanewarden.journal.Untimely;
import org.jspecify.annotations.Nullable;

/**
 * What a signal from an instrument means for the verification that runs or the check at the line.
 *
 * @param papers say how far to believe a reading
 */
record Taking(StationPapers papers) {

  /**
   * The facts that a signal amounts to: a shot or a reading with the outcome it brings, or a
   * refusal.
   */
  List<Fact> of(Signal signal, Book book) {
    Optional<RunningVerification> running = RunningVerification.of(book.standing());
    Optional<Reading> measured =
        running.isPresent() ? running.get().measured(signal) : measured(signal);
    if (measured.isEmpty()) {
      return unheard(signal, book.check());
    }
    Reading reading = measured.get();
    long next = book.head().sequence() + 1;
    if (book.standing().stop().isPresent()) {
      return List.of(
          untimely(
              reading,
              running(book.check()),
              Untimely.STOPPED,
              "The line was not clear when it arrived."));
    }
    if (running.isPresent()) {
      Optional<String> against = running.get().against(reading);
      return against.isPresent()
          ? List.of(untimely(reading, null, Untimely.NO_SHOT, against.get()))
          : running.get().shot(reading, next);
    }
    if (book.standing().hold().isPresent()) {
      return List.of(
          untimely(
              reading, running(book.check()), Untimely.HELD, "The line was held when it arrived."));
    }
    return of(reading, book.check(), next);
  }

  private static Optional<Reading> measured(Signal signal) {
    return signal instanceof Signal.Heard heard ? Optional.of(heard.reading()) : Optional.empty();
  }

  private static List<Fact> unheard(Signal signal, Optional<CheckView> check) {
    if (signal instanceof Signal.Refused refused) {
      return List.of(refused(refused.refusal(), running(check)));
    }
    Signal.LinkChanged link = (Signal.LinkChanged) signal;
    return List.of(new Fact.LinkChanged(link.state().word(), link.words(), link.at()));
  }

  /** What was heard while nobody could sign: readings count for nobody, the rest as ever. */
  List<Fact> offDuty(Signal signal) {
    if (signal instanceof Signal.Heard heard) {
      return List.of(
          untimely(
              heard.reading(),
              null,
              Untimely.OFF_DUTY,
              "No official was on duty when it arrived."));
    }
    return unheard(signal, Optional.empty());
  }

  private List<Fact> of(Reading reading, Optional<CheckView> view, long next) {
    if (view.isEmpty()) {
      return List.of(
          untimely(
              reading, null, Untimely.NO_COMPETITOR, "No competitor was called when it arrived."));
    }
    Check check = view.get().check();
    if (check.outcome().isPresent()) {
      return List.of(
          untimely(
              reading,
              check.number(),
              Untimely.DECIDED,
              "Check " + check.number() + " was decided before it arrived."));
    }
    if (isRepeat(reading, check)) {
      return List.of(
          untimely(
              reading,
              check.number(),
              Untimely.REPEATED,
              "This check has the very same line already, with the same number of the instrument."));
    }
    if (!view.get().takesShots()) {
      return List.of(
          untimely(
              reading,
              check.number(),
              Untimely.NOT_ASKED,
              "Check "
                  + check.number()
                  + " waits for something else: "
                  + view.get().words()
                  + "."));
    }
    Fact.ReadingTaken taken =
        new Fact.ReadingTaken(
            check.number(),
            check.shots().size() + 1,
            reading.speed(),
            base64(reading.raw().bytes()),
            reading.source().word(),
            reading.instrument(),
            reading.at(),
            reading.sequence(),
            papers.uncertainty(reading),
            second(reading.companion()));
    List<Fact> facts = new ArrayList<>(List.of(taken));
    Check after = check.take(next, taken);
    facts.addAll(Flagging.on(after, view.get().division()));
    Ruling.on(after, view.get().division()).ifPresent(facts::add);
    return facts;
  }

  static @Nullable SecondReading second(@Nullable Companion companion) {
    return companion == null
        ? null
        : new SecondReading(
            companion.speed(), base64(companion.raw().bytes()), companion.instrument());
  }

  /**
   * Whether the check has these very bytes already, of an instrument that numbers its lines. The
   * instrument's own guard knows the last line only, and nothing after a restart; the ledger knows.
   */
  private static boolean isRepeat(Reading reading, Check check) {
    String raw = base64(reading.raw().bytes());
    return reading.sequence() != null
        && check.shots().stream()
            .map(TakenShot::reading)
            .anyMatch(taken -> taken.line() != null && taken.raw().equals(raw));
  }

  private static Fact untimely(
      Reading reading, @Nullable Long check, Untimely reason, String words) {
    return new Fact.LineRefused(
        check,
        base64(reading.raw().bytes()),
        reason.word(),
        reading.speed() + " was not taken. " + words,
        reading.source().word(),
        reading.instrument(),
        reading.at());
  }

  private static Fact refused(Refusal refusal, @Nullable Long check) {
    return new Fact.LineRefused(
        check,
        base64(refusal.raw().bytes()),
        refusal.reason().word(),
        refusal.words(),
        refusal.source().word(),
        refusal.instrument(),
        refusal.at());
  }

  private static @Nullable Long running(Optional<CheckView> check) {
    return check.map(c -> c.check().number()).orElse(null);
  }

  private static String base64(byte[] bytes) {
    return Base64.getEncoder().encodeToString(bytes);
  }
}
