package lanewarden.station;

import static lanewarden.station.PracticeLine.codeOf;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import lanewarden.journal.Check;
import lanewarden.journal.Outcome;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Archers who shoot from a capture, without waiting. Speeds are those of the demo's gate timer. */
class RehearsalTest {
  /** A misread, two good arrows and one in reserve for bib 2; a line that breaks off for bib 3. */
  private static final String CAPTURE =
      """
      @ 2
      500 $PLWT,00354,0268.8,F,007440,A*1B\\r\\n
      500 $PLWT,00355,0341.0,F,005865,A*11\\r\\n
      500 $PLWT,00356,0269.4,F,007424,A*16\\r\\n
      @ 3
      500 $PLWT,00327,02
      """;

  @TempDir static Path scratch;
  private static EventFolder made;

  @TempDir Path here;
  private EventFolder folder;
  private CheckInLine line;

  @BeforeAll
  static void makeEvent() throws Exception {
    made = PracticeEvent.make(scratch.resolve("made"));
  }

  @BeforeEach
  void copy() throws Exception {
    folder = PracticeEvent.copy(made, here.resolve("event"));
  }

  @AfterEach
  void close() throws Exception {
    line.close();
  }

  private void open(String capture) throws Exception {
    if (!capture.isEmpty()) {
      Files.writeString(folder.path().resolve("rehearsal.capture"), capture);
    }
    reopen();
  }

  private void reopen() throws Exception {
    line = CheckInLine.open(folder, Optional.empty(), 0, PracticeEvent.here());
    line.station().signIn(PracticeEvent.OFFICIAL, PracticeEvent.PASSPHRASE.toCharArray());
  }

  private void call(String bib) throws Exception {
    line.station().call(bib);
    line.awaitArrows(Duration.ZERO);
  }

  private Check check() {
    return line.station().view().check().orElseThrow().check();
  }

  private List<String> speeds() {
    return check().shots().stream().map(s -> s.reading().speed().toString()).toList();
  }

  @Test
  void holdsWhereTheCheckIsDecided() throws Exception {
    open(CAPTURE);
    call("2");
    assertEquals(List.of("268.8 ft/s", "341.0 ft/s"), speeds());
    assertEquals(Optional.of(Outcome.OVER), check().outcome());
  }

  @Test
  void shootsOneArrowForEachShotOfAVerification() throws Exception {
    plan("reference = \"check bow\"\nspeed = \"296.4 ft/s\"\n");
    open(CAPTURE);
    line.station().proving().begin();
    line.awaitArrows(Duration.ZERO);
    VerificationView verification = line.station().view().verification();
    assertEquals(Optional.empty(), verification.running());
    VerificationView.Round round = verification.last().orElseThrow();
    assertEquals(VerificationView.State.PASSED, round.state(), round.words().toString());
    assertEquals(3, round.taken().size());
    call("2");
    assertEquals(List.of("268.8 ft/s", "341.0 ft/s"), speeds());
  }

  @Test
  void shootsNoFurtherWhileTheSecondInstrumentsValueIsToBeTyped() throws Exception {
    plan("reference = \"second instrument\"\n");
    open("");
    line.station().proving().begin();
    for (int shots = 1; shots <= 3; shots++) {
      line.awaitArrows(Duration.ZERO);
      VerificationView.Round round = line.station().view().verification().last().orElseThrow();
      assertEquals(shots, round.taken().size());
      assertTrue(round.awaitsReference());
      line.station().proving().reference(round.taken().get(shots - 1).speed().toString());
    }
    assertEquals(Optional.empty(), line.station().view().verification().running());
  }

  /** The captured chunk is one shot; for the second none was captured, so it is typed. */
  @Test
  void leavesTheRestOfAVerificationToTheOfficialWhereTheCaptureEnds() throws Exception {
    plan("reference = \"check bow\"\nspeed = \"268.8 ft/s\"\n");
    open(
        CAPTURE
            .replace("@ 2\n", "@ verification\n")
            .replaceAll("(?m)^500 .*(35[56]|327).*$\n", ""));
    line.station().proving().begin();
    line.awaitArrows(Duration.ZERO);
    line.awaitArrows(Duration.ZERO);
    VerificationView.Round round = line.station().view().verification().running().orElseThrow();
    assertEquals(1, round.taken().size());
    assertEquals("268.8 ft/s", round.taken().get(0).speed().toString());
  }

  private void plan(String reference) throws Exception {
    Files.writeString(
        folder.path().resolve("station.toml"),
        "[verification]\nmost_bias = \"1 ft/s\"\nmost_spread = \"1 ft/s\"\nshots = 3\n" + reference,
        StandardOpenOption.APPEND);
  }

  @Test
  void goesOnWhereTheOfficialDeclaresAVoid() throws Exception {
    open(CAPTURE);
    call("2");
    line.station().officiating().declareLastVoid("glare");
    line.awaitArrows(Duration.ZERO);
    assertEquals(List.of("268.8 ft/s", "341.0 ft/s", "269.4 ft/s"), speeds());
    assertEquals(Optional.of(Outcome.WITHIN), check().outcome());
  }

  @Test
  void goesOnWhereTheCheckStandsAfterARestart() throws Exception {
    open(CAPTURE);
    call("2");
    line.close();
    reopen();
    line.station().officiating().declareLastVoid("glare");
    line.awaitArrows(Duration.ZERO);
    assertEquals(List.of("268.8 ft/s", "341.0 ft/s", "269.4 ft/s"), speeds());
  }

  @Test
  void shootsOnceMoreForAVoidBehindTheLastCapturedArrow() throws Exception {
    open(CAPTURE.replace("500 $PLWT,00356,0269.4,F,007424,A*16\\r\\n\n", ""));
    call("2");
    line.station().officiating().declareLastVoid("glare");
    line.awaitArrows(Duration.ZERO);
    assertEquals(3, check().shots().size());
  }

  @Test
  void leavesTheRestToTheOfficialWhereTheCaptureEnds() throws Exception {
    open(CAPTURE);
    call("3");
    assertEquals(List.of(), speeds());
    assertEquals(List.of("torn"), check().refused().stream().map(r -> r.reason()).toList());
    line.station().type("57");
    assertEquals(Optional.of(Outcome.WITHIN), check().outcome());
  }

  @Test
  void inventsArrowsWhereNothingWasCaptured() throws Exception {
    open("");
    call("1");
    assertTrue(check().outcome().isPresent());
    assertEquals(3, check().shots().size());
  }

  @Test
  void inventsTheSameArrowsEachTime() throws Exception {
    open("");
    call("1");
    List<String> once = speeds();
    line.close();
    folder = PracticeEvent.copy(made, here.resolve("again"));
    reopen();
    call("1");
    assertEquals(once, speeds());
  }

  @Test
  void shootsForNobodyWhileNobodyIsOnDuty() throws Exception {
    open(CAPTURE);
    line.station().signOut();
    line.awaitArrows(Duration.ZERO);
    assertEquals(0, line.station().view().unwritten());
  }

  @Test
  void aPaceThatMakesNoSenseIsRefusedAndTheLedgerIsFree() throws Exception {
    open(CAPTURE);
    line.close();
    assertEquals(
        "PACE-REFUSED",
        codeOf(() -> CheckInLine.open(folder, Optional.empty(), -1, PracticeEvent.here())));
    reopen();
  }
}
