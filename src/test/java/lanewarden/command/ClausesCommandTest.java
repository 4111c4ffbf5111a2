package lanewarden.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The words and commands for what the clauses of a rule book ask. */
class ClausesCommandTest extends ClausesRun {
  private static final String SEED = "41523 61345 22516 44163";

  @Test
  void tellsWhatIsMissingAndTakesTheFiguresTyped() {
    Typed typed = line("11", "wait", "setup arrow 365.5, draw 60", "wait");
    assertSays(
        typed,
        "set-up   nothing stated",
        "waits    to be stated first: arrow mass, draw weight as set",
        "set-up   arrow mass 365.5 gr, draw weight 60 lbf",
        "least    the lightest arrow admitted with this draw weight: 360 gr",
        "reading  1: 269.4 ft/s",
        "outcome  WITHIN");
  }

  @Test
  void figuresStandInAnyOrderAndUnit() {
    Typed typed = line("14", "setup certified 62 lbf draw 267 N arrow 24.2 g");
    assertSays(
        typed, "set-up   arrow mass 24.2 g, draw weight 267 N, certified draw weight 62 lbf");
  }

  @Test
  void wordsThatAreNoFiguresAreAnswered() {
    Typed typed = line("11", "setup 350", "setup arrow", "setup arrow 350 arrow 351", "setup");
    assertEquals(5, typed.talk().split("SET-UP-WORDS", -1).length, typed.toString());
  }

  @Test
  void ticksOneOrAllAndTellsThatTheVerdictWaitsForThem() {
    Typed typed = line("31", "wait", "tick 2", "tick");
    assertSays(
        typed,
        "waits    to be ticked: full draw; 4 yd from the instrument",
        "tick     4 yd from the instrument",
        "waits    to be ticked: full draw",
        "tick     full draw",
        "outcome  WITHIN");
  }

  @Test
  void aTickThatNothingAsksForIsAnswered() {
    assertTrue(line("31", "tick 3").talk().contains("NO-SUCH-CONDITION"));
  }

  @Test
  void callsOnGroundsAndTellsThem() {
    Typed typed = line("51", "51 because named by judge Ostrander");
    assertTrue(typed.talk().contains("GROUNDS-MISSING"), typed.toString());
    assertSays(typed, "grounds  named by judge Ostrander");
  }

  @Test
  void thePhaseIsToldAndChanged() {
    Typed typed = line("phase later", "phase during", "81", "wait");
    assertSays(typed, "phase    before the event", "phase    during the event");
    assertTrue(typed.talk().contains("PHASE-WORD"), typed.toString());
    assertSays(
        typed,
        "outcome  OVER: reading 341.0 ft/s, limit 300 ft/s. What follows: the scores shot with this"
            + " set-up are struck out.");
  }

  @Test
  void thePhaseGoesBackOnlyWithAReason() {
    Typed typed = line("phase during", "phase before", "phase before because begun by mistake");
    assertEquals(2, typed.talk().split("PHASE-BACK", -1).length, typed.toString());
    assertEquals(
        List.of("phase    during the event", "phase    before the event"),
        typed.lines().stream().filter(l -> l.startsWith("phase ")).skip(1).toList());
  }

  @Test
  void tellsWhoIsNotAdmittedDuringTheEventThatTheyMayComeBack() {
    assertSays(
        line("phase during", "13"),
        "outcome  NOT ADMITTED: arrow mass 359.9 gr, at least 6 gr/lb × 60 lbf = 360 gr. What"
            + " follows: the archer may come back with another bow or arrow.");
  }

  @Test
  void drawsAtTheLine() {
    Typed typed = line("41", "draw RS " + SEED, "draw RS " + SEED);
    assertTrue(typed.talk().contains("DRAW-MISSING"), typed.toString());
    assertTrue(typed.talk().contains("DRAWN-ALREADY"), typed.toString());
    assertSays(typed, "draw     RS: ");
  }

  @Test
  void drawsWithoutALine() throws Exception {
    Typed typed =
        new Typed().run(signed("draw", "RS", "--seed", SEED, "--json").toArray(String[]::new));
    assertEquals(0, typed.code(), typed.toString());
    JsonNode draw = new ObjectMapper().readTree(typed.results());
    assertEquals(2, draw.get("drawn").size());
    assertEquals(SEED, draw.get("seed").asText());
    Typed again = new Typed().run(signed("draw", "RS", "--seed", SEED).toArray(String[]::new));
    assertEquals(2, again.code(), again.toString());
    assertTrue(again.talk().contains("DRAWN-ALREADY"), again.toString());
  }

