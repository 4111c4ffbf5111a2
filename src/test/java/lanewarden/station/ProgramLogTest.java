package lanewarden.station;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ProgramLogTest {

  /** RFC 3339, 5.6, in UTC with milliseconds; then level, source and words. */
  private static final Pattern RECORD =
      Pattern.compile(
          "\\d{4}-\\d{2}-\\d{2}T\\d{2}:\\d{2}:\\d{2}\\.\\d{3}Z (INFO|WARNING|SEVERE) \\S+ \\S.*");

  private static final Logger LIBRARY = Logger.getLogger("a.library");

  @TempDir Path home;

  private UserFolder user() {
    return new UserFolder(home.resolve("100 % own"));
  }

  private ProgramLog open() {
    return ProgramLog.open(user(), home);
  }

  private List<String> lines() throws Exception {
    try (Stream<Path> files = Files.list(user().log())) {
      Path newest = files.filter(f -> f.toString().endsWith("-0.0.log")).findAny().orElseThrow();
      return Files.readAllLines(newest, StandardCharsets.UTF_8);
    }
  }

  @Test
  void beginningEndAndEventAreOneLineEach() throws Exception {
    try (ProgramLog log = open()) {
      log.programBegins("Lanewarden 7.1", "kiosk");
      log.eventOpened("12-0123456789ab");
      log.eventClosed("15-ba9876543210");
      log.programEnds(0);
    }
    List<String> lines = lines();
    assertEquals(4, lines.size(), lines.toString());
    for (String line : lines) {
      assertTrue(RECORD.matcher(line).matches(), line);
      OffsetDateTime.parse(line.substring(0, line.indexOf(' ')));
    }
    assertTrue(lines.get(0).contains("begins: Lanewarden 7.1, kiosk, Java "), lines.get(0));
    assertTrue(lines.get(1).endsWith("event opened, ledger head 12-0123456789ab"), lines.get(1));
    assertTrue(lines.get(3).endsWith("ends with exit code 0"), lines.get(3));
  }

  @Test
  void nextStartGoesOnBehindTheLast() throws Exception {
    try (ProgramLog log = open()) {
      log.programEnds(0);
    }
    try (ProgramLog log = open()) {
      log.programEnds(4);
    }
    assertEquals(2, lines().size());
    try (Stream<Path> files = Files.list(user().log())) {
      assertEquals(1, files.count(), "a program that ended leaves no lock behind");
    }
  }

  @Test
  void faultIsOneLineWithItsCodeAndWhereItCameFromButNotItsWords() throws Exception {
    try (ProgramLog log = open()) {
      Exception cause = new IllegalArgumentException("For input string: \"Ada Holt\"");
      Trouble told = Trouble.of(new IllegalStateException("bib 4711\nof Ada Holt", cause));
      assertEquals("BUG-IllegalStateException", told.code());
      assertEquals(Optional.empty(), log.trouble());
    }
    List<String> lines = lines();
    assertEquals(1, lines.size(), lines.toString());
    String line = lines.get(0);
    assertTrue(line.contains(" SEVERE lanewarden BUG-IllegalStateException | java.lang."), line);
    assertTrue(line.contains("lanewarden.station.ProgramLogTest.fault"), line);
    assertTrue(line.contains("caused by java.lang.IllegalArgumentException at"), line);
    assertFalse(line.contains("Ada"), line);
    assertFalse(line.contains("4711"), line);
  }

  @Test
  void warningOfALibraryIsKeptAndPrintedNowhere() throws Exception {
    PrintStream talk = System.err;
    ByteArrayOutputStream printed = new ByteArrayOutputStream();
    System.setErr(new PrintStream(printed, true, StandardCharsets.UTF_8));
    try (ProgramLog log = open()) {
      LIBRARY.log(Level.WARNING, "no such font: {0},\nasked from {1}", new Object[] {"ü", home});
      LIBRARY.info("something of no importance");
    } finally {
      System.setErr(talk);
    }
    assertEquals(1, lines().size(), lines().toString());
    assertTrue(lines().get(0).endsWith("WARNING a.library no such font: ü, asked from ~"));
    assertEquals("", printed.toString(StandardCharsets.UTF_8));
  }

  @Test
  void oldestFileGoesWhenTheLogHasItsSize() throws Exception {
    int largest = 2000;
    try (ProgramLog log = ProgramLog.open(user(), home, largest)) {
      for (int i = 0; i < 400; i++) {
        LIBRARY.log(Level.WARNING, "warning {0}", i);
      }
      assertEquals(ProgramLog.FILES, log.files().size(), log.files().toString());
      for (Path file : log.files()) {
        assertTrue(Files.size(file) < largest + 100, file + ": " + Files.size(file));
      }
    }
    List<String> newest = lines();
    assertTrue(newest.get(newest.size() - 1).endsWith("warning 399"), newest.toString());
  }

  @Test
  void twoProgramsWriteIntoFilesOfTheirOwn() throws Exception {
    try (ProgramLog one = open();
        ProgramLog other = open()) {
      one.programEnds(1);
      other.programEnds(2);
      assertEquals(2, one.files().size());
    }
  }

  @Test
  void folderThatCannotBeWrittenIsToldOnceAndStopsNothing() throws Exception {
    Files.createDirectories(user().path());
    Files.writeString(user().log(), "a file where the folder should be");
    try (ProgramLog log = open()) {
      log.programBegins("Lanewarden", "kiosk");
      Trouble told = log.untold().orElseThrow();
      assertEquals("LOG-UNWRITTEN", told.code());
      assertTrue(told.remedy().contains(user().log().toString()), told.remedy());
      assertEquals(Optional.empty(), log.untold());
      assertEquals(Optional.of(told), log.trouble());
      assertEquals(List.of(), log.files());
      assertEquals("BUG-ArithmeticException", Trouble.of(new ArithmeticException("1 / 0")).code());
    }
  }

  @Test
  void whatIsLoggedAfterTheEndGoesWhereItWentBefore() throws Exception {
    Logger root = Logger.getLogger("");
    int before = root.getHandlers().length;
    try (ProgramLog log = open()) {
      assertEquals(1, root.getHandlers().length);
      log.programEnds(0);
    }
    assertEquals(before, root.getHandlers().length);
  }

  @Test
  void openingAndClosingAnEventAreNotedWithItsHead() throws Exception {
    EventFolder event = PracticeEvent.make(home.resolve("event"));
    String made = LedgerInspection.of(event.path(), List.of()).head().orElseThrow();
    try (ProgramLog log = open()) {
      CheckInLine line =
          CheckInLine.open(event, Optional.empty(), 0, PracticeEvent.here().with(log));
      line.station().signIn(PracticeEvent.OFFICIAL, PracticeEvent.PASSPHRASE.toCharArray());
      line.leave();
    }
    String head = LedgerInspection.of(event.path(), List.of()).head().orElseThrow();
    List<String> lines = lines();
    assertEquals(2, lines.size(), lines.toString());
    assertTrue(lines.get(0).contains("event opened, ledger head " + made), lines.get(0));
    assertTrue(lines.get(1).endsWith("event closed, ledger head " + head), lines.get(1));
    assertFalse(String.join("", lines).contains(PracticeEvent.OFFICIAL));
  }
}
