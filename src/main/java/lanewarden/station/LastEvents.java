package lanewarden.station;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import lanewarden.written.WrittenRefused;
import lanewarden.written.WrittenText;

/**
 * The events that were opened last, kept in a small file with one folder a line, the last one
 * first. Nothing hangs on it: without it, or where it is broken, the folders are only not listed.
 *
 * <p>For one thread.
 */
public final class LastEvents {
  private static final int MOST = 9;

  private final Path file;

  LastEvents(Path file) {
    this.file = file;
  }

  /**
   * What the file says.
   *
   * @param events those that could be read, the last opened first
   * @param trouble why not all could be
   */
  public record Read(List<Event> events, Optional<Trouble> trouble) {

    /** Copies the list. */
    public Read {
      events = List.copyOf(events);
    }
  }

  /**
   * An event that was opened.
   *
   * @param folder where it was
   * @param here whether it still is there
   */
  public record Event(Path folder, boolean here) {}

  /** Reads the list; a line that is no path is left out. */
  public Read read() {
    List<Path> folders = new ArrayList<>();
    try {
      boolean broken = false;
      for (String line : text().lines().toList()) {
        Optional<Path> folder = folder(line);
        folder.filter(f -> !folders.contains(f)).ifPresent(folders::add);
        broken |= folder.isEmpty();
      }
      return new Read(
          events(folders),
          broken ? Optional.of(trouble("It has lines that are no folder.")) : Optional.empty());
    } catch (NoSuchFileException e) {
      return new Read(List.of(), Optional.empty());
    } catch (IOException | WrittenRefused e) {
      return new Read(List.of(), Optional.of(trouble(String.valueOf(e.getMessage()))));
    }
  }

  private static List<Event> events(List<Path> folders) {
    return folders.stream()
        .limit(MOST)
        .map(folder -> new Event(folder, new EventFolder(folder).isMade()))
        .toList();
  }

  private String text() throws IOException, WrittenRefused {
    return WrittenText.of(file.toString(), Files.readAllBytes(file));
  }

  private static Optional<Path> folder(String line) {
    try {
      return Optional.of(Path.of(line)).filter(Path::isAbsolute);
    } catch (InvalidPathException e) {
      // Told to the user as a broken line
      return Optional.empty();
    }
  }

  private Trouble trouble(String why) {
    return new Trouble(
        "The list of the events opened last could not be read whole.",
        file + ": " + why,
        "Open the event by its folder. The list begins anew with it.",
        "LAST-EVENTS",
        Trouble.Kind.ENVIRONMENT);
  }

  /**
   * Puts an event first.
   *
   * @throws StationException if that cannot be done; then the list is as it was
   */
  public void add(Path folder) throws StationException {
    Path first = folder.toAbsolutePath().normalize();
    if (!WrittenText.isPlain(first.toString())) {
      // It would not come back as it is from a file of lines
      return;
    }
    List<Path> folders = new ArrayList<>(List.of(first));
    read().events().stream().map(Event::folder).filter(f -> !f.equals(first)).forEach(folders::add);
    String lines = folders.stream().limit(MOST).map(f -> f + "\n").collect(Collectors.joining());
    try {
      Files.createDirectories(file.toAbsolutePath().getParent());
      WholeFile.put(file, lines.getBytes(StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw StationException.of(e);
    }
  }
}
