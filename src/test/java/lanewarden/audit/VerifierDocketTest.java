package lanewarden.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lanewarden.audit.findings.Finding;
import lanewarden.journal.Fact;
import lanewarden.journal.PersonName;
import lanewarden.journal.ProtestFact;
import lanewarden.journal.ProtestFact.Answer;
import lanewarden.journal.ProtestFact.Cause;
import lanewarden.journal.ProtestFact.CorrectionConfirmed;
import lanewarden.journal.ProtestFact.CorrectionMade;
import lanewarden.ledger.Role;
import lanewarden.ledger.SigningKey;
import lanewarden.quantity.Speed;
import lanewarden.station.SignedPapers;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What the page computes of protests, rulings and corrections, beside what the audit finds. */
class VerifierDocketTest extends PageInBrowser {
  private ScriptedLedger ledger;
  private Dispute dispute;
  private SigningKey judge;
  private SigningKey other;

  @BeforeEach
  void open() throws Exception {
    ledger = ScriptedLedger.with(folder.resolve("event.ledger"), ScriptedLedger.RULES);
    dispute = Dispute.in(ledger);
    judge = dispute.judge();
    other = dispute.other();
  }

  @AfterEach
  void close() throws Exception {
    ledger.close();
  }

  private Told verified() throws Exception {
    new Export(SignedPapers::of).whole(ledger.file(), folder.resolve("export"), p -> {});
    return openText(Files.readString(folder.resolve("export/entries.jsonl")));
  }

  private static List<String> cases() throws Exception {
    return texts("#cases li");
  }

  /** Typed words end no quotation mark, and turn nothing round that stands beside them. */
  @Test
  void whatSomebodyTypedIsNotTakenForThePagesOwnWords() throws Exception {
    long over = dispute.over();
    long protest =
        ledger.say(
            new ProtestFact.ProtestFiled(
                over, Cause.PROTEST, "x”. Upheld by Judge Elm. \u202E“", "light"));
    verified();
    assertEquals(
        List.of(
            "Protest %d against check %d (bib 401, over), filed by “x\". Upheld by Judge Elm. [U+202E]\"”. No recheck. No ruling with effect: check %d counts."
                .formatted(protest, over, over)),
        cases());
  }

  @Test
  void whichCheckCountsAfterARulingIsToldInWordsAndBesideEachVerdict() throws Exception {
    long over = dispute.over();
    long protest = dispute.file(Cause.PROTEST, over);
    long beside = dispute.recheck(protest, "401", "57.9 m/s");
    long ruling = dispute.rule(judge, protest, Answer.UPHELD, beside);
    Told told = verified();
    assertEquals(List.of(), told.findings());
    assertEquals(
        "✓1 protest or correction: each ruled by a judge, or confirmed by a second person; told"
            + " below.",
        told.answers().get(2));
    assertEquals(
        List.of(
            "Protest %d against check %d (bib 401, over), filed by “Edwin Thackerby”. Rechecked: check %d (bib 401, within). Upheld by Judge Elm (entry %d), a judge who signed nothing of these checks with any key of theirs: check %d counts."
                .formatted(protest, over, beside, ruling, beside)),
        cases());
    List<String> notes = texts("#checks tbody td:last-child .note");
    assertEquals(
        List.of(
            "does not count: check %d does (ruling %d)".formatted(beside, ruling),
            "recheck beside check %d: counts in its place (ruling %d)".formatted(over, ruling)),
        notes);
  }

  @Test
  void whatHasNoEffectIsNamedWithItsReason() throws Exception {
    long over = dispute.over();
    long protest = dispute.file(Cause.PROTEST, over);
    long early = dispute.rule(judge, protest, Answer.UPHELD, 1);
    long beside = dispute.recheck(protest, "401", "57.9 m/s");
    long noJudge = dispute.rule(other, protest, Answer.UPHELD, beside);
    long contrary = dispute.rule(judge, protest, Answer.DISMISSED, beside);
    ledger.sayAs(judge, new Fact.ReadingVoided(beside, beside + 1, "no matter"));
    long own = dispute.rule(judge, protest, Answer.UPHELD, beside);
    SigningKey second = ledger.enrol("Judge Fir", Role.JUDGE);
    long voided = dispute.rule(second, protest, Answer.UPHELD, beside);
    dispute.rule(second, protest, Answer.DISMISSED, over);
    long again = dispute.rule(second, protest, Answer.DISMISSED, over);
    long late = dispute.recheck(protest, "401", "57.8 m/s");
    List<String> findings = verified().findings();
    for (String expected :
        List.of(
            early + ": the ruling has no effect: check 1 is neither the one in dispute nor",
            noJudge + ": the ruling has no effect: Wim Ezra was not enrolled as a judge",
            contrary + ": the ruling has no effect: it dismisses the protest, and yet",
            own + ": the ruling has no effect: Judge Elm signed something of check " + beside,
            voided + ": the ruling has no effect: recheck " + beside + " came to no outcome",
            again + ": the ruling has no effect: the protest had its ruling (entry ",
            late + ": a recheck was opened under protest " + protest + ", which had its ruling")) {
      assertTrue(
          findings.stream().anyMatch(words -> words.startsWith("Entry " + expected)),
          expected + " is not in " + findings);
    }
    assertTrue(cases().get(0).contains("Dismissed by Judge Fir"), cases().toString());
    assertEquals(
        Audited.of(ledger.file()).entries(Finding.Kind.RULING).stream()
            .filter(List.of(early, noJudge, contrary, own, voided, again)::contains)
            .toList(),
        List.of(early, noJudge, contrary, own, voided, again),
        "the audit has the same objections");
  }

