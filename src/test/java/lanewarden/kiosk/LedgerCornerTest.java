package lanewarden.kiosk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import lanewarden.station.LedgerInspection;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A judge with nothing but a ledger's file, at a machine without the event. */
class LedgerCornerTest {
  @TempDir Path temp;
  private Doorstep door;
  private Path ledger;
  private String head;

  @BeforeEach
  void open() throws Exception {
    Path brought = Files.createDirectory(temp.resolve("brought"));
    ledger =
        Files.copy(BoothEvent.PLAIN.ledger(), brought.resolve("ledger.sqlite")).toAbsolutePath();
    head = LedgerInspection.of(ledger, List.of()).head().orElseThrow();
    door = new Doorstep(temp);
    door.press(KeyCode.INSERT);
    door.press(KeyCode.F8);
  }

  @AfterEach
  void close() throws Exception {
    door.close();
  }

  private <T> T of(String id, Class<T> kind) throws Exception {
    Scene scene = door.scene();
    return Booth.call(() -> kind.cast(scene.lookup("#" + id)));
  }

  private void answer(String... answers) throws Exception {
    for (String answer : answers) {
      door.type(answer);
      door.press(KeyCode.ENTER);
    }
  }

  private String ending() throws Exception {
    return of("errand-words", Labeled.class).getText();
  }

  private String told() throws Exception {
    ListView<?> list = of("errand-told", ListView.class);
    return String.join("\n", list.getItems().stream().map(String::valueOf).toList());
  }

  @Test
  void onlyWhatNeedsNoStationIsThereAndEscapeLeadsBack() throws Exception {
    for (String errand :
        List.of("f8", "home", "delete", "f2", "f12", "f1", "f3", "f4", "f5", "f9")) {
      assertFalse(of("errand-" + errand, Node.class).isDisabled(), errand);
    }
    for (String signed : List.of("f6", "f11", "f10")) {
      assertTrue(of("errand-" + signed, Node.class) == null, signed);
    }
    door.press(KeyCode.ESCAPE);
    assertTrue(of("start", Node.class) != null);
  }

  @Test
  void accuracyOfAReadingIsWorkedOutFromTheSettingsThatAreNamed() throws Exception {
    door.press(KeyCode.F9);
    answer(temp.resolve("none.toml").toString());
    assertTrue(door.words("accuracy-panel").contains("none.toml"), door.words("accuracy-panel"));
    door.press(KeyCode.ESCAPE);
    door.press(KeyCode.F9);
    answer(Path.of("config", "station.toml").toAbsolutePath().toString());
    assertTrue(ending().startsWith("combined: standard uncertainty"), ending());
    assertTrue(told().contains("degrees of freedom"), told());
  }

  @Test
  void ledgerHasToBeNamedOnceAndTheReportLiesBesideIt() throws Exception {
    door.press(KeyCode.F8);
    door.type("1");
    door.press(KeyCode.ENTER);
    assertTrue(of("report-panel", Node.class) != null, "no ledger is named yet");
    answer(ledger.toString());
    Path pdf = ledger.resolveSibling("audit-" + head + ".pdf");
    assertEquals("Made: " + pdf.getFileName(), ending(), told());
    assertTrue(Files.exists(pdf));

    door.press(KeyCode.F3);
    assertEquals(ledger.toString(), of("form-ledger", TextField.class).getText());
    door.focus("form-heads");
    answer(head);
    assertTrue(ending().startsWith("The ledger is sound"), told());

    door.press(KeyCode.F1);
    door.press(KeyCode.ENTER);
    assertEquals("There is no protest and no correction", ending());
  }

  @Test
  void exportedEntriesBecomeALedgerWhichIsTheOneMeantFromThenOn() throws Exception {
    door.press(KeyCode.F4);
    door.type("1");
    door.press(KeyCode.ENTER);
    answer(ledger.toString());
    Path entries = ledger.resolveSibling("export-" + head).resolve("entries.jsonl");
    assertTrue(Files.exists(entries), ending());

    door.press(KeyCode.F5);
    answer(entries.toString(), temp.resolve("again.sqlite").toString());
    assertTrue(ending().startsWith("The ledger is sound"), told());
    door.press(KeyCode.F3);
    assertEquals(
        temp.resolve("again.sqlite").toString(), of("form-ledger", TextField.class).getText());
  }

  @Test
  void fileThatIsNoLedgerIsRefusedAndStaysInItsField() throws Exception {
    Path letter = Files.writeString(temp.resolve("letter.txt"), "Dear all");
    door.press(KeyCode.F8);
    door.type("1");
    door.press(KeyCode.ENTER);
    answer(letter.toString());
    assertTrue(door.words("report-panel").contains("LEDGER-"), door.words("report-panel"));
    assertEquals(letter.toString(), of("form-ledger", TextField.class).getText());
  }
}
