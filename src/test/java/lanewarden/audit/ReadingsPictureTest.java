package lanewarden.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import lanewarden.audit.press.Cut;
import lanewarden.audit.press.Ink;
import lanewarden.audit.press.Typeface;
import lanewarden.journal.Check;
import lanewarden.journal.Fact;
import lanewarden.rules.Division;
import lanewarden.rules.RuleBook;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Marks are told apart by shape: the legend draws each once, the readings add theirs. */
class ReadingsPictureTest {
  private static final Pattern FULL_CIRCLE = Pattern.compile("<circle [^>]*fill=\"#00626b\"");
  private static final Pattern HOLLOW_CIRCLE = Pattern.compile("<circle [^>]*fill=\"none\"");
  private static final Pattern TRIANGLE = Pattern.compile("<path [^>]*fill=\"#a3230c\"");

  @TempDir Path folder;
  private ScriptedLedger ledger;

  @BeforeEach
  void open() throws Exception {
    ledger = ScriptedLedger.with(folder.resolve("event.ledger"), ScriptedLedger.RULES);
  }

  @AfterEach
  void close() throws Exception {
    ledger.close();
  }

  private String svg() throws Exception {
    RuleBook book = ledger.standing().ruleBook().orElseThrow();
    Division division = book.division("OC").orElseThrow();
    List<Check> checks = new RuleRun(division, List.of(book)).governed(ledger.standing().checks());
    try (Typeface face = Typeface.open(Cut.TEXT)) {
      return DivisionSheet.of(division, "", checks, face, new Ink(List.of(face))).svg();
    }
  }

  private static long count(Pattern mark, String svg) {
    return mark.matcher(svg).results().count();
  }

  @Test
  void readingsInsideAboveAndVoidHaveTheirOwnShapes() throws Exception {
    ledger.call("101", "Marta Olesund", "OC");
    ledger.read("309.0 ft/s");
    ledger.read("309.1 ft/s");
    ledger.declareVoid(ledger.read("300 ft/s"), "clipped");
    String svg = svg();
    assertEquals(1 + 2, count(FULL_CIRCLE, svg), "309.0 is allowed; the legend shows two");
    assertEquals(1 + 1, count(TRIANGLE, svg));
    assertEquals(2 + 1, count(HOLLOW_CIRCLE, svg), "the legend shows two");
  }

  @Test
  void whatIsInQuestionIsDrawnHollowAndNotCounted() throws Exception {
    long check = ledger.check("101", "Marta Olesund", "OC", "312 ft/s", "312 ft/s", "300 ft/s");
    ledger.say(new Fact.LineHeld(null, "the stand was knocked", List.of(check)));
    String svg = svg();
    assertEquals(2 + 3, count(HOLLOW_CIRCLE, svg));
    assertTrue(svg.contains("0 readings that count"), svg);
  }

  @Test
  void aWildVoidReadingDoesNotFlattenTheScale() throws Exception {
    ledger.call("101", "Marta Olesund", "OC");
    ledger.read("300 ft/s");
    String calm = svg();
    ledger.declareVoid(ledger.read("2999 ft/s"), "sun in the gate");
    Pattern limit =
        Pattern.compile(
            "<path d=\"(M[^\"]*)\" fill=\"none\" stroke=\"#111111\" stroke-width=\"1.3\"/>");
    assertEquals(
        limit.matcher(calm).results().map(m -> m.group(1)).toList(),
        limit.matcher(svg()).results().map(m -> m.group(1)).toList());
  }

  @Test
  void theAlternativeTextSaysWhatThePictureShows() throws Exception {
    ledger.check("101", "Marta Olesund", "OC", "312 ft/s", "312 ft/s", "300 ft/s");
    assertTrue(
        svg()
            .contains(
                "alt=\"Arrow speeds in the division Open compound against the limit of 300 ft/s,"
                    + " allowed 309 ft/s: 3 readings that count, 2 of them over it."));
  }

  @Test
  void aDivisionWithoutChecksHasNoPicture() throws Exception {
    assertEquals("", svg());
  }
}
