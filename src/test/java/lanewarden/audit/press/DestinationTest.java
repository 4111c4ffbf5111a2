package lanewarden.audit.press;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The file appears whole or not at all. */
class DestinationTest {
  @TempDir Path folder;
  private Path ledger;

  @BeforeEach
  void makeLedger() throws Exception {
    ledger = Files.writeString(folder.resolve("event.ledger"), "SQLite");
  }

  private Set<String> left() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(f -> f.getFileName().toString())
          .collect(Collectors.toCollection(TreeSet::new));
    }
  }

  private static Destination.Writer writes(String text) {
    return out -> out.write(text.getBytes(StandardCharsets.US_ASCII));
  }

  private String refusal(Path pdf) {
    return assertThrows(IOException.class, () -> Destination.of(pdf, ledger)).getMessage();
  }

  @Test
  void writesTheWholeFileAndNothingBesideIt() throws Exception {
    Path pdf = folder.resolve("report.pdf");
    Destination.of(pdf, ledger).deliver(writes("%PDF whole"));
    assertEquals("%PDF whole", Files.readString(pdf));
    assertEquals(Set.of("event.ledger", "report.pdf"), left());
  }

  @Test
  void aFailureKeepsWhatWasThereAndLeavesNothingHalf() throws Exception {
    Path pdf = Files.writeString(folder.resolve("report.pdf"), "%PDF old");
    IOException full =
        assertThrows(
            IOException.class,
            () ->
                Destination.of(pdf, ledger)
                    .deliver(
                        out -> {
                          out.write('%');
                          throw new IOException("disk full");
                        }));
    assertEquals("disk full", full.getMessage());
    assertEquals("%PDF old", Files.readString(pdf));
    assertEquals(Set.of("event.ledger", "report.pdf"), left());
  }

  @Test
  void replacesAnOlderReport() throws Exception {
    Path pdf = Files.writeString(folder.resolve("report.pdf"), "%PDF old and longer");
    Destination.of(pdf, ledger).deliver(writes("%PDF new"));
    assertEquals("%PDF new", Files.readString(pdf));
  }

  @Test
  void refusesAMissingFolder() {
    assertTrue(refusal(folder.resolve("nowhere/report.pdf")).contains("does not exist"));
  }

  @Test
  void refusesAFolderInPlaceOfAFile() throws Exception {
    assertTrue(
        refusal(Files.createDirectory(folder.resolve("report.pdf")))
            .contains("A folder has this name"));
  }

  @Test
  void refusesToOverwriteTheLedger() throws Exception {
    assertTrue(refusal(folder.resolve("./event.ledger")).contains("is the ledger itself"));
    assertEquals("SQLite", Files.readString(ledger));
  }

  @Test
  void refusesToOverwriteWhatIsNoPdf() throws Exception {
    Path roster = Files.writeString(folder.resolve("roster.csv"), "bib,name");
    assertTrue(refusal(roster).contains("is no PDF"));
    assertEquals("bib,name", Files.readString(roster));
  }

  @Test
  void refusesAReadOnlyFolder() throws Exception {
    Path locked = Files.createDirectory(folder.resolve("locked"));
    assertTrue(locked.toFile().setWritable(false));
    // Nothing is read-only to root, so there the refusal cannot be seen.
    assumeFalse(Files.isWritable(locked), "runs as a user to whom nothing is read-only");
    assertEquals(locked.toString(), refusal(locked.resolve("report.pdf")));
    assertEquals(List.of(), List.of(locked.toFile().list()));
  }
}
