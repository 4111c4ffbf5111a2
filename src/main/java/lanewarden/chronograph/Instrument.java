package lanewarden.chronograph;

import java.util.function.Consumer;

/**
 * A source of readings: a chronograph on a serial port, a capture, or the simulator.
 *
 * <p>Threads: each instrument owns one thread of its own and calls the sink only from it, one
 * signal at a time, in the order of the wire. A sink that throws loses that signal only: what it
 * threw goes to the thread's uncaught-exception handler and the link stays up. The methods here may
 * be called from any thread.
 */
public interface Instrument extends AutoCloseable {
  /** The instrument's name, for example {@code Gate timer on /dev/ttyUSB0}. */
  String name();

  /** What kind of source this is. */
  Source source();

  /**
   * Starts listening; returns at once.
   *
   * @param sink takes every signal, on the instrument's own thread
   * @throws IllegalStateException if it was started before
   */
  void start(Consumer<Signal> sink);

  /**
   * Ends listening: bytes of a line not finished are refused, {@link LinkState#CLOSED} is the last
   * signal, and the port is free on return. Waits for a sink that is still busy, at most two
   * seconds; from within the sink it does not wait. Closing again does nothing.
   */
  @Override
  void close();
}
