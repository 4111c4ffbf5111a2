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
import lanewarden.ledger.Verification;
import lanewarden.station.PracticeEvent;
import org.junit.jupiter.api.Test;

/** A check with its raw readings in a terminal, as a judge looks into it. */
class CheckCommandTest extends PracticeRun {

  private Typed check(String which, String... more) {
    List<String> words = new ArrayList<>(List.of("check", event.path().toString(), which));
    words.addAll(List.of(more));
    return new Typed().run(words.toArray(String[]::new));
  }

  private List<JsonNode> told(String which, String kind) throws Exception {
    Typed typed = check(which, "--json");
    assertEquals(0, typed.code(), typed.toString());
    List<JsonNode> told = new ArrayList<>();
    for (String line : typed.lines()) {
      JsonNode one = new ObjectMapper().readTree(line);
      if (one.get("kind").asText().equals(kind)) {
        told.add(one);
      }
    }
    return told;
  }

  private int ruleBookEntry() throws Exception {
    List<String> kinds = new ArrayList<>();
    Verification.of(event.ledger(), List.of(), examined -> kinds.add(examined.entry().kind()));
    return kinds.indexOf("rule-book-adopted");
  }

  /** Two checks of bib 3, the first void; more than one arrow is refused with it. */
  private void shootTwice() {
    Typed typed =
        line("3", "wait", "void glare", "typed 58.9 m/s", "next", "3", "wait", "next", "out");
    assertEquals(0, typed.code(), typed.toString());
  }

  private List<String> numbers(String which) throws Exception {
    return told(which, "number").stream().map(one -> one.get("check").asText()).toList();
  }

  @Test
  void aBibShowsAllItsChecksTheNewestFirstAndANumberShowsOne() throws Exception {
    shootTwice();
    List<String> both = numbers("3");
    assertEquals(2, both.size());
    assertTrue(Long.parseLong(both.get(0)) > Long.parseLong(both.get(1)), both.toString());
    assertEquals(List.of(both.get(1)), numbers(both.get(1)));
    assertEquals(List.of(both.get(0)), numbers("check " + both.get(0)));
  }

  @Test
  void everyShotStandsThereWithItsBytesAndWhatWasRefusedOrVoidWithItsReason() throws Exception {
    shootTwice();
    String first = numbers("3").get(1);
    JsonNode raw = told(first, "raw").get(0);
    String bytes = raw.get("raw").asText();
    // NMEA 0183: an exclusive or of the characters between $ and *, as two hex digits
    int sum = bytes.substring(1, bytes.indexOf('*')).chars().reduce(0, (a, b) -> a ^ b);
    assertEquals(String.format("*%02X\\r\\n", sum), bytes.substring(bytes.indexOf('*')));
    Typed typed = check(first);
    for (String line :
        List.of(
            "limit    58 m/s, no tolerance",
            "check    3 Cat Fletcher, Longbow",
            "raw      " + bytes + "  Gate timer, simulated, ",
            "void     reading 1: glare",
            "refused  58.9 m/s  already decided: ",
            "outcome  NOT DECIDED: 1 void reading, 0 forgiven",
            "signed   verdict by " + PracticeEvent.OFFICIAL + ", ",
            "left     with its verdict",
            "counts   check " + first)) {
      assertTrue(typed.lines().stream().anyMatch(l -> l.startsWith(line)), line + "\n" + typed);
    }
    assertFalse(typed.results().contains("LEDGER"), typed.toString());
  }

  private void stands(String distance) throws Exception {
    Path settings = event.path().resolve("station.toml");
    String others = Files.readString(settings).replaceFirst("(?s)\\[place].*", "");
    Files.writeString(settings, others + "[place]\ndistance = \"" + distance + "\"\n");
  }

  private String speedAtBow(String words) {
    return words.replaceFirst("(?s).*; at the bow about ([0-9.]+ (m|ft)/s).*", "$1");
  }

  @Test
  void theSpeedAtTheBowIsToldFromWhereTheInstrumentStoodThen() throws Exception {
    stands("3 m");
    // By whom the reading came first, the simulator or who typed, does not matter
    line("3", "setup arrow 400", "typed 57 m/s", "next", "out");
    String near = speedAtBow(check("3").results());
    assertTrue(near.matches("[0-9.]+ (m|ft)/s"), check("3").toString());
    stands("30 m");
    line("4", "setup arrow 400", "typed 57 m/s", "end enough", "out");
    assertEquals(near, speedAtBow(check("3").results()), "it stood elsewhere then");
    String far = speedAtBow(check("4").results());
    assertTrue(far.matches("[0-9.]+ (m|ft)/s"), check("4").toString());
    assertFalse(far.equals(near), far);
  }

  @Test
  void theSetUpIsToldAlsoWhereTheRuleAsksForNoFigure() throws Exception {
    event =
        PracticeEvent.make(
            here.resolve("weighed"),
            PracticeEvent.RULES,
            "bib,name,division,arrow-mass,draw-weight\n1,Ann Archer,OC,420 gr,58 lbf\n");
    String stated = "set-up   arrow mass 420 gr, draw weight 58 lbf";
    Typed atTheLine = line("1", "wait", "next", "out");
    assertTrue(atTheLine.lines().contains(stated), atTheLine.toString());
    assertTrue(check("1").lines().contains(stated), check("1").toString());
  }

  @Test
  void aCheckThatEndedWithoutAVerdictSaysWhyAndOneAtTheLineThatItIsThere() {
    line("1", "end the bow broke", "out");
    assertTrue(check("1").lines().contains("left     without a verdict: the bow broke"));
    line("2", "typed 270 ft/s");
    Typed typed = check("2");
    assertTrue(typed.lines().contains("left     not yet: it is at the line"), typed.toString());
  }

  @Test
  void aNameOrItsBeginningFindsTheChecksAndSeveralAreToldWithTheirBibs() throws Exception {
    shootTwice();
    assertEquals(2, numbers("cat fl").size());
    line("1", "wait", "next", "out");
    Typed several = check("a");
    assertEquals(2, several.code(), several.toString());
    assertTrue(several.talk().contains("WHICH-CHECK"), several.toString());
    assertTrue(several.talk().contains("3 Cat Fletcher"), several.toString());
    assertEquals("", several.results());
  }

  @Test
  void whatIsNotThereIsSaidAndIsNoFaultOfTheLedger() {
    for (String which : List.of("77", "check 3", "nobody")) {
      Typed typed = check(which);
      assertEquals(2, typed.code(), typed.toString());
      assertTrue(typed.talk().contains("NO-SUCH-CHECK"), typed.toString());
      assertEquals("", typed.results());
    }
  }

  @Test
  void ofALedgerThatIsNotSoundItIsShownAndSaidToBeUnproved() throws Exception {
    shootTwice();
    JsonNode last = told("3", "signed").get(0);
    flip(last.get("entry").asInt() - 1);
    Typed typed = check("3");
    assertEquals(3, typed.code(), typed.toString());
    assertTrue(typed.talk().contains("not sound, so this is not proved"), typed.toString());
    assertTrue(typed.results().contains("raw      $"), typed.toString());
    assertTrue(check("77").talk().contains("No such check was found"));
    assertEquals(3, check("77").code());
  }

  @Test
  void aCheckWhoseRuleIsNotProvedIsNotShown() throws Exception {
    shootTwice();
    int adopted = ruleBookEntry();
    flip(adopted);
    Typed typed = check("3");
    assertEquals(3, typed.code(), typed.toString());
    assertEquals("", typed.results());
    assertTrue(
        typed.talk().contains("is not shown: the ledger does not hold the rule"), typed.toString());
  }
}