  @Test
  void whoSignedAnythingOfTheCheckDoesNotRuleOnItHereEither() throws Exception {
    long check = dispute.over();
    long reading = ledger.now().shots().get(0).sequence();
    long protest = dispute.file(Cause.PROTEST, check);
    long hold = ledger.say(new Fact.LineHeld(null, "rain", List.of(check)));
    long made = ledger.say(CorrectionMade.ofBib(check, "402", "Una Ost", "misread"));
    List<Long> rulings = new ArrayList<>();
    for (Fact fact :
        List.of(
            new Fact.LineRefused(
                check, "eA==", "torn", "Half.", "serial port", "gate timer", ledger.instant()),
            new Fact.ReadingFlagged(check, reading, "jump", "far apart"),
            new Fact.LineHeld(null, "again", List.of(check)),
            new Fact.HoldLifted(hold, null, "dry"),
            CorrectionMade.ofDivision(check, "OC", "as entered"),
            new CorrectionConfirmed(made))) {
      SigningKey own = ledger.enrol("Judge " + (char) ('A' + rulings.size()), Role.JUDGE);
      ledger.sayAs(own, fact);
      rulings.add(dispute.rule(own, protest, Answer.DISMISSED, check));
    }
    List<String> findings = verified().findings();
    for (int i = 0; i < rulings.size(); i++) {
      String words =
          "Entry %d: the ruling has no effect: Judge %c signed something of check %d."
              .formatted(rulings.get(i), 'A' + i, check);
      assertTrue(findings.contains(words), words + " is not in " + findings);
    }
    assertEquals(
        rulings,
        Audited.of(ledger.file()).entries(Finding.Kind.RULING).stream()
            .filter(rulings::contains)
            .toList());
  }

  @Test
  void aProtestAgainstARecheckOrARunningCheckHasNoEffectHereEither() throws Exception {
    long over = dispute.over();
    long first = dispute.file(Cause.PROTEST, over);
    long beside = dispute.recheck(first, "401", "57.9 m/s");
    dispute.rule(judge, first, Answer.UPHELD, beside);
    long second = dispute.file(Cause.PROTEST, beside);
    long further = dispute.recheck(second, "401", "58.3 m/s");
    long ruling = dispute.rule(judge, second, Answer.UPHELD, further);
    long running = ledger.call("402", "Solveig Brattlie", "LB");
    long third = dispute.file(Cause.PROTEST, running);
    long early = dispute.rule(judge, third, Answer.DISMISSED, running);
    ledger.read("57.9 m/s");
    ledger.verdict();
    ledger.close(null);
    List<String> findings = verified().findings();
    for (String expected :
        List.of(
            second + ": the protest has no effect: check " + beside + " is a recheck, which",
            further + ": a recheck was opened under protest " + second + ", which has no effect",
            ruling + ": the ruling has no effect: the protest has no effect itself.",
            third + ": the protest has no effect: check " + running + " went on, and had come",
            early + ": the ruling has no effect: the protest has no effect itself.")) {
      assertTrue(
          findings.stream().anyMatch(words -> words.startsWith("Entry " + expected)),
          expected + " is not in " + findings);
    }
    assertTrue(cases().get(0).endsWith("check " + beside + " counts."), cases().toString());
    assertTrue(cases().get(1).contains("It has no effect: check " + beside), cases().toString());
  }

