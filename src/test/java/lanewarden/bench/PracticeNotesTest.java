package lanewarden.bench;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import lanewarden.quantity.Force;
import lanewarden.quantity.Mass;
import lanewarden.quantity.Speed;
import lanewarden.written.WrittenRefused;
import org.junit.jupiter.api.Test;

/** A practice day that is written down while it is shot. */
class PracticeNotesTest {
  private static final String HEADER =
      "bow,arrow,arrow-mass,speed,misread,remark,draw-weight,draw-length,brace-height,rated-speed,"
          + "rated-draw-weight,rated-draw-length,rated-arrow-mass\n";

  private static PracticeSetUp setUp(String bow, String arrow, String mass, String draw) {
    PracticeSetUp known = PracticeSetUp.known(bow, arrow);
    return new PracticeSetUp(
        known.bow(),
        known.arrow(),
        Optional.of(mass).filter(text -> !text.isEmpty()).map(Mass::parse),
        Optional.of(draw).filter(text -> !text.isEmpty()).map(Force::parse),
        known.drawLength(),
        known.braceHeight(),
        known.rating());
  }

  private static Speed speed(String text) {
    return Speed.parse(text);
  }

  private static String text(PracticeNotes notes) throws WrittenRefused {
    return notes.practice("notes.csv").text();
  }

  @Test
  void everyShotIsALineAndEveryFigureIsWrittenOnce() throws Exception {
    PracticeSetUp red = setUp("Red, long", "short", "350 gr", "60 lbf");
    PracticeNotes notes =
        PracticeNotes.none()
            .with(red, speed("298 ft/s"))
            .with(red, speed("301 ft/s"))
            .with(setUp("Grey", "short", "350 gr", "58 lbf"), speed("290 ft/s"));

    assertEquals(
        HEADER
            + "\"Red, long\",short,350 gr,298 ft/s,,,60 lbf,,,,,,\n"
            + "\"Red, long\",short,,301 ft/s,,,,,,,,,\n"
            + "Grey,short,,290 ft/s,,,58 lbf,,,,,,\n",
        text(notes));
  }

  @Test
  void aFileThatIsGoneOnWithKeepsEveryCell() throws Exception {
    byte[] bytes = Files.readAllBytes(Path.of("demo-data/practice.csv"));
    Practice read = Practice.read("practice.csv", bytes);
    PracticeNotes notes = PracticeNotes.of(read);

    assertEquals("Club bow + short shaft", notes.last().orElseThrow().name());
    Practice again = notes.practice("practice.csv");
    assertEquals(read.series(), again.series());
    PracticeNotes more = notes.with(notes.last().orElseThrow(), speed("300 ft/s"));
    assertEquals(text(notes) + "Club bow,short shaft,,300 ft/s,,,,,,,,,\n", text(more));
    assertArrayEquals(bytes, read.utf8());
  }

  /** Common practice: the 390 of 298, 390, 301 and 301 ft/s is a misread. */
  @Test
  void whatSomebodySaysOfAShotIsWrittenBesideIt() throws Exception {
    PracticeNotes notes = PracticeNotes.none();
    for (String shot : List.of("298 ft/s", "390 ft/s", "301 ft/s", "301 ft/s")) {
      notes = notes.with(setUp("Red", "short", "350 gr", ""), speed(shot));
    }
    PracticeNotes good = notes.marked(3, PracticeShot.Word.GOOD);
    assertEquals(1, leftOut(notes));
    assertEquals(0, leftOut(good));
    assertTrue(text(good).contains("Red,short,,390 ft/s,no,"), text(good));
    assertEquals(1, leftOut(good.marked(3, PracticeShot.Word.MISREAD)));
    PracticeNotes four = notes;
    assertThrows(IllegalArgumentException.class, () -> four.marked(6, PracticeShot.Word.MISREAD));
  }

  private static int leftOut(PracticeNotes notes) throws WrittenRefused {
    return Comparison.of(notes.practice("notes.csv"), Optional.empty()).leftOut();
  }

  @Test
  void aSetUpIsCompletedWithWhatTheNotesHaveOfItsBowAndItsArrow() throws Exception {
    PracticeNotes notes =
        PracticeNotes.none()
            .with(setUp("Red", "short", "350 gr", "60 lbf"), speed("298 ft/s"))
            .with(setUp("Grey", "long", "377.5 gr", ""), speed("276 ft/s"));
    PracticeSetUp completed = notes.completed("notes.csv", PracticeSetUp.known("Red", "long"));
    assertEquals(setUp("Red", "long", "377.5 gr", "60 lbf"), completed);
  }

  @Test
  void aSetUpThatContradictsTheNotesIsRefused() throws Exception {
    PracticeNotes notes =
        PracticeNotes.none().with(setUp("Red", "short", "350 gr", "60 lbf"), speed("298 ft/s"));
    assertRefused(notes, setUp("Red", "short", "351 gr", ""), "the same arrow-mass");
    assertRefused(notes, setUp("Red", "short", "", "61 lbf"), "the same draw-weight");
    assertRefused(notes, setUp("Red", "long", "", ""), "an arrow whose mass stands");
    assertRefused(notes, setUp("", "short", "", ""), "a name for the bow");
  }

  private static void assertRefused(PracticeNotes notes, PracticeSetUp setUp, String expected) {
    WrittenRefused refused =
        assertThrows(WrittenRefused.class, () -> notes.completed("notes.csv", setUp));
    assertTrue(
        refused.faults().get(0).expected().toString().startsWith(expected), refused.getMessage());
  }

  @Test
  void oneSetUpMoreThanAFileHoldsIsRefusedBeforeItIsShot() throws Exception {
    PracticeNotes notes = PracticeNotes.none();
    for (int i = 0; i < Practice.MOST_SET_UPS; i++) {
      notes = notes.with(setUp("bow " + i, "short", "350 gr", ""), speed("298 ft/s"));
    }
    assertRefused(notes, setUp("one more", "short", "", ""), "at most 24 set-ups");
  }

  @Test
  void beforeTheFirstShotThereIsNoFile() {
    assertEquals(Optional.empty(), PracticeNotes.none().last());
    assertThrows(WrittenRefused.class, () -> PracticeNotes.none().practice("notes.csv"));
  }

  @Test
  void theFilesBytesAreItsText() throws Exception {
    PracticeNotes notes =
        PracticeNotes.none().with(setUp("Élan", "short", "350 gr", ""), speed("298 ft/s"));
    Practice practice = notes.practice("notes.csv");
    assertArrayEquals(practice.text().getBytes(UTF_8), practice.utf8());
  }
}
