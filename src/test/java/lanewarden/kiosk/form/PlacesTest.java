package lanewarden.kiosk.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.List;
import lanewarden.station.EventFolder;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files and folders as people name them. */
class PlacesTest {
  @TempDir Path temp;
  private Places places;

  @BeforeEach
  void make() {
    places = new Places(new EventFolder(temp));
  }

  @Test
  void nameWithoutAFolderLiesInTheEvents() throws Exception {
    assertEquals(temp.resolve("out").toAbsolutePath(), places.fresh(" out ", "usual"));
    assertEquals(temp.resolve("usual").toAbsolutePath(), places.fresh("", "usual"));
  }

  @Test
  void usualNameThatIsTakenGetsANumber() throws Exception {
    Files.createDirectory(temp.resolve("usual"));
    Files.createDirectory(temp.resolve("usual-2"));
    assertEquals(temp.resolve("usual-3").toAbsolutePath(), places.fresh("", "usual"));
    Files.createFile(temp.resolve("usual.csv"));
    assertEquals(temp.resolve("usual-2.csv").toAbsolutePath(), places.fresh("", "usual.csv"));
  }

  @Test
  void nameThatWasTypedIsNeverChangedAndNothingIsWrittenOver() throws Exception {
    Files.writeString(temp.resolve("kept"), "kept");
    assertThrows(FileAlreadyExistsException.class, () -> places.fresh("kept", "usual"));
    assertThrows(NoSuchFileException.class, () -> places.fresh("none/here", "usual"));
    assertThrows(NoSuchFileException.class, () -> places.there("none"));
    assertThrows(NoSuchFileException.class, () -> places.at("a\0b"));
  }

  @Test
  void folderIsOneThatIsThere() throws Exception {
    Path file = Files.writeString(temp.resolve("file"), "");
    Path inside = Files.createDirectory(temp.resolve("inside"));
    assertEquals(inside.toAbsolutePath(), places.folder("inside"));
    assertThrows(NotDirectoryException.class, () -> places.folder(file.toString()));
    assertThrows(NoSuchFileException.class, () -> places.folder("none"));
  }

  @Test
  void severalHeadsAndLedgersAreToldApart() throws Exception {
    assertEquals(
        List.of("7-0123456789ab", "9-ba9876543210"),
        Places.heads(" 7-0123456789ab,\t9-ba9876543210 "));
    Path one = Files.writeString(temp.resolve("lane a.sqlite"), "");
    Path two = Files.writeString(temp.resolve("b.sqlite"), "");
    assertEquals(
        List.of(one.toAbsolutePath(), two.toAbsolutePath()),
        places.ledgers("lane a.sqlite; b.sqlite;"));
    assertEquals(List.of(), places.ledgers(" "));
  }
}
