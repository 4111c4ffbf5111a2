package lanewarden.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import lanewarden.journal.ProtestFact.Answer;
import lanewarden.journal.ProtestFact.Cause;
import lanewarden.ledger.Entry;
import lanewarden.ledger.Role;
import lanewarden.ledger.SigningKey;
import lanewarden.quantity.Speed;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Protests, rulings and corrections as they are folded. */
class DocketTest {
  @TempDir Path folder;
  private Book book;
  private Standing standing;
  private SigningKey judge;
  private SigningKey other;

  @BeforeEach
  void makeALedger() throws Exception {
    book = new Book(folder);
    judge = book.enrol("Judge Elm", Role.JUDGE);
    other = book.enrol("Wim Ezra", Role.OFFICIAL);
    standing = new Standing();
    for (Entry entry : book.entries()) {
      standing.apply(entry);
    }
    say(Facts.ruleBook());
  }

  @AfterEach
  void closeIt() throws Exception {
    book.close();
  }

  private long say(Fact fact) throws Exception {
    return take(book.append(fact));
  }

  private long sayAs(SigningKey key, Fact fact) throws Exception {
    return take(book.appendAs(key, fact));
  }

  private long take(List<Entry> entries) throws Exception {
    for (Entry entry : entries) {
      standing.apply(entry);
    }
    return entries.get(entries.size() - 1).sequence();
  }

  /** A closed check: highest of two, at most 300 ft/s. */
  private long check(Fact.CheckOpened opening, Outcome outcome) throws Exception {
    long number = say(opening);
    String speed = outcome == Outcome.OVER ? "301 ft/s" : "299 ft/s";
    say(Facts.reading(number, 1, speed));
    say(Facts.verdict(number, outcome, List.of()));
    say(new Fact.CheckClosed(number, null));
    return number;
  }

  private long file(long check) throws Exception {
    return say(new ProtestFact.ProtestFiled(check, Cause.PROTEST, "the Greens", "it flew fast"));
  }

  private static ProtestFact.ProtestRuled ruling(long protest, Answer answer, long stands) {
    return new ProtestFact.ProtestRuled(protest, answer, stands, "none", "measured");
  }

  /**
   * Whatever is filed, shot again and ruled in whatever order: no check that was there changes, all
   * stay listed, and one account holds exactly the checks that were no rechecks.
   */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void aRulingNeverEdits(long seed) throws Exception {
    Random random = new Random(seed);
    List<Long> ordinary = new ArrayList<>();
    List<Long> protests = new ArrayList<>();
    List<Long> rechecks = new ArrayList<>();
    for (int step = 0; step < 40; step++) {
      List<Check> before = standing.checks();
      Outcome outcome = random.nextBoolean() ? Outcome.OVER : Outcome.WITHIN;
      switch (random.nextInt(4)) {
        case 0 -> ordinary.add(check(Facts.opened("101", ordinary.size() + 1), outcome));
        case 1 -> {
          if (!ordinary.isEmpty()) {
            protests.add(file(any(ordinary, random)));
          }
        }
        case 2 -> {
          if (!protests.isEmpty()) {
            rechecks.add(check(Facts.recheck("101", any(protests, random)), outcome));
          }
        }
        default -> {
          if (!protests.isEmpty()) {
            List<Long> all = new ArrayList<>(ordinary);
            all.addAll(rechecks);
            sayAs(
                random.nextInt(4) == 0 ? other : judge,
                ruling(
                    any(protests, random), Answer.values()[random.nextInt(2)], any(all, random)));
          }
        }
      }
      assertEquals(before, standing.checks().subList(0, before.size()));
      List<Check> account = standing.past("101").all();
      assertEquals(ordinary.size(), account.size());
      for (int i = 0; i < account.size(); i++) {
        assertEquals(standsFor(ordinary.get(i)), account.get(i).number());
      }
    }
    assertTrue(
        standing.docket().protests().stream().anyMatch(p -> !p.rulings().isEmpty()),
        "something was ruled");
  }

  private static long any(List<Long> numbers, Random random) {
    return numbers.get(random.nextInt(numbers.size()));
  }

