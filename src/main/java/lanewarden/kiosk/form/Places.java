package lanewarden.kiosk.form;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import lanewarden.station.EventFolder;

/**
 * The files and folders that somebody named, or left to the program to name.
 *
 * @param folder where everything lies that is not named with its whole path
 */
public record Places(EventFolder folder) {

  /** Without an event, named from a folder. */
  public static Places in(Path folder) {
    return new Places(new EventFolder(folder));
  }

  /**
   * What was typed, as a path.
   *
   * @throws NoSuchFileException if nothing can be called so
   */
  public Path at(String typed) throws NoSuchFileException {
    try {
      return folder.path().resolve(typed.strip()).toAbsolutePath().normalize();
    } catch (InvalidPathException e) {
      throw new NoSuchFileException(typed);
    }
  }

  /**
   * Something that is there.
   *
   * @throws IOException if it is not
   */
  public Path there(String typed) throws IOException {
    Path path = at(typed);
    if (!Files.exists(path)) {
      throw new NoSuchFileException(path.toString());
    }
    return path;
  }

  /**
   * A folder that is there.
   *
   * @throws IOException if it is not, or is none
   */
  public Path folder(String typed) throws IOException {
    Path path = there(typed);
    if (!Files.isDirectory(path)) {
      throw new NotDirectoryException(path.toString());
    }
    return path;
  }

  /**
   * A ledger that is there: the event's own where nothing was typed; of a folder that was typed,
   * the one in it.
   *
   * @throws IOException if it is not
   */
  public Path ledger(String typed) throws IOException {
    return typed.isBlank() ? folder.ledger() : EventFolder.ledgerAt(there(typed));
  }

  /**
   * A place for something new, in a folder that is there.
   *
   * @param usual its name where nothing was typed; one that is taken gets a number
   * @throws IOException if the folder is not there, or something has that name
   */
  public Path fresh(String typed, String usual) throws IOException {
    Path path = typed.isBlank() ? free(usual) : at(typed);
    Path around = path.getParent();
    if (around == null || !Files.isDirectory(around)) {
      throw new NoSuchFileException(String.valueOf(around));
    }
    if (Files.exists(path)) {
      throw new FileAlreadyExistsException(path.toString());
    }
    return path;
  }

  /** The usual name, or the first one like it that is not taken. */
  private Path free(String usual) throws NoSuchFileException {
    Path path = at(usual);
    int ending = usual.lastIndexOf('.') < 0 ? usual.length() : usual.lastIndexOf('.');
    for (int next = 2; Files.exists(path); next++) {
      path = at(usual.substring(0, ending) + "-" + next + usual.substring(ending));
    }
    return path;
  }

  /** Several heads, with anything between them that cannot stand in one. */
  public static List<String> heads(String typed) {
    return split(typed, "[\\s,;]+");
  }

  /**
   * Several ledgers with semicolons between them.
   *
   * @throws IOException if one is not there
   */
  public List<Path> ledgers(String typed) throws IOException {
    List<Path> all = new ArrayList<>();
    for (String one : split(typed, ";")) {
      all.add(there(one));
    }
    return all;
  }

  private static List<String> split(String typed, String between) {
    return Arrays.stream(typed.split(between, -1))
        .map(String::strip)
        .filter(one -> !one.isEmpty())
        .toList();
  }
}
