package lanewarden.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import lanewarden.quantity.Speed;
import lanewarden.written.WrittenRefused;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Rules in which nothing asks about a misread say so, and keep the verdicts that they gave. */
class UnscreenedTest {

  private static String rule(String limit, int counted, String more) {
    return """
    limit = "%s"
    tolerance = "none"
    decide = "mean"
    counted = %d
    shots = 7
    voids = 1
    rechecks = 0
    %s
    """
        .formatted(limit, counted, more);
  }

  @ParameterizedTest
  @CsvSource({
    "300 ft/s, 1, jump = \"10 ft/s\"",
    "300 ft/s, 2, jump = \"10 ft/s\"",
    "300 ft/s, 4, jump = \"10 ft/s\"",
    "300 ft/s, 5, outlier-least = \"3 ft/s\"",
    "65 m/s, 3, jump = \"3 m/s\"",
    "65 m/s, 6, outlier-least = \"1 m/s\""
  })
  void aRuleWithoutAClauseSaysWhatToWrite(String limit, int counted, String write) {
    Division division = Cases.division(rule(limit, counted, ""));
    String remark = division.remark().orElseThrow().toString();
    assertTrue(remark.startsWith("No clause asks about a reading that seems odd"), remark);
    assertTrue(remark.contains(write), remark);
    assertEquals(remark, division.told().get(division.told().size() - 1).toString());
    assertFalse(division.inWords().contains(remark), "it is no demand of the rule");
  }

  /** What the remark tells the organizer to write is taken, and the remark is gone. */
  @ParameterizedTest
  @CsvSource({"300 ft/s, 2", "300 ft/s, 3", "300 ft/s, 5", "65 m/s, 2", "65 m/s, 6"})
  void whatItSaysToWriteMendsIt(String limit, int counted) throws WrittenRefused {
    String remark = Cases.division(rule(limit, counted, "")).remark().orElseThrow().toString();
    String toWrite = remark.replaceFirst(".* write ", "").replaceFirst("\\.$", "");
    for (String one : toWrite.split(", or ")) {
      Division mended =
          Cases.readDivision(rule(limit, counted, one.replace(" and outlier", "\noutlier")));
      assertTrue(mended.remark().isEmpty(), one);
      assertEquals(mended.sentences(), mended.told());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"who = \"not measured\"", "jump = \"10 ft/s\""})
  void nothingIsRemarkedWhereNobodyIsMeasuredOrSomebodyIsAsked(String more) {
    assertTrue(Cases.division(rule("300 ft/s", 3, more)).remark().isEmpty());
  }

  @Test
  void aRuleOfBowAndArrowAloneHasNoReadingsToScreen() {
    Division division =
        Cases.division("limit = \"none\"\nleast-arrow = \"5 gr/lb\"\nrechecks = 0\n");
    assertTrue(division.remark().isEmpty());
  }

  /** Older ledgers are judged anew by their own rule books: no clause may be made up for them. */
  @Test
  void noTestIsMadeThatTheRuleBookDoesNotHave() {
    Rule silent = Cases.division(rule("300 ft/s", 3, "")).rule();
    List<Shot> misread = List.of(read("298 ft/s"), read("299 ft/s"), read("270 ft/s"));
    assertTrue(silent.doubts(SetUp.unknown(), misread).isEmpty());
    assertInstanceOf(Verdict.Within.class, silent.judge(SetUp.unknown(), Set.of(), misread));
    Rule asking = Cases.division(rule("300 ft/s", 3, "jump = \"10 ft/s\"")).rule();
    assertInstanceOf(Verdict.NotDecided.class, asking.judge(SetUp.unknown(), Set.of(), misread));
  }

  /** Critical values of Grubbs' test: NIST/SEMATECH e-Handbook, 1.3.5.17.1 (its formula). */
  @Test
  void ofThreeReadingsTheTestFindsWhatTheDecisionPageSays() {
    Rule testing =
        Cases.division(
                rule("300 ft/s", 3, "outlier = \"Grubbs at 5 %\"\noutlier-least = \"3 ft/s\""))
            .rule();
    SetUp unknown = SetUp.unknown();
    assertTrue(
        testing
            .doubts(unknown, List.of(read("298 ft/s"), read("299 ft/s"), read("270 ft/s")))
            .isEmpty());
    assertEquals(
        1,
        testing
            .doubts(unknown, List.of(read("298.0 ft/s"), read("298.2 ft/s"), read("270 ft/s")))
            .size());
  }

  private static Shot read(String speed) {
    return new Shot.Read(Speed.parse(speed));
  }
}
