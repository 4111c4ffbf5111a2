package lanewarden.kiosk.rulebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lanewarden.kiosk.look.Language;
import lanewarden.kiosk.look.Texts;
import lanewarden.quantity.Sentence;
import lanewarden.rules.Screening;
import lanewarden.station.RuleCurve;
import lanewarden.station.RuleDraft;
import lanewarden.station.RuleKey;
import lanewarden.station.Supposition;
import lanewarden.station.Trouble;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The studio's view-models, without a toolkit; work is done when the test says so. */
class StudioModelsTest {
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-04-03T18:20:05Z"), ZoneOffset.UTC);

  @TempDir Path folder;
  private final Deque<Runnable> work = new ArrayDeque<>();
  private final Texts texts = Texts.in(Language.ENGLISH);
  private Path file;
  private RuleBookViewModel book;
  private EffectViewModel effect;

  @BeforeEach
  void open() throws Exception {
    file = folder.resolve("rules.toml");
    Files.copy(Path.of("demo-data/rule-book.toml"), file);
    book = new RuleBookViewModel(RuleDraft.open(file), CLOCK, work::add, Runnable::run);
    effect = new EffectViewModel(book, texts, work::add, Runnable::run);
    done();
  }

  private void done() {
    while (!work.isEmpty()) {
      work.remove().run();
    }
  }

  private RuleCurve curve() {
    return effect.page().get().first().orElseThrow().curve().orElseThrow();
  }

  @Test
  void theFirstDivisionIsOpenAndItsCurveIsThere() {
    assertEquals(1, book.section().get());
    assertEquals("OC", effect.page().get().first().orElseThrow().name());
    assertEquals("309.00 ft/s", curve().allowed().toString());
    assertEquals(0, curve().drawn());
    assertEquals("", effect.page().get().note());
  }

  @Test
  void typingRedrawsTheCurve() {
    double before = curve().risks().honestFailed();
    book.type(RuleKey.TOLERANCE, "none");
    done();
    assertTrue(curve().risks().honestFailed() > before + 0.2);
  }

  @Test
  void onlyTheLatestOfManyCurvesIsShown() {
    book.type(RuleKey.LIMIT, "310 ft/s");
    book.type(RuleKey.LIMIT, "320 ft/s");
    List<String> shown = new ArrayList<>();
    effect.page().addListener((all, was, now) -> shown.add(curve().limit().toString()));
    done();
    assertEquals(List.of("320 ft/s"), shown);
  }

  @Test
  void aFaultKeepsTheLastRightPictureAndSaysSo() {
    book.type(RuleKey.LIMIT, "30");
    done();
    assertEquals("300 ft/s", curve().limit().toString());
    assertEquals(texts.of("effect.before"), effect.page().get().note());
    book.open(2);
    done();
    book.type(RuleKey.LIMIT, "");
    book.open(1);
    done();
    assertTrue(effect.page().get().first().isEmpty(), "nothing of another division is shown");
    assertEquals(texts.of("effect.faulty"), effect.page().get().note());
  }

  @Test
  void aFaultThatWasMadeWhileTheCurveWasDrawnIsNotDrawnOver() {
    book.type(RuleKey.LIMIT, "310 ft/s");
    book.type(RuleKey.LIMIT, "310");
    done();
    assertEquals("300 ft/s", curve().limit().toString());
    assertEquals(texts.of("effect.before"), effect.page().get().note());
  }

  @Test
  void theRuleAsSavedStandsBesideTheChangedOneOverTheSameSpeeds() {
    effect.setBeside(new EffectViewModel.Beside.AsSaved());
    book.type(RuleKey.LIMIT, "290 ft/s");
    done();
    RuleCurve saved = effect.page().get().second().orElseThrow().curve().orElseThrow();
    assertEquals("300 ft/s", saved.limit().toString());
    assertEquals("290 ft/s", curve().limit().toString());
    assertEquals(saved.points().get(0).speed(), curve().points().get(0).speed());
    assertEquals("OC as saved", effect.page().get().second().orElseThrow().name());
  }

  @Test
  void anotherDivisionStandsBesideAndSaysWhenItCannot() {
    effect.setBeside(new EffectViewModel.Beside.Other(2));
    done();
    assertEquals("HC", effect.page().get().second().orElseThrow().name());
    book.open(2);
    book.type(RuleKey.LIMIT, "");
    book.open(1);
    done();
    assertTrue(effect.page().get().second().isEmpty());
    assertTrue(effect.page().get().note().startsWith("HC cannot stand beside it"));
  }