  /** Told from the entries alone: the last ruling of the judge that has a right to it. */
  private long standsFor(long check) {
    long stands = check;
    long latest = 0;
    for (Protest protest : standing.docket().protests()) {
      if (protest.fact().check() != check) {
        continue;
      }
      for (Protest.Given given : protest.rulings()) {
        boolean own = given.fact().stands() == check;
        boolean recheck = protest.rechecks().contains(given.fact().stands());
        boolean shotBefore = given.fact().stands() < given.sequence();
        boolean valid =
            given.signer().equals(judge.thumbprint())
                && shotBefore
                && (own || (recheck && given.fact().ruling() == Answer.UPHELD));
        if (valid) {
          if (given.sequence() > latest) {
            latest = given.sequence();
            stands = given.fact().stands();
          }
          break;
        }
      }
    }
    return stands;
  }

  @Test
  void onlyAnEnrolmentByTheOrganizerMakesAJudge() throws Exception {
    long protest = file(check(Facts.opened("101", 1), Outcome.OVER));
    long check = standing.checks().get(0).number();
    ProtestFact.ProtestRuled ruling = ruling(protest, Answer.DISMISSED, check);
    assertEquals(Optional.of(Objection.NO_JUDGE), standing.objection(ruling, other.thumbprint()));
    assertEquals(Optional.empty(), standing.objection(ruling, judge.thumbprint()));
  }

  @Test
  void whoWasAJudgeIsNoneAfterBeingSuspendedOrEnrolledWithoutTheRole() throws Exception {
    long check = check(Facts.opened("101", 1), Outcome.OVER);
    ProtestFact.ProtestRuled ruling = ruling(file(check), Answer.DISMISSED, check);
    standing.apply(book.suspend(judge));
    assertEquals(Optional.of(Objection.NO_JUDGE), standing.objection(ruling, judge.thumbprint()));
    standing.apply(book.enrolAgain(judge, "Judge Elm", Role.OFFICIAL));
    assertEquals(Optional.of(Objection.NO_JUDGE), standing.objection(ruling, judge.thumbprint()));
    standing.apply(book.suspend(judge));
    standing.apply(book.enrolAgain(judge, "Judge Elm", Role.JUDGE));
    assertEquals(Optional.empty(), standing.objection(ruling, judge.thumbprint()));
  }

  /** Told of each kind of entry that names or lists a check, from the examples of all kinds. */
  @Test
  void whoSignedAnythingOfACheckDoesNotRuleOnIt() throws Exception {
    long check = check(Facts.opened("101", 1), Outcome.OVER);
    long reading = check + 1;
    long protest = file(check);
    long hold = say(new Fact.LineHeld(null, "the stand was knocked", List.of(check)));
    long made = say(ProtestFact.CorrectionMade.ofBib(check, "102", "Piet Ory", "misread"));
    int person = 0;
    for (Fact fact :
        List.of(
            Facts.refused(check),
            new Fact.ReadingFlagged(check, reading, "jump", "far apart"),
            new Fact.ReadingKept(check, reading, "it was seen"),
            new Fact.ReadingVoided(check, reading, "glare"),
            new SetUpStated(check, null, null, null),
            new Fact.ConditionTicked(check, "full draw"),
            new Fact.LineHeld(null, "rain", List.of(check)),
            new Fact.HoldLifted(hold, null, "it did not move"),
            ProtestFact.CorrectionMade.ofDivision(check, "XX", "entered late"),
            new ProtestFact.CorrectionConfirmed(made))) {
      SigningKey own = book.enrol("Judge " + person++, Role.JUDGE);
      List<Entry> entries = book.entries();
      standing.apply(entries.get(entries.size() - 1));
      ProtestFact.ProtestRuled ruling = ruling(protest, Answer.DISMISSED, check);
      assertEquals(Optional.empty(), standing.objection(ruling, own.thumbprint()));
      sayAs(own, fact);
      assertEquals(
          Optional.of(Objection.OWN_CHECK),
          standing.objection(ruling, own.thumbprint()),
          fact.toString());
    }
  }

  /** Else a small event has no judge left. */
  @Test
  void whoTookDownAProtestOrRuledBeforeMayRule() throws Exception {
    long check = check(Facts.opened("101", 1), Outcome.OVER);
    sayAs(judge, ruling(file(check), Answer.DISMISSED, check));
    long again =
        sayAs(judge, new ProtestFact.ProtestFiled(check, Cause.PROTEST, "the Greens", "again"));
    assertEquals(
        Optional.empty(),
        standing.objection(ruling(again, Answer.DISMISSED, check), judge.thumbprint()));
  }