  @Test
  void aDrawOfADivisionWithoutAShareSaysWhichAreDue() {
    Typed typed = new Typed().run(signed("draw", "EQ", "--seed", SEED).toArray(String[]::new));
    assertEquals(2, typed.code(), typed.toString());
    assertTrue(typed.talk().contains("NO-SHARE"), typed.toString());
    assertTrue(typed.talk().contains("To be drawn: RS, 50 % of 4."), typed.toString());
  }

  @Test
  void theCurveGivesEveryChanceAtEveryTrueSpeed() throws Exception {
    List<String> table = toldOf("CO", "--curve");
    assertTrue(table.stream().anyMatch(l -> l.contains("% within")), table.toString());
    List<String> rows = table.stream().filter(l -> l.matches("( +[0-9]+[.][0-9]){4}")).toList();
    assertEquals(31, rows.size(), table.toString());
    for (String row : rows) {
      String[] figures = row.strip().split(" +");
      double sum = 0;
      for (int i = 1; i < figures.length; i++) {
        sum += Double.parseDouble(figures[i]);
      }
      assertEquals(100, sum, 0.11, row);
    }
    Typed typed =
        new Typed().run("rules", event.path().toString(), "--division", "CO", "--curve", "--json");
    JsonNode effect =
        new ObjectMapper().readTree(typed.results()).get("divisions").get(0).get("effect");
    assertEquals(121, effect.get("curve").size());
    assertTrue(effect.get("curve").get(0).get("within").asDouble() > 0.9, typed.results());
    assertTrue(effect.get("curve").get(120).get("over").asDouble() > 0.5, typed.results());
  }

  @Test
  void anotherRuleBookStandsBesideAndWhatDiffersIsTold() throws Exception {
    Path other = here.resolve("other.toml");
    String written = Files.readString(event.path().resolve("rule-book.toml"));
    Files.writeString(other, written.replace("share = \"50 %\"", "share = \"25 %\""));
    List<String> told = toldOf("RS", "--beside", other.toString());
    assertTrue(told.contains("beside it: RS of " + other + "  Division RS"), told.toString());
    assertTrue(
        told.contains("  only the first:  A random share of 50 % is checked."), told.toString());
    assertTrue(
        told.contains("  only the second: A random share of 25 % is checked."), told.toString());
    assertTrue(
        toldOf("CO", "--beside", other.toString()).contains("  Nothing: both demand the same."));
  }

  @Test
  void anotherDivisionStandsBeside() throws Exception {
    Typed typed =
        new Typed()
            .run("rules", event.path().toString(), "--division", "CO", "--beside", "eq", "--json");
    JsonNode beside = new ObjectMapper().readTree(typed.results()).get("divisions").get(0);
    assertEquals("EQ", beside.get("beside").get("code").asText(), typed.toString());
    assertFalse(beside.get("beside").get("onlyFirst").isEmpty(), typed.toString());
    assertFalse(beside.get("beside").get("onlySecond").isEmpty(), typed.toString());
    Typed none = new Typed().run("rules", event.path().toString(), "--beside", "XX");
    assertTrue(none.talk().contains("NO-SUCH-DIVISION"), none.toString());
    assertTrue(
        none.talk().contains("There is no file XX, and the rule book has no such division."),
        none.toString());
  }

  @Test
  void theCertifiedDrawWeightIsSupposedApart() {
    Typed refused = new Typed().run("rules", event.path().toString(), "--certified", "much");
    assertEquals(2, refused.code(), refused.toString());
    assertTrue(refused.talk().contains("--certified expected"), refused.talk());
    assertFalse(refused.talk().contains("--draw-weight expected"), refused.talk());
  }

  @Test
  void saysWhatARuleBookDemands() throws Exception {
    Typed typed = new Typed().run("rules", event.path().toString());
    assertEquals(0, typed.code(), typed.toString());
    assertSays(
        typed,
        "event    Clauses, edition 1",
        "EQ  Division EQ",
        "  An arrow of less than 6 gr/lb is not admitted (draw weight as set).",
        "  A random share of 50 % is checked.",
        "    arrow too light (arrow 299 gr; draw weight 50 lbf): not admitted",
        "    An archer whose arrows fly at exactly ");
    Typed one = new Typed().run("rules", event.path().toString(), "--division", "co", "--json");
    JsonNode json = new ObjectMapper().readTree(one.results());
    assertEquals(1, json.get("divisions").size());
    assertEquals("CO", json.get("divisions").get(0).get("code").asText());
    assertFalse(json.get("divisions").get(0).get("demands").isEmpty());
    assertFalse(json.get("divisions").get(0).get("cases").isEmpty());
    double failed = json.get("divisions").get(0).get("effect").get("failedAtLimit").asDouble();
    assertTrue(failed > 0 && failed < 1, one.results());
  }

