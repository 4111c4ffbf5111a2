package lanewarden.station;

import static lanewarden.station.PracticeLine.codeOf;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.util.List;
import java.util.Optional;
import lanewarden.journal.Fact;
import lanewarden.journal.FactJson;
import lanewarden.ledger.KeyFile;
import lanewarden.ledger.Ledger;
import lanewarden.ledger.SigningKey;
import org.junit.jupiter.api.Test;

class LedgerInspectionTest extends LineTest {

  @Test
  void aLedgerOfAStationIsSoundAlsoWhileItIsWritten() throws Exception {
    line.station.call("1");
    line.shoot("301 ft/s");
    LedgerInspection found = LedgerInspection.of(line.folder.path(), List.of());
    assertEquals(List.of(), found.faults());
    assertEquals(Optional.of(line.station.view().head().shortForm()), found.head());
    assertEquals(Optional.of("Lane A"), found.station());
    assertEquals(
        List.of(PracticeEvent.OFFICIAL, PracticeEvent.OTHER_OFFICIAL),
        found.officials().stream().map(LedgerInspection.Signatory::name).toList());
  }

  @Test
  void headIsReadWithoutVerifyingAndIsNoneWhereDamageHidesIt() throws Exception {
    line.station.call("1");
    Path ledger = line.folder.ledger();
    assertEquals(
        Optional.of(line.station.view().head().shortForm()), LedgerInspection.headNow(ledger));
    line.close();
    try (Connection base = DriverManager.getConnection("jdbc:sqlite:" + ledger);
        Statement statement = base.createStatement()) {
      statement.execute("DROP TRIGGER entry_is_never_changed");
      statement.execute("PRAGMA ignore_check_constraints = 1");
      statement.execute("UPDATE entry SET hash = x'00'");
    }
    assertEquals(Optional.empty(), LedgerInspection.headNow(ledger));
    Path letter = Files.writeString(here.resolve("letter.txt"), "Dear all");
    assertTrue(codeOf(() -> LedgerInspection.headNow(letter)).startsWith("LEDGER-"));
  }

  @Test
  void takesTheFileAsWellAsTheFolder() throws Exception {
    assertEquals(
        LedgerInspection.of(line.folder.path(), List.of()),
        LedgerInspection.of(line.folder.ledger(), List.of()));
  }

  @Test
  void findsThatATailWasCutByTheHeadOnPaper() throws Exception {
    Path before = Files.copy(line.folder.ledger(), here.resolve("before.sqlite"));
    line.station.call("1");
    String printed = line.station.view().head().shortForm();
    assertTrue(LedgerInspection.of(line.folder.ledger(), List.of(printed)).sound());
    LedgerInspection cut = LedgerInspection.of(before, List.of(printed));
    assertFalse(cut.sound());
    assertEquals("cut tail", cut.faults().get(0).kind());
  }

  @Test
  void aHeadInAnotherFormIsAnsweredWithTheRightOne() {
    assertEquals(
        "HEAD-FORM", codeOf(() -> LedgerInspection.of(line.folder.path(), List.of("twelve"))));
  }

  @Test
  void findsAnEntryThatIsSignedWellAndMakesNoSense() throws Exception {
    line.close();
    SigningKey key =
        KeyFile.open(
            line.folder.path().resolve("keys/ada-holt.key"),
            PracticeEvent.PASSPHRASE.toCharArray());
    try (Ledger ledger =
        Ledger.open(line.folder.ledger(), java.time.Clock.systemUTC(), System::nanoTime)) {
      ledger.append(key, List.of(FactJson.draft(new Fact.CheckClosed(4711, null))));
    }
    LedgerInspection found = LedgerInspection.of(line.folder.ledger(), List.of());
    assertEquals("not understood", found.faults().get(0).kind());
    assertTrue(found.faults().get(0).words().contains("4711"));
  }

  @Test
  void whatIsNoLedgerIsAnswered() throws Exception {
    Path other = Files.writeString(here.resolve("other.sqlite"), "no ledger at all");
    assertEquals("LEDGER-FOREIGN", codeOf(() -> LedgerInspection.of(other, List.of())));
    assertEquals(
        "LEDGER-MISSING",
        codeOf(() -> LedgerInspection.of(here.resolve("none.sqlite"), List.of())));
  }
}
