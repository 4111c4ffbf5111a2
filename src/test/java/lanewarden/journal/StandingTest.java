package lanewarden.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lanewarden.ledger.Entry;
import lanewarden.quantity.Force;
import lanewarden.quantity.Mass;
import lanewarden.quantity.Speed;
import lanewarden.rules.Phase;
import lanewarden.rules.Rule;
import lanewarden.rules.RuleBook;
import lanewarden.rules.SetUp;
import lanewarden.rules.Shot;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StandingTest {

  @TempDir Path folder;
  private Book book;
  private Standing standing;

  @BeforeEach
  void makeALedger() throws Exception {
    book = new Book(folder);
    standing = new Standing();
    append(Facts.ruleBook());
  }

  @AfterEach
  void closeIt() throws Exception {
    book.close();
  }

  private void append(Fact... facts) throws Exception {
    for (Entry entry : book.append(facts)) {
      standing.apply(entry);
    }
  }

  private long open(String bib, int attempt) throws Exception {
    long number = book.next();
    append(Facts.opened(bib, attempt));
    return number;
  }

  private long read(long check, int shot, String speed) throws Exception {
    long sequence = book.next();
    append(Facts.reading(check, shot, speed));
    return sequence;
  }

  @Test
  void checkIsAtTheLineUntilItIsClosed() throws Exception {
    long check = open("101", 1);
    assertEquals(check, standing.current().orElseThrow().number());
    append(Facts.verdict(check, Outcome.WITHIN, List.of()));
    assertEquals(Optional.of(Outcome.WITHIN), standing.current().orElseThrow().outcome());
    append(new Fact.CheckClosed(check, null));
    assertEquals(Optional.empty(), standing.current());
    assertTrue(standing.checks().get(0).isClosed());
  }

  @Test
  void practiceFileWhoseTextHasAnotherHashIsRefused() throws Exception {
    Entry other =
        book.append(new FrameFact.PracticeKept("Club evening", "p.csv", "00ff", "bow,arrow"))
            .get(0);
    FactRefused refused = assertThrows(FactRefused.class, () -> standing.apply(other));
    assertTrue(String.valueOf(refused.getMessage()).contains("not 00ff"), refused.getMessage());
  }

  @Test
  void voidedReadingUsesItsShotAndTakesTheVerdictBack() throws Exception {
    long check = open("101", 1);
    read(check, 1, "298 ft/s");
    long misread = read(check, 2, "390 ft/s");
    append(Facts.verdict(check, Outcome.OVER, List.of()));
    append(new Fact.ReadingVoided(check, misread, "misread"));
    Check now = standing.current().orElseThrow();
    assertEquals(Optional.empty(), now.outcome());
    assertEquals(List.of(new Shot.Read(Speed.parse("298 ft/s")), new Shot.Voided()), now.judged());
    assertEquals("misread", now.shots().get(1).voided().reason());
    assertEquals("298 ft/s", now.lastStanding().orElseThrow().reading().speed().toString());
    assertFalse(now.standing().contains(misread));
  }

  @Test
  void laterVerdictReplacesTheEarlierOne() throws Exception {
    long check = open("101", 1);
    append(Facts.verdict(check, Outcome.OVER, List.of()));
    append(Facts.verdict(check, Outcome.WITHIN, List.of()));
    assertEquals(Optional.of(Outcome.WITHIN), standing.checks().get(0).outcome());
    assertEquals(1, standing.competitorsWith(Outcome.WITHIN));
    assertEquals(0, standing.competitorsWith(Outcome.OVER));
  }

  @Test
  void competitorsCountByTheirLastDecidedCheck() throws Exception {
    long first = open("101", 1);
    append(Facts.verdict(first, Outcome.OVER, List.of()), new Fact.CheckClosed(first, null));
    assertEquals(1, standing.competitorsWith(Outcome.OVER));
    long second = open("101", 2);
    append(Facts.verdict(second, Outcome.WITHIN, List.of()), new Fact.CheckClosed(second, null));
    assertEquals(0, standing.competitorsWith(Outcome.OVER));
    assertEquals(1, standing.competitorsDecided());
    assertEquals(2, standing.checksOf("101").size());
    assertEquals(List.of(), standing.checksOf("999"));
  }

  @Test
  void refusedLinesStandWithTheirCheckOrAlone() throws Exception {
    append(Facts.refused(null));
    long check = open("101", 1);
    append(Facts.refused(check));
    assertEquals(1, standing.strayLines().size());
    assertEquals(1, standing.current().orElseThrow().refused().size());
  }

  @Test
  void itIsBeforeTheEventUntilAnotherPhaseBegins() throws Exception {
    assertEquals(Phase.BEFORE, standing.phase());
    long check = open("101", 1);
    append(new Fact.PhaseBegan(Phase.DURING));
    assertEquals(Phase.DURING, standing.phase());
    assertEquals(Phase.BEFORE, standing.current().orElseThrow().phase());
    assertEquals(check, standing.current().orElseThrow().number());
  }

  @Test
  void setUpStatedLastTakesTheVerdictBackAndStands() throws Exception {
    long check = open("101", 1);
    append(Facts.verdict(check, Outcome.OVER, List.of()));
    append(new SetUpStated(check, Mass.parse("420 gr"), null, null));
    Check now = standing.current().orElseThrow();
    assertEquals(new SetUp(Mass.parse("420 gr"), null, null), now.setUp());
    assertEquals(Optional.empty(), now.outcome());
    assertTrue(now.usesRecheck(), "a fail that was taken back and did not come within");
  }

  /**
   * An older entry does not say what was weighed; what it changed was typed, what it kept may not.
   */
  @Test
  void ofAnOlderSetUpOnlyWhatItChangedCountsAsWeighed() throws Exception {
    long check = open("101", 1);
    append(new SetUpStated(check, Mass.parse("420 gr"), null, null));
    assertTrue(standing.current().orElseThrow().isArrowWeighed());
    append(new SetUpStated(check, Mass.parse("420.0 gr"), Force.parse("60 lbf"), null));
    assertEquals(
        Set.of(SetUp.ARROW_MASS, SetUp.DRAW_WEIGHT), standing.current().orElseThrow().weighed());
    long declared = open("102", 1);
    Mass roster = standing.current().orElseThrow().setUp().arrowMass();
    append(new SetUpStated(declared, roster, Force.parse("60 lbf"), null));
    assertFalse(standing.current().orElseThrow().isArrowWeighed());
  }

  @Test
  void aCheckEndedForWantOfATickUsesARecheckIfItsReadingsAreOver() throws Exception {
    adopt("conditions = [\"full draw\"]");
    long over = open("101", 1);
    read(over, 1, "301 ft/s");
    append(new Fact.CheckClosed(over, "the archer left"));
    assertTrue(standing.checks().get(0).usesRecheck());
    long slower = open("102", 1);
    read(slower, 1, "299 ft/s");
    append(new Fact.CheckClosed(slower, "the archer left"));
    assertFalse(standing.checks().get(1).usesRecheck());
  }

  @Test
  void aCheckEndedBeforeItsBandIsSettledUsesARecheck() throws Exception {
    adopt("bands = [\"up to 1 %: re-check\", \"up to 3 %: barred\"]");
    long over = open("101", 1);
    read(over, 1, "301 ft/s");
    Check now = standing.current().orElseThrow();
    assertTrue(now.judgedBy(rule()).takesShots(), "the band is not settled");
    append(new Fact.CheckClosed(over, "the archer left"));
    assertTrue(standing.checks().get(0).usesRecheck());
  }

  @Test
  void aVoidDoesNotTakeBackThatItWasOverUnlessItComesWithin() throws Exception {
    adopt("conditions = [\"full draw\"]");
    long check = open("101", 1);
    long fast = read(check, 1, "301 ft/s");
    append(new Fact.ReadingVoided(check, fast, "glare"));
    assertTrue(standing.current().orElseThrow().usesRecheck());
    append(Facts.verdict(check, Outcome.WITHIN, List.of()));
    assertFalse(standing.current().orElseThrow().usesRecheck());
  }

  @Test
  void readingsThatASpreadMayStillMakeUnbelievableAreNotOverYet() throws Exception {
    adopt("spread = \"5 ft/s\"");
    long check = open("101", 1);
    read(check, 1, "301 ft/s");
    append(new Fact.CheckClosed(check, "the archer left"));
    assertFalse(standing.checks().get(0).usesRecheck());
  }

  private Rule rule() {
    return standing.ruleBook().orElseThrow().division("OC").orElseThrow().rule();
  }

  private void adopt(String clause) throws Exception {
    String text = Facts.RULES + clause + "\n";
    RuleBook read = RuleBook.read("rule-book.toml", text.getBytes(StandardCharsets.UTF_8));
    append(new Fact.RuleBookAdopted("rule-book.toml", read.sha256(), text));
  }

  @Test
  void ticksAddUp() throws Exception {
    long check = open("101", 1);
    append(
        new Fact.ConditionTicked(check, "full draw"),
        new Fact.ConditionTicked(check, "4 yd from the instrument"));
    assertEquals(
        Set.of("full draw", "4 yd from the instrument"), standing.current().orElseThrow().ticked());
  }

  @Test
  void aDrawStandsWithTheRuleBookItWasMadeUnderUntilTheNext() throws Exception {
    Fact.DrawMade first = new Fact.DrawMade("OC", "1 2 3", "50 %", List.of("1", "2"), List.of("2"));
    Fact.DrawMade second =
        new Fact.DrawMade("OC", "4 5 6", "50 %", List.of("1", "2"), List.of("1"));
    long entry = book.next();
    append(first);
    assertEquals(
        new Standing.Draw(entry, Facts.ruleBook().sha256(), first),
        standing.draw("OC").orElseThrow());
    append(second);
    assertEquals(second, standing.draw("OC").orElseThrow().fact());
    assertEquals(Optional.empty(), standing.draw("HC"));
  }

  @Test
  void officialAndLineComeAndGo() throws Exception {
    append(
        new Fact.OfficialSignedIn("Ada Holt"),
        new Fact.StationOpened("Gate timer", "", "Lanewarden"),
        new Fact.LinkChanged("up", "Listening.", Book.NOON));
    assertEquals(Optional.of("Ada Holt"), standing.official());
    assertEquals("Gate timer", standing.opened().orElseThrow().instrument());
    assertEquals("up", standing.link().orElseThrow().state());
    append(new Fact.StationClosed(null));
    assertEquals(Optional.empty(), standing.official());
    assertEquals(Optional.empty(), standing.opened());
  }

  @Test
  void sameEntriesGiveTheSameStanding() throws Exception {
    long check = open("101", 1);
    read(check, 1, "298 ft/s");
    append(Facts.verdict(check, Outcome.WITHIN, List.of()));
    Standing again = new Standing();
    for (Entry entry : book.entries()) {
      again.apply(entry);
    }
    assertEquals(standing.checks(), again.checks());
    assertEquals(standing.current(), again.current());
  }

  @Test
  void refusesARuleBookThatIsNotTheOneItsHashNames() throws Exception {
    Entry entry =
        book.append(new Fact.RuleBookAdopted("rule-book.toml", "00".repeat(32), Facts.RULES))
            .get(0);
    assertThrows(FactRefused.class, () -> standing.apply(entry));
  }

  @Test
  void refusesAFaultyRuleBook() throws Exception {
    Entry entry = book.append(new Fact.RuleBookAdopted("r.toml", "", "format = 9")).get(0);
    FactRefused refused = assertThrows(FactRefused.class, () -> standing.apply(entry));
    assertTrue(refused.getMessage().contains("r.toml:1"), refused::getMessage);
  }

  @Test
  void refusesAFactAboutWhatIsNotThere() throws Exception {
    Entry reading = book.append(Facts.reading(77, 1, "300 ft/s")).get(0);
    assertThrows(FactRefused.class, () -> standing.apply(reading));
    long check = open("101", 1);
    Entry voided = book.append(new Fact.ReadingVoided(check, 77, "x")).get(0);
    assertThrows(FactRefused.class, () -> standing.apply(voided));
  }
}
