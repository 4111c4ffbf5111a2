package lanewarden.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import lanewarden.station.LedgerNames;
import lanewarden.station.PracticeEvent;
import org.junit.jupiter.api.Test;

/** Sealing, publishing and slips, as typed. */
class SealCommandsTest extends PracticeRun {

  private Typed run(String... arguments) {
    return new Typed().run(arguments);
  }

  private Typed report(String... more) {
    List<String> all = new ArrayList<>(List.of("report", event.path().toString()));
    all.addAll(List.of(more));
    return run(all.toArray(String[]::new));
  }

  /** Where a sealed report is written if nobody says otherwise. */
  private Path sealed() throws Exception {
    String name = LedgerNames.of(event.ledger()).report(true, true);
    assertTrue(name.endsWith("-sealed.pdf"), name);
    return event.path().resolve(name);
  }

  @Test
  void aNewEventHasASealThatItsLedgerStates() throws Exception {
    Typed typed = report("--seal", "--passphrase-file", passphrase.toString());
    assertEquals(ExitCode.FINE, typed.code(), typed.toString());
    assertTrue(typed.results().matches("(?s).*seal     ([0-9A-F]{2}:){31}[0-9A-F]{2}\\n.*"));
    assertTrue(Files.exists(sealed()));
  }

  @Test
  void withoutTheOptionTheReportIsNotSealed() {
    assertTrue(report().results().contains("seal     none"));
  }

  @Test
  void aLostSealIsToldAndMadeAnew() throws Exception {
    Files.delete(event.reportSeal());
    Typed typed = report("--seal", "--passphrase-file", passphrase.toString());
    assertEquals(ExitCode.USAGE, typed.code());
    assertTrue(typed.talk().contains("SEAL-MISSING"), typed.toString());
    Typed made =
        run("seal-key", event.path().toString(), "--passphrase-file", passphrase.toString());
    assertEquals(ExitCode.FINE, made.code(), made.toString());
    assertTrue(made.results().contains("certificate "), made.toString());
    typed = report("--seal", "--passphrase-file", passphrase.toString(), "--json");
    assertEquals(ExitCode.FINE, typed.code(), typed.toString());
    assertTrue(typed.results().contains("\"seal\":\""), typed.toString());
    Typed again =
        run("seal-key", event.path().toString(), "--passphrase-file", passphrase.toString());
    assertTrue(again.talk().contains("KEY-EXISTS"), again.toString());
    assertTrue(Files.exists(event.reportSeal()), "the key that is there is kept");
  }

  @Test
  void anAuthorityThatCannotBeReachedIsToldAndTheReportIsThere() throws Exception {
    Typed typed =
        report(
            "--seal",
            "--passphrase-file",
            passphrase.toString(),
            "--time-stamp",
            "http://localhost:9/nobody");
    assertEquals(ExitCode.ENVIRONMENT, typed.code(), typed.toString());
    assertTrue(typed.talk().contains("TIME-STAMP-MISSING"), typed.toString());
    assertTrue(Files.exists(sealed()));
    typed = report("--seal", "--passphrase-file", passphrase.toString(), "--time-stamp", "nowhere");
    assertTrue(typed.talk().contains("TIME-STAMP-ADDRESS"), typed.toString());
  }

  @Test
  void theEditionForEverybodyGoesIntoAFileOfItsOwn() throws Exception {
    Typed typed = report("--public");
    assertEquals(ExitCode.FINE, typed.code(), typed.toString());
    String name = LedgerNames.of(event.ledger()).report(false, false);
    assertTrue(name.startsWith("public-"), name);
    assertTrue(Files.exists(event.path().resolve(name)));
    assertFalse(Files.exists(PracticeEvent.report(event)));
  }

  @Test
  void aSlipIsWrittenAndFoundAgain() {
    line("1", "wait", "next");
    Path out = here.resolve("slip.pdf");
    Typed slip = run("slip", event.path().toString(), "1", "--out", out.toString(), "--json");
    assertEquals(ExitCode.FINE, slip.code(), slip.toString());
    String code = slip.results().replaceAll("(?s).*\"code\":\"([^\"]*)\".*", "$1");
    assertTrue(code.startsWith("lanewarden:1:"), code);
    Typed found = run("slip", event.path().toString(), "--find", code);
    assertEquals(ExitCode.FINE, found.code(), found.toString());
    assertTrue(found.results().contains("stands   yes: as printed"), found.toString());
    Typed other =
        run("slip", event.path().toString(), "--find", code.replaceAll("-.*", "-0123456789ab"));
    assertEquals(ExitCode.PROOF, other.code(), other.toString());
    assertTrue(other.results().contains("stands   NO"), other.toString());
  }

  @Test
  void aNameFindsTheCheckOfASlipAndSeveralAreToldWithTheirBibs() {
    line("1", "wait", "next", "3", "wait", "next", "out");
    String out = here.resolve("slip.pdf").toString();
    Typed slip = run("slip", event.path().toString(), "cat f", "--out", out);
    assertEquals(ExitCode.FINE, slip.code(), slip.toString());
    Typed several = run("slip", event.path().toString(), "a");
    assertEquals(ExitCode.USAGE, several.code(), several.toString());
    assertTrue(several.talk().contains("SLIP-SEVERAL"), several.toString());
    assertTrue(several.talk().contains("3 Cat Fletcher"), several.toString());
  }

  @Test
  void whatIsMissingInTheCommandIsTold() {
    assertEquals(ExitCode.USAGE, run("slip").code());
    assertTrue(run("slip", event.path().toString()).talk().contains("which check"));
    assertTrue(run("slip", event.path().toString(), "nobody").talk().contains("SLIP-CHECK"));
    assertEquals(ExitCode.FINE, run("slip", "--printers").code());
  }
}
