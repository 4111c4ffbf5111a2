package lanewarden.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import lanewarden.ledger.Entry;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Stops of the line for safety, as folded. */
class LineStopsTest {
  @TempDir Path folder;
  private Book book;
  private final Standing standing = new Standing();

  @BeforeEach
  void open() throws Exception {
    book = new Book(folder);
    say(Facts.ruleBook());
  }

  @AfterEach
  void close() throws Exception {
    book.close();
  }

  private long say(Fact fact) throws Exception {
    Entry entry = book.append(fact).get(0);
    standing.apply(entry);
    return entry.sequence();
  }

  @Test
  void aStopStandsUntilTheLineIsClearedAndIsKept() throws Exception {
    long stop = say(new FrameFact.LineStopped("somebody is forward"));
    assertEquals(stop, standing.stop().orElseThrow().number());
    assertEquals(Optional.empty(), standing.stop().get().lasted());
    long end = say(new FrameFact.LineCleared(stop));
    assertEquals(Optional.empty(), standing.stop());
    LineStop kept = standing.stops().get(0);
    assertEquals(Optional.of(end), kept.cleared().map(LineStop.Cleared::sequence));
    assertFalse(kept.lasted().orElseThrow().isNegative());
    long second = say(new FrameFact.LineStopped(null));
    assertEquals(List.of(stop, second), standing.stops().stream().map(LineStop::number).toList());
  }

  @Test
  void whyItWasStoppedMayBeSaidAfterwardsAndIsNoStopOfItsOwn() throws Exception {
    long stop = say(new FrameFact.LineStopped(null));
    assertEquals(Optional.empty(), standing.stop().orElseThrow().reason());
    say(new FrameFact.LineStopped("lane not clear"));
    assertEquals(1, standing.stops().size());
    assertEquals(stop, standing.stop().orElseThrow().number());
    assertEquals(Optional.of("lane not clear"), standing.stop().orElseThrow().reason());
    say(new FrameFact.LineStopped(null));
    assertEquals(Optional.of("lane not clear"), standing.stop().orElseThrow().reason());
  }

  @Test
  void aStopQuestionsNoCheckAndAVerificationDoesNotEndIt() throws Exception {
    long check = say(Facts.opened("101", 1));
    long reading = say(Facts.reading(check, 1, "290 ft/s"));
    say(Facts.verdict(check, Outcome.WITHIN, List.of(reading)));
    say(new FrameFact.LineStopped("somebody is forward"));
    assertFalse(standing.checksOf("101").get(0).inQuestion());
    assertEquals(Optional.of(check), standing.current().map(Check::number));
    long round = say(new Fact.VerificationBegan("on request", "check bow", 2, "1 %", "1 %", null));
    say(new Fact.VerificationEnded(round, true, "within", null));
    assertTrue(standing.stop().isPresent());
    say(new Fact.StationClosed(null));
    assertTrue(standing.stop().isPresent(), "nor does the end of the day");
  }

  @Test
  void onlyTheStopThatStandsIsCleared() throws Exception {
    assertThrows(FactRefused.class, () -> say(new FrameFact.LineCleared(1)));
    long stop = say(new FrameFact.LineStopped(null));
    assertThrows(FactRefused.class, () -> say(new FrameFact.LineCleared(stop + 1)));
    assertTrue(standing.stop().isPresent());
    say(new FrameFact.LineCleared(stop));
    assertThrows(FactRefused.class, () -> say(new FrameFact.LineCleared(stop)));
  }
}