  private List<String> toldOf(String division, String... more) {
    List<String> arguments =
        new ArrayList<>(List.of("rules", event.path().toString(), "--division", division));
    arguments.addAll(List.of(more));
    List<String> told = new Typed().run(arguments.toArray(String[]::new)).lines();
    int last = told.size() - 1;
    // what holds in every division comes behind an empty line
    return told.get(last).startsWith("In every division") ? told.subList(0, last - 1) : told;
  }

  @Test
  void supposesAnArrowToWhichTheLimitApplies() {
    List<String> light = toldOf("LI");
    assertTrue(
        light.stream()
            .anyMatch(
                line ->
                    line.endsWith(
                        " The re-check that the rule allows before the event is counted. The supposed arrow has"
                            + " 225 gr: the speed limit holds only for one of less than 5 gr/lb,"
                            + " here less than 250 gr.")),
        light.toString());
    List<String> heavy = toldOf("LI", "--arrow", "300 gr");
    assertTrue(
        heavy
            .get(heavy.size() - 1)
            .startsWith("  No limit applies to the supposed arrow of 300 gr"),
        heavy.toString());
  }

  @Test
  void saysThatALimitHoldsThoughNobodyIsMeasured() {
    List<String> said = toldOf("NM");
    assertEquals(
        "  The limit holds, but nobody is measured: at the line nobody passes or is failed.",
        said.get(said.size() - 1));
    assertFalse(said.stream().anyMatch(line -> line.contains("readings")), said.toString());
    List<String> none = toldOf("NO");
    assertEquals("  There is no limit, so no shot is measured.", none.get(none.size() - 1));
  }

  @Test
  void tellsTheChanceThatPlanAsksFor() {
    List<String> said = toldOf("CO");
    String last = said.get(said.size() - 1);
    String share = last.substring(last.indexOf('"') + 1, last.lastIndexOf('"'));
    Typed plan =
        new Typed().run("plan", "--competitors", "9", "--minutes", "60", "--caught", share);
    assertEquals(0, plan.code(), plan.toString());
  }

  @Test
  void everyFaultInWhatIsSupposedIsToldAtOnceWithItsOption() {
    Typed refused =
        new Typed()
            .run(
                "rules",
                event.path().toString(),
                "--arrows",
                "2",
                "--faster",
                "0 ft/s",
                "--draw-weight",
                "heavy");
    assertEquals(2, refused.code(), refused.toString());
    List<String> why = refused.talk().lines().toList().subList(1, 4);
    assertTrue(why.get(0).startsWith("  why: --arrows expected a speed"), why.toString());
    assertTrue(why.get(1).startsWith("       --faster expected a speed of more"), why.toString());
    assertTrue(why.get(2).startsWith("       --draw-weight expected"), why.toString());
    assertTrue(refused.talk().lines().toList().get(4).startsWith("  what to do:"), refused.talk());
  }

  @ParameterizedTest
  @ValueSource(strings = {"--arrows 2", "--faster 0", "--void-shots 100", "--arrow 2ft/s"})
  void whatIsSupposedMustBeReadable(String options) {
    List<String> typed = new ArrayList<>(List.of("rules", event.path().toString()));
    String[] part = options.split(" ", 2);
    typed.addAll(List.of(part[0], part[1].equals("100") ? "100 %" : part[1]));
    Typed refused = new Typed().run(typed.toArray(String[]::new));
    assertEquals(2, refused.code(), refused.toString());
    assertTrue(refused.talk().contains(part[0]), refused.talk());
  }

  @Test
  void saysWhichDivisionsThereAreAndWhatIsFaulty() throws Exception {
    Typed none = new Typed().run("rules", event.path().toString(), "--division", "XX");
    assertEquals(2, none.code(), none.toString());
    assertTrue(none.talk().contains("EQ, GR, LI"), none.toString());
    Path faulty = Files.writeString(here.resolve("faulty.toml"), "format = 1\n");
    Typed typed = new Typed().run("rules", faulty.toString());
    assertEquals(2, typed.code(), typed.toString());
    assertTrue(typed.talk().contains("faulty.toml:"), typed.toString());
  }
}
