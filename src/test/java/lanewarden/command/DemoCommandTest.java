package lanewarden.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import lanewarden.station.DemoEvent;
import lanewarden.station.EventFolder;
import lanewarden.station.LedgerInspection;
import lanewarden.station.PracticeEvent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DemoCommandTest {
  @TempDir Path here;

  private EventFolder demo() {
    return new EventFolder(here.resolve("demo"));
  }

  @Test
  void withoutADisplayItPlaysTheMorningInTheTerminalAndEndsByItself() throws Exception {
    Typed typed = new Typed().run("demo", "--into", demo().path().toString());
    assertEquals(0, typed.code(), typed.toString());
    assertEquals(
        1, typed.talk().lines().filter(l -> l.contains("No display")).count(), typed.talk());
    assertTrue(typed.talk().contains(DemoEvent.PASSPHRASE), typed.talk());
    assertTrue(!typed.talk().contains("what to do"), "no word of the script was refused");
    assertEquals(
        "so far   35 within, 4 not, of 40 competitors",
        typed.lines().stream().filter(l -> l.startsWith("so far")).reduce((a, b) -> b).orElse(""));
    List<String> last = typed.lines().subList(typed.lines().size() - 2, typed.lines().size());
    assertEquals(
        List.of("ledger   " + demo().ledger(), "report   " + PracticeEvent.report(demo())), last);
    assertTrue(LedgerInspection.of(demo().path(), List.of()).sound());
    assertTrue(Files.size(PracticeEvent.report(demo())) > 10_000);
  }

  @Test
  void playedTwiceItBeginsAnewAndSaysSo() {
    new Typed().run("demo", "--terminal", "--into", demo().path().toString());
    Typed typed = new Typed().run("demo", "--terminal", "--into", demo().path().toString());
    assertEquals(0, typed.code(), typed.toString());
    assertTrue(typed.talk().contains("made anew"), typed.talk());
  }

  @Test
  void withADisplayItOpensTheScreensWithAHint() {
    Typed typed =
        new Typed()
            .showing(
                (opening, hint, full) -> {
                  assertTrue(hint.orElse("").contains(DemoEvent.OFFICIAL), "the hint");
                  assertTrue(opening.open().view().training());
                })
            .run("demo", "--into", demo().path().toString());
    assertEquals(0, typed.code(), typed.toString());
    assertEquals(List.of("ledger   " + demo().ledger()), typed.lines());
    assertEquals("", typed.talk());
  }

  @Test
  void aFolderWithSomethingElseIsLeftAlone() throws Exception {
    Files.createDirectory(demo().path());
    Files.writeString(demo().path().resolve("mine.txt"), "mine");
    Typed typed = new Typed().run("demo", "--fresh", "--into", demo().path().toString());
    assertEquals(2, typed.code(), typed.toString());
    assertEquals("mine", Files.readString(demo().path().resolve("mine.txt")));
  }
}
