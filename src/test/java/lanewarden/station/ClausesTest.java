package lanewarden.station;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** What tests begin with that need a line under every clause. */
abstract class ClausesTest {

  @TempDir Path folder;
  PracticeLine line;

  @BeforeEach
  void openTheLine() throws Exception {
    line = PracticeLine.open(ClausesEvent.copy(folder.resolve("event"))).onDuty();
  }

  @AfterEach
  void closeTheLine() throws Exception {
    line.close();
  }

  /** Writes another rule book into the folder, without putting it in force. */
  void write(String from, String to) throws Exception {
    Path file = line.folder.path().resolve(EventFolder.RULE_BOOK);
    String text = Files.readString(file);
    if (!text.contains(from)) {
      throw new AssertionError("the rule book has no " + from);
    }
    Files.writeString(file, text.replace(from, to));
  }
}