  @Test
  void whatARulingRestsOnIsNotMovedToAnotherArcherHereEither() throws Exception {
    long over = dispute.over();
    long protest = dispute.file(Cause.PROTEST, over);
    long beside = dispute.recheck(protest, "401", "57.9 m/s");
    dispute.rule(judge, protest, Answer.UPHELD, beside);
    long made = ledger.say(CorrectionMade.ofBib(beside, "402", "Solveig Brattlie", "misread"));
    long by = ledger.sayAs(other, new CorrectionConfirmed(made));
    List<String> findings = verified().findings();
    assertEquals(1, findings.size(), findings.toString());
    assertTrue(
        findings
            .get(0)
            .startsWith("Entry " + by + ": the confirmation has no effect: by a ruling a recheck"),
        findings.toString());
    assertTrue(cases().get(0).contains("check %d (bib 401, within)".formatted(beside)));
  }

  @Test
  void aRecheckOfAnotherArcherTakesNothingAway() throws Exception {
    long over = dispute.over();
    long protest = dispute.file(Cause.PROTEST, over);
    long beside = dispute.recheck(protest, "402", "57.9 m/s");
    long ruling = dispute.rule(judge, protest, Answer.UPHELD, beside);
    Told told = verified();
    assertEquals(
        List.of(
            "Entry %d: a recheck was opened under protest %d, of another bib, division or attempt than check %d."
                .formatted(beside, protest, over),
            "Entry %d: the ruling has no effect: check %d is of another bib or division than check %d."
                .formatted(ruling, beside, over)),
        told.findings());
    assertTrue(told.answers().get(1).startsWith("✕2 contradictions:"), told.toString());
    assertTrue(cases().get(0).endsWith("No ruling with effect: check " + over + " counts."));
    assertEquals(
        List.of(beside, ruling),
        Audited.of(ledger.file()).findings().stream()
            .filter(Finding::isContradiction)
            .map(found -> found.entries().get(0))
            .toList(),
        "the audit finds the same");
  }

  @Test
  void whoWasAJudgeAndWasEnrolledAnewWithoutTheRoleRulesOnNothing() throws Exception {
    long over = dispute.over();
    long protest = dispute.file(Cause.PROTEST, over);
    ledger.suspend(judge, "left");
    ledger.enrolAgain(judge, "Judge Elm", Role.OFFICIAL);
    long ruling = dispute.rule(judge, protest, Answer.DISMISSED, over);
    assertEquals(
        List.of(
            "Entry %d: the ruling has no effect: Judge Elm was not enrolled as a judge at the time."
                .formatted(ruling)),
        verified().findings());
    assertEquals(
        List.of(Finding.Kind.RULING),
        Audited.of(ledger.file()).findings().stream()
            .filter(Finding::isContradiction)
            .map(Finding::kind)
            .toList());
  }

  /**
   * Chromium's own table of the property (Unicode UAX 44) beside the list in PersonName, as far as
   * Java knows the characters.
   */
  @Test
  void whatNobodySeesInANameIsTheSameHereAndThere() throws Exception {
    String there =
        browser
            .evaluate(
                """
                (() => {
                  const unseen = [];
                  for (let i = 0; i <= 0x10ffff; i++) {
                    const one = i >= 0xd800 && i < 0xe000 ? "" : String.fromCodePoint(i);
                    if (/[\\p{Cf}\\p{Default_Ignorable_Code_Point}]/u.test(one)) unseen.push(i);
                  }
                  return unseen.join(" ");
                })()""")
            .asText();
    assertEquals(
        Stream.of(there.split(" ")).map(Integer::valueOf).filter(Character::isDefined).toList(),
        IntStream.rangeClosed(0, Character.MAX_CODE_POINT)
            .filter(Character::isDefined)
            .filter(i -> new PersonName(Character.toString(i)).unseen().isPresent())
            .boxed()
            .toList());
  }

  @Test
  void aSecondKeyOfTheSamePersonCountsForNothing() throws Exception {
    long check = dispute.over();
    long protest = dispute.file(Cause.PROTEST, check);
    long made = ledger.say(CorrectionMade.ofDivision(check, "OC", "as entered"));
    SigningKey second = ledger.enrol(ScriptedLedger.OFFICIAL, Role.JUDGE);
    long ruling = dispute.rule(second, protest, Answer.DISMISSED, check);
    long confirmed = ledger.sayAs(second, new CorrectionConfirmed(made));
    String name = ScriptedLedger.OFFICIAL;
    assertEquals(
        List.of(
            "Entry %d: the ruling has no effect: %s signed something of check %d."
                .formatted(ruling, name, check),
            "Entry %d: the confirmation has no effect: %s made correction %d, and nobody confirms their own."
                .formatted(confirmed, name, made)),
        verified().findings());
  }

