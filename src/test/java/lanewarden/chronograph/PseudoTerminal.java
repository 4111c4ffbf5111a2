package lanewarden.chronograph;

import com.sun.jna.Library;
import com.sun.jna.Native;
import com.sun.jna.NativeLong;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * A real pair of pseudo-terminals of the system (POSIX), for tests: what is written here arrives at
 * the serial port at {@link #path}.
 *
 * <p>{@link #close} is the pull of the plug. The path of a pair is the system's choice, and the
 * next pair, of this process or another, may get it: a test that pulls the plug under an
 * instrument, or replugs, gives a link of its own to each pair in turn with {@link #linkedAs}.
 */
public final class PseudoTerminal implements AutoCloseable {
  /** The functions of the C library that make and use a pair. */
  interface CLibrary extends Library {
    int posix_openpt(int flags);

    int grantpt(int fd);

    int unlockpt(int fd);

    int ptsname_r(int fd, byte[] name, NativeLong size);

    int tcgetattr(int fd, byte[] termios);

    void cfmakeraw(byte[] termios);

    int tcsetattr(int fd, int when, byte[] termios);

    NativeLong write(int fd, byte[] bytes, NativeLong count);

    int close(int fd);
  }

  private static final int O_RDWR = 2;
  private static final int O_NOCTTY = 0x100;
  private static final int AMPLE = 256;

  private final CLibrary c = Native.load("c", CLibrary.class);
  private final int fd;
  private final Path path;
  private final Optional<Path> link;
  private boolean open = true;

  private PseudoTerminal(Optional<Path> link) throws IOException {
    this.link = link;
    fd = succeeded(c.posix_openpt(O_RDWR | O_NOCTTY), "posix_openpt");
    succeeded(c.grantpt(fd), "grantpt");
    succeeded(c.unlockpt(fd), "unlockpt");
    byte[] name = new byte[AMPLE];
    succeeded(-c.ptsname_r(fd, name, new NativeLong(name.length)), "ptsname_r");
    path = Path.of(Native.toString(name, StandardCharsets.US_ASCII));
    // Raw from the first byte on: else the terminal would edit what is written before a reader
    // opens
    byte[] termios = new byte[AMPLE];
    succeeded(c.tcgetattr(fd, termios), "tcgetattr");
    c.cfmakeraw(termios);
    succeeded(c.tcsetattr(fd, 0, termios), "tcsetattr");
  }

  /** Makes a new pair. */
  public static PseudoTerminal open() throws IOException {
    return new PseudoTerminal(Optional.empty());
  }

  /** Makes a new pair and points the link at it, in one step, replacing the link if it is there. */
  public static PseudoTerminal linkedAs(Path link) throws IOException {
    PseudoTerminal pair = new PseudoTerminal(Optional.of(link));
    Files.deleteIfExists(link);
    Files.createSymbolicLink(link, pair.path);
    return pair;
  }

  /** The serial port's path. */
  public Path path() {
    return path;
  }

  /** Sends ASCII text to the port. */
  public void write(String text) throws IOException {
    write(text.getBytes(StandardCharsets.US_ASCII));
  }

  /** Sends bytes to the port. */
  public void write(byte[] bytes) throws IOException {
    int written = 0;
    while (written < bytes.length) {
      byte[] rest = java.util.Arrays.copyOfRange(bytes, written, bytes.length);
      written +=
          succeeded(c.write(fd, rest, new NativeLong(rest.length)).intValue(), "write to " + path);
    }
  }

  /** Pulls the plug: the port at the other end goes away, its link first. */
  @Override
  public void close() throws IOException {
    if (open) {
      open = false;
      if (link.isPresent()) {
        Files.deleteIfExists(link.get());
      }
      succeeded(c.close(fd), "close");
    }
  }

  private static int succeeded(int result, String call) throws IOException {
    if (result < 0) {
      throw new IOException(call + " failed: " + result);
    }
    return result;
  }
}