  @Test
  void aProtestAgainstARecheckChangesNothing() throws Exception {
    long over = check(Facts.opened("101", 1), Outcome.OVER);
    long first = file(over);
    long beside = check(Facts.recheck("101", first), Outcome.WITHIN);
    sayAs(judge, ruling(first, Answer.UPHELD, beside));
    ProtestFact.ProtestFiled against =
        new ProtestFact.ProtestFiled(beside, Cause.PROTEST, "the Greens", "it flew fast");
    assertEquals(
        Optional.of(Objection.IS_RECHECK), standing.objection(against, other.thumbprint()));
    long second = say(against);
    long further = check(Facts.recheck("101", second), Outcome.OVER);
    ProtestFact.ProtestRuled ruling = ruling(second, Answer.UPHELD, further);
    assertEquals(Optional.of(Objection.NO_PROTEST), standing.objection(ruling, judge.thumbprint()));
    sayAs(judge, ruling);
    assertEquals(Optional.of(beside), standing.docket().instead(over));
    assertEquals(Optional.empty(), standing.docket().instead(beside));
    assertEquals(1, standing.competitorsWith(Outcome.WITHIN));
    assertEquals(false, standing.docket().protest(second).orElseThrow().isOpen());
  }

  @Test
  void nobodyRulesOnACheckThatGoesOn() throws Exception {
    long check = say(Facts.opened("101", 1));
    long reading = say(Facts.reading(check, 1, "301 ft/s"));
    long early = file(check);
    ProtestFact.ProtestRuled ruling = ruling(early, Answer.DISMISSED, check);
    assertEquals(Optional.of(Objection.NO_PROTEST), standing.objection(ruling, judge.thumbprint()));
    say(Facts.verdict(check, Outcome.OVER, List.of(reading)));
    long protest = file(check);
    ProtestFact.ProtestRuled later = ruling(protest, Answer.DISMISSED, check);
    assertEquals(Optional.empty(), standing.objection(later, judge.thumbprint()));
    say(new Fact.ReadingVoided(check, reading, "glare"));
    assertEquals(Optional.of(Objection.CHECK_RUNS), standing.objection(later, judge.thumbprint()));
  }

  /** Else it went on counting for another archer, until a judge says that it does no more. */
  @Test
  void whatARulingRestsOnIsNotCorrectedToAnotherArcherOrDivision() throws Exception {
    long over = check(Facts.opened("101", 1), Outcome.OVER);
    long protest = file(over);
    long beside = check(Facts.recheck("101", protest), Outcome.WITHIN);
    long before = say(ProtestFact.CorrectionMade.ofBib(beside, "103", "Wim Ezra", "misread"));
    sayAs(judge, ruling(protest, Answer.UPHELD, beside));
    for (long check : List.of(over, beside)) {
      for (ProtestFact made :
          List.of(
              ProtestFact.CorrectionMade.ofBib(check, "102", "Piet Ory", "misread"),
              ProtestFact.CorrectionMade.ofDivision(check, "XX", "entered late"))) {
        assertEquals(Optional.of(Objection.RULED_ON), standing.objection(made, other.thumbprint()));
      }
    }
    sayAs(other, new ProtestFact.CorrectionConfirmed(before));
    assertEquals("101", standing.find(beside).orElseThrow().opened().bib());
    long again = file(over);
    sayAs(judge, ruling(again, Answer.DISMISSED, over));
    sayAs(other, new ProtestFact.CorrectionConfirmed(before));
    assertEquals("103", standing.find(beside).orElseThrow().opened().bib());
    assertEquals(over, standing.past("101").all().get(0).number());
  }

  /** The recheck under the protest is of another bib, until two persons put that right. */
  @Test
  void aRecheckOfAnotherArcherNeverCounts() throws Exception {
    long over = check(Facts.opened("101", 1), Outcome.OVER);
    long protest = file(over);
    long beside = check(Facts.recheck("102", protest), Outcome.WITHIN);
    sayAs(judge, ruling(protest, Answer.UPHELD, beside));
    Protest.Given given = standing.docket().protest(protest).orElseThrow().rulings().get(0);
    assertEquals(Optional.of(Objection.OTHER_ARCHER), given.objection());
    assertEquals(over, standing.past("101").all().get(0).number());
    assertEquals(Optional.empty(), standing.docket().instead(over));
    assertEquals(1, standing.competitorsWith(Outcome.OVER));
    long made = say(ProtestFact.CorrectionMade.ofBib(beside, "101", "Nell Ashby", "misread"));
    sayAs(other, new ProtestFact.CorrectionConfirmed(made));
    sayAs(judge, ruling(protest, Answer.UPHELD, beside));
    assertEquals(Optional.of(beside), standing.docket().instead(over));
    assertEquals(1, standing.competitorsWith(Outcome.WITHIN));
  }