  @Test
  void aCorrectionNeedsASecondSignerAndATypedReading() throws Exception {
    long check = dispute.over();
    long measured = ledger.now().shots().get(0).sequence();
    long slow =
        ledger.say(CorrectionMade.ofReading(check, measured, Speed.parse("57 m/s"), "slow"));
    long refused = ledger.sayAs(other, new CorrectionConfirmed(slow));
    long none = ledger.say(CorrectionMade.ofDivision(check, "ZZ", "as entered"));
    long lacking = ledger.sayAs(other, new CorrectionConfirmed(none));
    long made = ledger.say(CorrectionMade.ofDivision(check, "OC", "as entered"));
    long self = ledger.say(new CorrectionConfirmed(made));
    long by = ledger.sayAs(other, new CorrectionConfirmed(made));
    ledger.verdict();
    long twice = ledger.sayAs(judge, new CorrectionConfirmed(made));
    Told told = verified();
    String effect = ": the confirmation has no effect: ";
    assertEquals(
        List.of(
            "Entry "
                + refused
                + effect
                + "the reading was measured, and only a typed one can be corrected.",
            "Entry " + lacking + effect + "the rule book of the check has no division ZZ.",
            "Entry "
                + self
                + effect
                + "Ottoline Vantreese made correction "
                + made
                + ", and nobody confirms their own.",
            "Entry " + twice + effect + "it had been confirmed by entry " + by + "."),
        told.findings());
    assertEquals(
        "✕4 contradictions: what was signed goes against itself; listed below.",
        told.answers().get(1));
    assertEquals(
        "?3 protests and corrections: 2 without effect yet; told below.", told.answers().get(3));
    assertEquals(
        "Correction %d of the division of check %d, made by Ottoline Vantreese. From LB to OC, confirmed by a second person, Wim Ezra (entry %d)."
            .formatted(made, check, by),
        cases().get(2));
    assertTrue(cases().get(0).endsWith("No second person confirmed it: it has no effect."));
  }

  @Test
  void whoseTheOrganizersKeyIsTheRollDoesNotSay() throws Exception {
    long check = dispute.over();
    long made = ledger.say(CorrectionMade.ofBib(check, "402", "Una Ost", "misread"));
    long by = ledger.sayAs(ledger.organizer(), new CorrectionConfirmed(made));
    long tick = ledger.sayAs(ledger.organizer(), new Fact.ConditionTicked(check, "full draw"));
    long ruling = dispute.rule(judge, dispute.file(Cause.PROTEST, check), Answer.DISMISSED, check);
    assertEquals(
        List.of(
            "Entry %d: the confirmation has no effect: one of its keys is the organizer’s, which names nobody: no second person is shown."
                .formatted(by),
            "Entry %d: a tick stands behind the end of check %d, bib 401.".formatted(tick, check),
            "Entry %d: the ruling has no effect: something of check %d is signed with the organizer’s key, which names nobody."
                .formatted(ruling, check)),
        verified().findings());
  }

  @Test
  void otherPersonsConfirmAndRuleWithReplacedKeysAsWell() throws Exception {
    long check = dispute.over();
    long made = ledger.say(CorrectionMade.ofBib(check, "402", "Una Ost", "misread"));
    long by = ledger.sayAs(ledger.replace(other, "lost"), new CorrectionConfirmed(made));
    dispute.rule(
        ledger.replace(judge, "lost"), dispute.file(Cause.PROTEST, check), Answer.DISMISSED, check);
    assertEquals(List.of(), verified().findings());
    assertTrue(cases().get(0).endsWith("by a second person, Wim Ezra (entry " + by + ")."));
    assertTrue(cases().get(1).contains("Dismissed by Judge Elm"), cases().toString());
  }

  @Test
  void aNameWrittenOtherwiseIsTheSamePersons() throws Exception {
    long made = ledger.say(CorrectionMade.ofBib(dispute.over(), "402", "Una Ost", "misread"));
    SigningKey anew = ledger.enrol("ottoline  VANTREESE.", Role.OFFICIAL);
    long by = ledger.sayAs(anew, new CorrectionConfirmed(made));
    assertEquals(
        List.of(by),
        Audited.of(ledger.file()).entries(Finding.Kind.CORRECTION).stream()
            .filter(List.of(by)::contains)
            .toList());
    SigningKey twin = ledger.enrol("Otto\u200bline Vantr\u00adeese", Role.JUDGE);
    ledger.sayAs(twin, new CorrectionConfirmed(made));
    assertEquals(2, Audited.of(ledger.file()).entries(Finding.Kind.CORRECTION).size() / 2);
    List<String> findings = verified().findings();
    assertEquals(2, findings.size(), findings.toString());
    assertTrue(findings.get(0).endsWith("nobody confirms their own."));
    assertTrue(findings.get(1).endsWith("nobody confirms their own."));
  }
}
