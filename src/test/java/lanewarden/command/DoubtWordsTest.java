package lanewarden.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.util.List;
import lanewarden.station.PracticeEvent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What the terminal tells of readings that are not believed, and of those that are again. */
class DoubtWordsTest extends PracticeRun {
  private static final String RULES =
      """
      format = 1
      [event]
      name = "Doubts"
      edition = "1"
      [[division]]
      code = "JU"
      name = "Jump"
      limit = "309 ft/s"
      tolerance = "none"
      decide = "highest"
      counted = 3
      shots = 4
      voids = 1
      rechecks = 1
      jump = "100 ft/s"
      """;

  /** Common practice: 101 ft·lbf are available, and 350 gr at 365 ft/s carry 104. */
  private static final String ROSTER =
      """
      bib,name,division,arrow-mass,draw-weight,draw-length,brace-height
      1,Ann Plain,JU,,,,
      2,Ben Bow,JU,350 gr,60 lbf,29 in,7 in
      """;

  private static final String VOID = "void     shot 2: 365 ft/s is impossible";
  private static final String COUNTS =
      "counts   reading 2: 365 ft/s counts again: as bow and arrow are stated now, nothing speaks"
          + " against it";

  @BeforeEach
  void makeEventOfDoubts() throws Exception {
    event = PracticeEvent.make(here.resolve("doubts"), RULES, ROSTER);
    String shot = "500 $PLWT,00356,0269.4,F,007424,A*16\\r\\n\n";
    Files.writeString(event.path().resolve("rehearsal.capture"), "@ 1\n" + shot + "@ 2\n" + shot);
  }

  private static List<String> told(Typed typed, String word) {
    return typed.lines().stream().filter(line -> line.startsWith(word + " ")).toList();
  }

  @Test
  void figuresStatedAnewLetAReadingCountAgain() {
    Typed typed = line("2", "wait", "typed 365", "setup draw 80", "setup draw 60");
    assertEquals(2, told(typed, "void").size(), typed.toString());
    assertTrue(told(typed, "void").get(1).startsWith(VOID), typed.toString());
    assertEquals(List.of(COUNTS), told(typed, "counts"), typed.toString());
  }

  @Test
  void whoComesToTheLineIsToldHowItStandsNow() {
    Typed first = line("2", "wait", "typed 365", "setup draw 80");
    assertEquals(1, told(first, "void").size(), first.toString());
    Typed next = line("status");
    assertEquals(List.of(), told(next, "void"), next.toString());
    assertEquals(COUNTS, told(next, "counts").get(0), next.toString());
    Typed last = line("setup draw 60", "status");
    assertTrue(told(last, "void").get(1).startsWith(VOID), last.toString());
  }

  @Test
  void aJumpFromAReadingThatIsVoidIsNoneAnyMore() {
    Typed typed = line("1", "wait", "typed 371", "void #1 a sparrow in the gate");
    assertEquals(1, told(typed, "in doubt").size(), typed.toString());
    assertEquals(
        List.of("counts   reading 2: 371 ft/s counts: nothing speaks against it any more"),
        told(typed, "counts"),
        typed.toString());
    assertFalse(line("status").toString().contains("in doubt"));
  }
}