  @Test
  void everyOtherDivisionIsOfferedToStandBeside() {
    List<String> names = effect.choices().stream().map(effect::name).toList();
    assertEquals(List.of("Nothing", "OC as saved", "HC", "RB", "LB", "YC"), names);
  }

  @Test
  void whatIsSupposedChangesTheNumbersAndAFaultInItIsTold() {
    double before = curve().risks().excessPassed();
    effect.supposed(Supposition.EXCESS).set("12 ft/s");
    done();
    assertNotEquals(before, curve().risks().excessPassed());
    effect.supposed(Supposition.EXCESS).set("12");
    done();
    assertEquals("add the unit, one of ft/s, m/s", effect.fault(Supposition.EXCESS).get());
    assertEquals(texts.of("effect.supposed.faulty"), effect.page().get().note());
    effect.supposed(Supposition.EXCESS).set("0 ft/s");
    assertEquals("write more than zero", effect.fault(Supposition.EXCESS).get());
    effect.supposed(Supposition.VOIDS).set("100 %");
    assertEquals("write less than 100 %", effect.fault(Supposition.VOIDS).get());
  }

  @Test
  void archersAndInstrumentsWithoutAnySpreadHaveACurveToo() {
    for (Supposition one :
        List.of(Supposition.ARROWS, Supposition.READING, Supposition.CALIBRATION)) {
      effect.supposed(one).set("0 ft/s");
    }
    book.type(RuleKey.LIMIT, "10 ft/s");
    book.type(RuleKey.TOLERANCE, "none");
    done();
    assertEquals(0, curve().risks().honestFailed());
  }

  @Test
  void arrowMassIsAskedForOnlyWhereAClauseNeedsIt() {
    assertFalse(effect.isAsked(Supposition.ARROW));
    book.type(RuleKey.ENERGY, "80 J");
    done();
    assertTrue(effect.isAsked(Supposition.ARROW));
    assertFalse(effect.isAsked(Supposition.DRAW));
  }

  @Test
  void aLimitThatDoesNotApplyToTheSupposedArrowIsToldWithTheArrowsItAppliesTo() {
    book.type(RuleKey.ONLY_BELOW, "5 gr/lb");
    done();
    // 5 gr/lb at the 50 lbf supposed are 250 gr, and 400 gr are supposed
    assertEquals(Optional.empty(), effect.page().get().first().orElseThrow().curve());
    assertEquals(
        "No limit applies to the supposed arrow of 400 gr: it holds only for one of less than"
            + " 5 gr/lb, here less than 250 gr. To see what it does, suppose a lighter arrow, or"
            + " leave the arrow out.",
        said());
    effect.supposed(Supposition.ARROW).set("");
    done();
    assertEquals("300 ft/s", curve().limit().toString());
    assertTrue(said().contains(" The supposed arrow has 225 gr: the speed limit"), said());
    effect.supposed(Supposition.ARROW).set("249.9 gr");
    done();
    assertTrue(said().contains(" The supposed arrow has 249.9 gr: the speed limit"), said());
  }

  @Test
  void aLimitUnderWhichNobodyIsMeasuredHasNoCurveAndSaysSo() {
    book.type(RuleKey.WHO, "not measured");
    done();
    assertEquals("", effect.page().get().note());
    assertEquals(Optional.empty(), effect.page().get().first().orElseThrow().curve());
    assertTrue(said().startsWith("The limit holds, but nobody is measured"), said());
    assertEquals(List.of(), effect.page().get().first().orElseThrow().effect().cases());
  }

  private String said() {
    return Sentence.joined(effect.page().get().first().orElseThrow().effect().inWords());
  }

  @Test
  void reChecksAreSaidToBeCounted() {
    book.type(RuleKey.RECHECKS, "0");
    done();
    assertTrue(said().endsWith(" times in 100.") || said().endsWith(" times."), said());
    book.type(RuleKey.RECHECKS, "2");
    done();
    assertTrue(
        said().endsWith(" The 2 re-checks that the rule allows before the event are counted."),
        said());
    book.type(RuleKey.RECHECKS, "25");
    done();
    assertTrue(
        said()
            .endsWith(
                " Of the 25 re-checks that the rule allows before the event, 20 are counted."),
        said());
    book.type(RuleKey.RECHECKS, "1");
    book.type(RuleKey.FAIL_BEFORE, "barred");
    book.type(RuleKey.FAIL_DURING, "re-check");
    done();
    assertTrue(
        said().endsWith(" No re-check is counted, as not every fail before the event brings one."),
        said());
  }

