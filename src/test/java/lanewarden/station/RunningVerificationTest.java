package lanewarden.station;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import lanewarden.chronograph.Companion;
import lanewarden.chronograph.RawBytes;
import lanewarden.chronograph.Reading;
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
    InstrumentVerification running =
        new InstrumentVerification(
            7,
            new Fact.VerificationBegan("on request", "it", 2, "1 %", "1 %", known),
            Instant.EPOCH,
            "key",
            List.of(),
            Optional.empty());
    Reading reading =
        new Reading(
            FIRST,
            RawBytes.ofText("296.0"),
            Source.SERIAL,
            "first",
            Instant.EPOCH,
            null,
            new Companion(SECOND, RawBytes.ofText("296.3"), "second"));
    List<Fact> facts = new RunningVerification(running, new Standing()).shot(reading, 8);
    return (Fact.VerificationShot) facts.get(0);
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
