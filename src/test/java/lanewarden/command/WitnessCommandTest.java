package lanewarden.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import lanewarden.station.CheckInLine;
import lanewarden.station.EventFolder;
import lanewarden.station.LedgerInspection;
import lanewarden.station.PracticeEvent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A second station's ledger bears witness to the first one's head. */
class WitnessCommandTest extends PracticeRun {
  private static final String OTHER = "Lane B";

  private EventFolder other;

  /** Another station's ledger: the same event, under another name. */
  @BeforeEach
  void makeTheOther() throws Exception {
    other = PracticeEvent.makeStation(here.resolve("other"), OTHER);
  }

  private Typed witness(String station, String head) {
    return new Typed()
        .run(
            "witness",
            other.path().toString(),
            station,
            head,
            "--official",
            PracticeEvent.OFFICIAL,
            "--passphrase-file",
            passphrase.toString());
  }

  private String head() throws Exception {
    return LedgerInspection.of(event.path(), List.of()).head().orElseThrow();
  }

  private Typed verify() {
    return new Typed().run("verify", event.path().toString(), "--witness", other.path().toString());
  }

  @Test
  void anHonestLedgerStandsBesideItsWitness() throws Exception {
    line("1");
    Typed signed = witness("Lane A", head());
    assertEquals(0, signed.code(), signed.toString());
    assertTrue(signed.results().startsWith("witnessed head " + head() + " of Lane A"));
    line("2");
    Typed verified = verify();
    assertEquals(0, verified.code(), verified.toString());
    assertTrue(verified.results().contains("1 compared with this ledger"), verified.toString());
    assertEquals(0, new Typed().run("verify", other.path().toString()).code());
  }

  @Test
  void aTailThatWasCutIsFoundByTheWitness() throws Exception {
    byte[] before = Files.readAllBytes(event.ledger());
    line("1");
    witness("Lane A", head());
    Files.write(event.ledger(), before);
    Typed verified = verify();
    assertEquals(3, verified.code(), verified.toString());
    assertTrue(verified.results().contains("but the ledger ends at entry"), verified.toString());
  }

  @Test
  void aPastThatWasWrittenAnewIsFoundByTheWitness() throws Exception {
    byte[] before = Files.readAllBytes(event.ledger());
    line("1");
    witness("Lane A", head());
    Files.write(event.ledger(), before);
    line("2", "end only looked at", "1");
    Typed verified = verify();
    assertEquals(3, verified.code(), verified.toString());
    assertTrue(verified.results().contains("but that entry's hash begins"), verified.toString());
  }

  @Test
  void refusesAHeadOfAnotherFormAndItsOwnStation() throws Exception {
    assertEquals(2, witness("Lane A", "12").code());
    Typed own = witness(OTHER, head());
    assertTrue(own.talk().contains("WITNESS-SELF"), own.toString());
  }

  @Test
  void aWitnessThatIsNotSoundIsNoWitness() throws Exception {
    witness("Lane A", head());
    Path file = other.ledger();
    try (var connection = java.sql.DriverManager.getConnection("jdbc:sqlite:" + file);
        var statement = connection.createStatement()) {
      statement.execute("DROP TRIGGER entry_is_never_deleted");
    }
    Typed verified = verify();
    assertEquals(3, verified.code(), verified.toString());
    assertTrue(verified.talk().contains("WITNESS-UNSOUND"), verified.toString());
  }

  @Test
  void atTheOpenLineTheHeadOfAnotherStationIsSignedToo() throws Exception {
    Typed typed =
        line("witness " + OTHER + " 12-ab12cd34ef56", "witness Lane A 12-ab12cd34ef56", "witness");
    assertTrue(
        typed.results().contains("witnessed head 12-ab12cd34ef56 of Lane B, with entry "),
        typed.toString());
    assertTrue(typed.talk().contains("WITNESS-SELF"), typed.toString());
    assertEquals(0, new Typed().run("verify", event.path().toString()).code());
  }

  @Test
  void besideAnOpenLineTheRefusalNamesTheWord() throws Exception {
    try (CheckInLine unused = open(other)) {
      Typed typed = witness("Lane A", head());
      assertEquals(4, typed.code(), typed.toString());
      assertTrue(typed.talk().contains("type: witness STATION SEQ-HASH."), typed.toString());
    }
  }
}
