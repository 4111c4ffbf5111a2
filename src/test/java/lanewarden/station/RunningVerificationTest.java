package lanewarden.station;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import lanewarden.chronograph.Companion;
import lanewarden.chronograph.RawBytes;
import lanewarden.chronograph.Reading;
import lanewarden.chronograph.Refusal;
import lanewarden.chronograph.Signal;
import lanewarden.chronograph.Source;
import lanewarden.journal.Fact;
import lanewarden.journal.InstrumentVerification;
import lanewarden.journal.Standing;
import lanewarden.quantity.Speed;
import org.junit.jupiter.api.Test;

class RunningVerificationTest {
  private static final Speed FIRST = Speed.parse("296.0 ft/s");
  private static final Speed SECOND = Speed.parse("296.3 ft/s");

  private static Fact.VerificationShot shot(Speed known) {
    List<Fact> facts = running(known).shot(pair(), 8);
    return (Fact.VerificationShot) facts.get(0);
  }

  private static RunningVerification running(Speed known) {
    return new RunningVerification(
        new InstrumentVerification(
            7,
            new Fact.VerificationBegan("on request", "it", 2, "1 %", "1 %", known),
            Instant.EPOCH,
            "key",
            List.of(),
            Optional.empty()),
        new Standing());
  }

  private static Reading pair() {
    return new Reading(
        FIRST,
        RawBytes.ofText("296.0"),
        Source.SERIAL,
        "first",
        Instant.EPOCH,
        null,
        new Companion(SECOND, RawBytes.ofText("296.3"), "second"));
  }

  private static Signal apart() {
    return new Signal.Refused(
        new Refusal(
            RawBytes.ofText("296.0"),
            lanewarden.chronograph.Reason.DISAGREE,
            "apart",
            Source.SERIAL,
            "both",
            Instant.EPOCH,
            pair()));
  }

  @Test
  void twoThatDoNotAgreeMeasureWhereTheSecondIsTheReferenceAndOnlyThere() {
    assertEquals(Optional.of(pair()), running(null).measured(apart()));
    assertEquals(Optional.empty(), running(FIRST).measured(apart()));
    assertEquals(Optional.of(pair()), running(FIRST).measured(new Signal.Heard(pair())));
  }

  @Test
  void aSecondInstrumentInSeriesGivesTheReferenceByItself() {
    assertEquals(SECOND, shot(null).reference());
  }

  @Test
  void aCheckBowIsTheReferenceEvenBesideASecondInstrument() {
    assertEquals(FIRST, shot(FIRST).reference());
  }
}
