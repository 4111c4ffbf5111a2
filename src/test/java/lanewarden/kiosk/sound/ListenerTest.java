package lanewarden.kiosk.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.util.Optional;
import lanewarden.journal.Fact;
import lanewarden.journal.Outcome;
import org.junit.jupiter.api.Test;

/** Which sound is made of what changed at the line. */
class ListenerTest {
  private static final Optional<Outcome> NONE = Optional.empty();

  private final Listener listener = new Listener();

  private Optional<Cue> hear(long check, int readings, Optional<Outcome> outcome) {
    return listener.hear(new Moment(check, readings, outcome, 0, Optional.empty()));
  }

  private Optional<Cue> refused(Fact.LineRefused line) {
    return listener.hear(new Moment(11, 1, NONE, 0, Optional.of(line)));
  }

  private static Fact.LineRefused line(String raw) {
    return new Fact.LineRefused(
        11L, raw, "checksum", "The checksum is wrong.", "wire", "timer", Instant.EPOCH);
  }

  @Test
  void whatWasThereWhenTheScreensOpenedIsNoNews() {
    assertEquals(Optional.empty(), hear(11, 2, NONE));
    assertEquals(Optional.empty(), hear(11, 2, NONE));
  }

  @Test
  void everyReadingIsHeardOnceAndTheOneThatDecidesAsTheOutcome() {
    hear(0, 0, NONE);
    assertEquals(Optional.empty(), hear(11, 0, NONE), "somebody is called");
    assertEquals(Optional.of(Cue.READING), hear(11, 1, NONE));
    assertEquals(Optional.empty(), hear(11, 1, NONE));
    assertEquals(Optional.of(Cue.READING), hear(11, 2, NONE));
    assertEquals(Optional.of(Cue.WITHIN), hear(11, 3, Optional.of(Outcome.WITHIN)));
    assertEquals(Optional.empty(), hear(11, 3, Optional.of(Outcome.WITHIN)));
    assertEquals(Optional.empty(), hear(0, 0, NONE), "the line is clear");
  }

  @Test
  void everyOtherOutcomeSoundsAlikeAlsoWithoutAShot() {
    hear(0, 0, NONE);
    assertEquals(Optional.of(Cue.OVER), hear(11, 3, Optional.of(Outcome.OVER)));
    assertEquals(Optional.of(Cue.OVER), hear(12, 0, Optional.of(Outcome.NOT_ADMITTED)));
    assertEquals(Optional.of(Cue.OVER), hear(13, 5, Optional.of(Outcome.NOT_DECIDED)));
  }

  @Test
  void outcomeThatChangesIsHeardAgain() {
    hear(11, 3, Optional.of(Outcome.OVER));
    assertEquals(Optional.empty(), hear(11, 3, NONE), "a shot was declared void");
    assertEquals(Optional.of(Cue.WITHIN), hear(11, 4, Optional.of(Outcome.WITHIN)));
  }

  @Test
  void eachRefusedLineIsHeardOnce() {
    hear(11, 1, NONE);
    assertEquals(Optional.of(Cue.REFUSED), refused(line("AAAA")));
    assertEquals(Optional.empty(), refused(line("AAAA")));
    assertEquals(Optional.of(Cue.REFUSED), refused(line("AAAB")));
    assertEquals(Optional.empty(), hear(11, 1, NONE));
  }

  @Test
  void readingsOfAVerificationAreHeardToo() {
    listener.hear(new Moment(0, 0, NONE, 4, Optional.empty()));
    assertEquals(
        Optional.of(Cue.READING), listener.hear(new Moment(0, 0, NONE, 5, Optional.empty())));
  }
}
