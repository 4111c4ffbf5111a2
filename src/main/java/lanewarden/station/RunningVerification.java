package lanewarden.station;

import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import lanewarden.chronograph.Companion;
import lanewarden.chronograph.Reading;
import lanewarden.chronograph.Signal;
import lanewarden.journal.Fact;
import lanewarden.journal.Hold;
import lanewarden.journal.InstrumentVerification;
import lanewarden.journal.Standing;
import lanewarden.quantity.Speed;
import org.jspecify.annotations.Nullable;

/**
 * The verification that runs, and what happens in it: each act is the facts that it amounts to; the
 * last shot brings the outcome, and with it the hold or the end of one.
 */
record RunningVerification(InstrumentVerification running, Standing standing) {

  /** The one that runs, if one does. */
  static Optional<RunningVerification> of(Standing standing) {
    return standing.verification().map(running -> new RunningVerification(running, standing));
  }

  /**
   * What an instrument's signal says was measured; empty where it says nothing of the kind. Against
   * a second instrument, two in series that do not agree have both measured: how far they are apart
   * is what the verification is to find.
   */
  Optional<Reading> measured(Signal signal) {
    if (signal instanceof Signal.Heard heard) {
      return Optional.of(heard.reading());
    }
    return signal instanceof Signal.Refused refused && running.began().known() == null
        ? Optional.ofNullable(refused.refusal().apart())
        : Optional.empty();
  }

  /** Why a reading is no shot of it; empty where it is one. */
  Optional<String> against(Reading reading) {
    if (running.awaitsReference()) {
      return Optional.of("The shot before it waits for the second instrument's value.");
    }
    String raw = base64(reading);
    boolean repeats =
        reading.sequence() != null
            && running.shots().stream().anyMatch(shot -> shot.fact().raw().equals(raw));
    return repeats
        ? Optional.of("This verification has the very same line already.")
        : Optional.empty();
  }

  /**
   * A shot.
   *
   * @param next the sequence that the first fact will have
   */
  List<Fact> shot(Reading reading, long next) {
    Fact.VerificationShot shot =
        new Fact.VerificationShot(
            running.number(),
            running.shots().size() + 1,
            reading.speed(),
            base64(reading),
            reading.source().word(),
            reading.instrument(),
            reading.at(),
            reference(reading),
            Taking.second(reading.companion()));
    return with(shot, running.take(next, shot));
  }

  private @Nullable Speed reference(Reading reading) {
    Companion second = reading.companion();
    Speed known = running.began().known();
    return known == null && second != null ? second.speed() : known;
  }

  /** The second instrument's value of the last shot, as the official read it. */
  List<Fact> reference(Speed value) {
    Fact.ReferenceTyped typed =
        new Fact.ReferenceTyped(running.number(), running.shots().size(), value);
    return with(typed, running.take(typed));
  }

  private List<Fact> with(Fact act, InstrumentVerification after) {
    List<Fact> facts = new ArrayList<>(List.of(act));
    if (after.isComplete()) {
      facts.addAll(end(Comparison.of(after).orElseThrow()));
    }
    return facts;
  }

  private List<Fact> end(Comparison comparison) {
    long number = running.number();
    boolean passed = comparison.passes();
    String words = comparison.inWords().toString();
    List<Fact> facts = new ArrayList<>();
    facts.add(new Fact.VerificationEnded(number, passed, words, null));
    if (passed) {
      standing.holds().stream()
          .filter(Hold::stands)
          .forEach(
              hold ->
                  facts.add(
                      new Fact.HoldLifted(
                          hold.number(), number, "the instrument is within its limits: " + words)));
    } else {
      hold(comparison.outInWords()).ifPresent(facts::add);
    }
    return facts;
  }

  /** The hold that follows; empty where only a good verification can lift the one that stands. */
  private Optional<Fact> hold(String reason) {
    return standing.holds().stream().filter(Hold::stands).allMatch(Hold::byHand)
        ? Optional.of(new Fact.LineHeld(running.number(), reason, standing.checksSinceGood()))
        : Optional.empty();
  }

  /**
   * It is broken off: it lifts no hold, and it holds the line only where the shots taken are out of
   * the limits already, lest whoever sees a bias coming ends it before the last shot.
   */
  List<Fact> brokenOff(String reason) {
    String after = Verified.brokenOff(running.shots().size(), running.began().shots()).toString();
    List<Fact> facts = new ArrayList<>();
    facts.add(new Fact.VerificationEnded(running.number(), false, after, reason));
    Comparison.of(running)
        .filter(Comparison::convicts)
        .flatMap(seen -> hold(seen.outInWords() + ", " + after))
        .ifPresent(facts::add);
    return facts;
  }

  private static String base64(Reading reading) {
    return Base64.getEncoder().encodeToString(reading.raw().bytes());
  }
}