  @Test
  void aCorrectedBibMovesTheCheckToItsAccountAndBackCounts() throws Exception {
    long check = check(Facts.opened("101", 1), Outcome.WITHIN);
    assertEquals(1, standing.competitorsWith(Outcome.WITHIN));
    long made = say(ProtestFact.CorrectionMade.ofBib(check, "102", "Piet Ory", "misread"));
    assertEquals(1, standing.checksOf("101").size());
    sayAs(other, new ProtestFact.CorrectionConfirmed(made));
    assertEquals(List.of(), standing.checksOf("101"));
    assertEquals("Piet Ory", standing.checksOf("102").get(0).opened().name());
    assertEquals(1, standing.competitorsDecided());
    assertEquals(1, standing.competitorsWith(Outcome.WITHIN));
    Correction correction = standing.docket().correction(made).orElseThrow();
    assertEquals("101 Nell Ashby", correction.before());
  }

  @Test
  void aCorrectedReadingTakesTheVerdictBackAndKeepsItsBytes() throws Exception {
    long check = say(Facts.opened("101", 1));
    long reading =
        say(
            new Fact.ReadingTaken(
                check, 1, Speed.parse("310 ft/s"), "MzEw", "typed", "keyboard", Book.NOON, null));
    say(Facts.verdict(check, Outcome.OVER, List.of(reading)));
    say(new Fact.CheckClosed(check, null));
    long made =
        say(
            ProtestFact.CorrectionMade.ofReading(
                check, reading, Speed.parse("301 ft/s"), "a slip"));
    sayAs(other, new ProtestFact.CorrectionConfirmed(made));
    Check now = standing.checks().get(0);
    assertEquals("301 ft/s", now.shots().get(0).reading().speed().toString());
    assertEquals("MzEw", now.shots().get(0).reading().raw());
    assertEquals(Optional.empty(), now.outcome());
    assertTrue(now.usesRecheck(), "301 is over 300 as well");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\u0001',
      value = {
        "protest-filed | {\"check\":999,\"occasion\":\"protest\",\"by\":\"x\",\"ground\":\"x\"}"
            + " | there is no check 999",
        "protest-filed | {\"check\":6,\"occasion\":\"tea\",\"by\":\"x\",\"ground\":\"x\"}"
            + " | the member occasion is missing or not what it must be",
        "protest-ruled | {\"protest\":6,\"ruling\":\"upheld\",\"stands\":6,\"consequence\":\"x\",\"reason\":\"x\"}"
            + " | there is no protest 6",
        "protest-ruled | {\"protest\":6,\"ruling\":\"both\",\"stands\":6,\"consequence\":\"x\",\"reason\":\"x\"}"
            + " | the member ruling is missing or not what it must be",
        "correction-made | {\"check\":6,\"what\":\"bib\",\"division\":\"OC\",\"reason\":\"x\"}"
            + " | a correction of the bib has other members",
        "correction-made | {\"check\":6,\"what\":\"reading\",\"reading\":7,\"speed\":\"300 ft/s\",\"reason\":\"x\"}"
            + " | check 6 has no reading 7",
        "correction-made | {\"check\":6,\"what\":\"name\",\"name\":\"A\",\"reason\":\"x\"}"
            + " | the member what is missing or not what it must be",
        "correction-confirmed | {\"correction\":6} | there is no correction 6"
      })
  void refusesWhatSpeaksOfNothing(String kind, String body, String why) throws Exception {
    assertEquals(6, say(Facts.opened("101", 1)));
    Entry entry = book.appendRaw(kind, body);
    FactRefused refused = assertThrows(FactRefused.class, () -> standing.apply(entry));
    assertEquals("entry 7 of kind " + kind + " cannot be read: " + why, refused.getMessage());
  }
}