  /** What the terminal's plan tells of the same numbers. */
  @Test
  void whatVoidsAReadingInEveryDivisionIsSaidInTheRulesOwnWords() {
    assertEquals("In every division: " + Screening.EVERYWHERE, texts.of("meaning.everywhere"));
  }

  @Test
  void aSimulatedCurveSaysFromHowManyArchers() {
    book.type(RuleKey.SPREAD, "2 ft/s");
    book.type(RuleKey.ROUND_READING, "down to 1 ft/s");
    done();
    // the root of 0.5 x 0.5 / 4000 is 0.0079
    assertEquals(
        "simulated from 4000 archers a speed, \u00b1 0.8 in 100", curve().how().toString());
  }

  @Test
  void whoNeitherPassesNorFailsIsNotCaught() {
    effect.supposed(Supposition.EXCESS).set("20 ft/s");
    book.type(RuleKey.SPREAD, "1 ft/s");
    done();
    assertTrue(curve().risks().excessPassed() < 0.01);
    assertTrue(curve().caught() < 0.3, "most checks end undecided: " + curve().caught());
  }

  @Test
  void fieldsAreShownWhereTheyMeanSomethingOrHoldSomething() {
    assertFalse(book.shows(RuleKey.WITHIN));
    assertFalse(book.shows(RuleKey.SHARE));
    assertFalse(book.shows(RuleKey.FACTOR));
    book.type(RuleKey.DECIDE, "k of n");
    book.type(RuleKey.WHO, "random share");
    book.type(RuleKey.TOLERANCE, "instrument accuracy");
    assertTrue(
        Stream.of(RuleKey.WITHIN, RuleKey.SHARE, RuleKey.FACTOR, RuleKey.ACCURACY)
            .allMatch(book::shows));
    book.type(RuleKey.WITHIN, "2");
    book.type(RuleKey.DECIDE, "mean");
    assertTrue(book.shows(RuleKey.WITHIN), "what stands there is never hidden");
    book.type(RuleKey.LIMIT, "none");
    assertFalse(book.shows(RuleKey.BOUND));
    assertTrue(book.shows(RuleKey.COUNTED), "its text is a fault now, and must be seen");
  }

  @Test
  void theEventHasANameAndAnEditionAndNoCurve() {
    book.open(RuleBookViewModel.EVENT);
    done();
    assertEquals(
        List.of(RuleKey.NAME, RuleKey.EDITION),
        Stream.of(RuleKey.values()).filter(book::shows).toList());
    assertEquals(texts.of("effect.none"), effect.page().get().note());
    book.type(RuleKey.EDITION, "2026-3");
    assertEquals("2026-3", book.draft().get().text(0, RuleKey.EDITION));
  }

  @Test
  void aCopyIsOpenedAndRemovingItOpensWhatFollows() {
    book.copy();
    assertEquals(2, book.section().get());
    assertEquals("OC", book.text(RuleKey.CODE));
    book.remove();
    assertEquals("HC", book.text(RuleKey.CODE));
    book.add();
    assertEquals(6, book.section().get());
    book.remove();
    assertEquals(5, book.section().get());
  }

  @Test
  void savingTellsWhereAndWhatIsTypedMeanwhileIsTakenInAfterwards() throws Exception {
    book.type(RuleKey.LIMIT, "290 ft/s");
    done();
    book.save();
    assertTrue(book.busy().get());
    book.type(RuleKey.LIMIT, "291 ft/s");
    done();
    assertFalse(book.busy().get());
    assertTrue(Files.readString(file).contains("290 ft/s"));
    assertEquals("291 ft/s", book.text(RuleKey.LIMIT));
    assertEquals(Optional.empty(), book.saved().get());
    book.save();
    done();
    assertEquals(Optional.of(RuleDraft.Writing.REPLACED), book.saved().get());
    book.save();
    done();
    assertEquals(Optional.of(RuleDraft.Writing.NOTHING), book.saved().get());
    assertTrue(Files.readString(file).contains("291 ft/s"));
  }

  @Test
  void aSavingThatFailsKeepsWhatWasTyped() throws Exception {
    book.type(RuleKey.LIMIT, "290 ft/s");
    Files.writeString(file, "# theirs");
    book.save();
    done();
    assertEquals("RULES-CHANGED", book.trouble().get().map(Trouble::code).orElseThrow());
    assertEquals("290 ft/s", book.text(RuleKey.LIMIT));
    book.saveAs("mine.toml", () -> {}, missed -> book.trouble().set(Optional.of(missed)));
    done();
    assertEquals(Optional.empty(), book.trouble().get());
    assertTrue(Files.readString(folder.resolve("mine.toml")).contains("290 ft/s"));
  }
}
