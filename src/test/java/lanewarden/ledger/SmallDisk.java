package lanewarden.ledger;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assumptions;

/** A real disk of its own, in memory, to see what becomes of files when it is full. */
public final class SmallDisk implements AutoCloseable {
  private final Path place;

  private SmallDisk(Path place) {
    this.place = place;
  }

  /**
   * Mounts one; where this user may not, the test is not run.
   *
   * @param place must not be there yet
   * @param size as {@code mount} takes it
   */
  public static SmallDisk mounted(Path place, String size) throws Exception {
    Files.createDirectory(place);
    Assumptions.assumeTrue(
        run("mount", "-t", "tmpfs", "-o", "size=" + size, "tmpfs", place.toString()),
        "not run: this user may not mount a small disk");
    return new SmallDisk(place);
  }

  /** Where it is. */
  public Path place() {
    return place;
  }

  /** How many bytes still go onto it. */
  public long room() {
    return place.toFile().getUsableSpace();
  }

  /** Runs a command of the system; false if it fails or is not there. */
  static boolean run(String... command) throws InterruptedException {
    try {
      Process process =
          new ProcessBuilder(command)
              .redirectErrorStream(true)
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .start();
      return process.waitFor(60, TimeUnit.SECONDS) && process.exitValue() == 0;
    } catch (IOException noSuchCommand) {
      return false;
    }
  }

  @Override
  public void close() throws Exception {
    run("umount", place.toString());
  }
}
