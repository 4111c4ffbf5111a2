package lanewarden.station;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** What the tests of a station begin with: a fresh event with an official on duty. */
abstract class LineTest {
  @TempDir static Path scratch;
  private static EventFolder made;

  @TempDir Path here;
  PracticeLine line;

  @BeforeAll
  static void makeEvent() throws Exception {
    made = PracticeEvent.make(scratch.resolve("made"));
  }

  @BeforeEach
  void open() throws Exception {
    line = PracticeLine.open(PracticeEvent.copy(made, here.resolve("event"))).onDuty();
  }

  @AfterEach
  void close() throws Exception {
    line.close();
  }

  /** Leaves the program without a word, and comes back. */
  void restart() throws Exception {
    line.close();
    line = PracticeLine.open(line.folder);
  }
}
