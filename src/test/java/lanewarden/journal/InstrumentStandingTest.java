package lanewarden.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import lanewarden.ledger.Entry;
import lanewarden.quantity.Speed;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What verifications and holds make of the checks. */
class InstrumentStandingTest {
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

  private long check(String bib, String speed, Outcome outcome) throws Exception {
    long check = say(Facts.opened(bib, standing.checksOf(bib).size() + 1));
    long reading = say(Facts.reading(check, 1, speed));
    say(Facts.verdict(check, outcome, List.of(reading)));
    say(new Fact.CheckClosed(check, null));
    return check;
  }

  private Optional<Obstacle> obstacle(String bib) {
    return Obstacle.to(
        standing.ruleBook().orElseThrow().division("OC").orElseThrow(),
        bib,
        new PastChecks(standing.checksOf(bib)),
        Optional.empty());
  }

  private long begin() throws Exception {
    return say(new Fact.VerificationBegan("on request", "check bow", 2, "1 %", "1 %", null));
  }

  @Test
  void inQuestionNeitherAPassStandsNorDoesAFailCount() throws Exception {
    long pass = check("101", "290 ft/s", Outcome.WITHIN);
    long fail = check("102", "310 ft/s", Outcome.OVER);
    long again = check("102", "311 ft/s", Outcome.OVER);
    assertEquals(Optional.of(Obstacle.PASS_STANDS), obstacle("101"));
    assertEquals(Optional.of(Obstacle.RECHECKS_USED), obstacle("102"));
    assertEquals(List.of(pass, fail, again), standing.checksSinceGood());
    say(new Fact.LineHeld(begin(), "out of its limits", List.of(pass, fail, again)));
    assertEquals(Optional.empty(), obstacle("101"));
    assertEquals(Optional.empty(), obstacle("102"));
    assertEquals(0, standing.competitorsDecided());
    assertEquals(2, standing.toBeCheckedAgain().size());
    long better = check("101", "291 ft/s", Outcome.WITHIN);
    assertFalse(standing.checksOf("101").get(1).inQuestion(), "check " + better);
    assertEquals(Optional.of(Obstacle.PASS_STANDS), obstacle("101"));
    assertEquals(1, standing.toBeCheckedAgain().size());
  }

  @Test
  void aPassBeforeTheCheckInQuestionDoesNotStandInItsPlace() throws Exception {
    check("101", "290 ft/s", Outcome.WITHIN);
    long other = check("101", "290 ft/s", Outcome.WITHIN);
    say(new Fact.LineHeld(begin(), "out of its limits", List.of(other)));
    assertEquals(Optional.empty(), obstacle("101"));
  }

  @Test
  void aHoldByHandQuestionsOnlyWhileItStands() throws Exception {
    long pass = check("101", "290 ft/s", Outcome.WITHIN);
    long hold = say(new Fact.LineHeld(null, "knocked", List.of(pass)));
    assertTrue(standing.hold().isPresent());
    assertTrue(standing.checksOf("101").get(0).inQuestion());
    say(new Fact.HoldLifted(hold, null, "it did not move"));
    assertEquals(Optional.empty(), standing.hold());
    assertFalse(standing.checksOf("101").get(0).inQuestion());
  }

  @Test
  void aHoldAfterAVerificationQuestionsForGood() throws Exception {
    long pass = check("101", "290 ft/s", Outcome.WITHIN);
    long hold = say(new Fact.LineHeld(begin(), "out", List.of(pass)));
    say(new Fact.HoldLifted(hold, begin(), "within"));
    assertTrue(standing.checksOf("101").get(0).inQuestion());
  }

  @Test
  void aCheckWithoutAShotDoesNotRestOnTheInstrument() throws Exception {
    long check = say(Facts.opened("101", 1));
    say(Facts.verdict(check, Outcome.NOT_ADMITTED, List.of()));
    assertEquals(List.of(), standing.checksSinceGood());
  }

  @Test
  void onlyAGoodEndCountsAsVerified() throws Exception {
    say(new Fact.VerificationPlanned(true, null, false));
    say(new Fact.StationOpened("Gate timer", "", "Lanewarden"));
    long round = begin();
    say(new Fact.VerificationEnded(round, false, "broken off", "rain"));
    assertEquals(Optional.of(Occasion.OPENING), standing.verificationDue());
    long good = begin();
    say(new Fact.VerificationEnded(good, true, "2 shots", null));
    assertEquals(Optional.empty(), standing.verificationDue());
    assertEquals(good, standing.goodVerification().orElseThrow().number());
    say(new Fact.StationOpened("Another timer", "", "Lanewarden"));
    assertEquals(Optional.of(Occasion.OPENING), standing.verificationDue());
  }

  @Test
  void whatIsNotThereIsRefused() throws Exception {
    assertThrows(FactRefused.class, () -> say(new Fact.LineHeld(null, "knocked", List.of(99L))));
    assertEquals(Optional.empty(), standing.hold(), "a hold that cannot be read holds nothing");
    assertThrows(FactRefused.class, () -> say(new Fact.HoldLifted(99, null, "x")));
    assertThrows(FactRefused.class, () -> say(new Fact.VerificationEnded(99, true, "x", null)));
    long round = begin();
    assertThrows(
        FactRefused.class, () -> say(new Fact.ReferenceTyped(round, 1, Speed.parse("300 ft/s"))));
  }
}
