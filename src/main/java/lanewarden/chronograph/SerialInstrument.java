package lanewarden.chronograph;

import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;

/**
 * An instrument on a serial port.
 *
 * <p>The port may be missing at the start and may go at any time: {@link LinkState#LOST} is told at
 * once, with what to do, and the link comes back by itself, since the port is tried again three
 * times a second. Whatever was received whole before is delivered; a line not finished is refused.
 *
 * <p>Threads: one thread opens, reads, decodes, calls the sink and closes.
 */
public final class SerialInstrument implements Instrument {
  private static final Duration BETWEEN_TRIES = Duration.ofMillis(300);

  private final String port;
  private final String name;
  private final PortSettings settings;
  private final Decoder decoder;
  private final Clock clock;
  private final LongSupplier nanos;
  private final Worker worker;

  /** Touched by the worker only. */
  private boolean linkUp;

  /**
   * @param port the port's path or system name, for example {@code /dev/ttyUSB0} or {@code COM3}
   * @param profile how the instrument speaks
   * @param clock gives the time of readings
   * @param nanos monotonic nanoseconds, as {@link System#nanoTime}
   */
  public SerialInstrument(String port, SentenceProfile profile, Clock clock, LongSupplier nanos) {
    this.port = port;
    this.name = profile.name() + " on " + port;
    this.settings = profile.port();
    this.decoder = new Decoder(profile, Source.SERIAL, name, clock);
    this.clock = clock;
    this.nanos = nanos;
    this.worker = new Worker(name);
  }

  /** The system paths of the serial ports that are here now, sorted. */
  public static List<String> ports() {
    return PortLink.ports();
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public Source source() {
    return Source.SERIAL;
  }

  @Override
  public void start(Consumer<Signal> sink) {
    Outlet outlet = new Outlet(sink, clock);
    worker.start(() -> work(outlet));
  }

  @Override
  public void close() {
    worker.end();
  }

  private void work(Outlet outlet) {
    PortFault.Kind told = null;
    while (!worker.ended()) {
      PortFault fault = session(outlet);
      boolean wasUp = linkUp;
      linkUp = false;
      // A port that stays away is told once, not three times a second
      if (fault != null && (wasUp || fault.kind() != told)) {
        outlet.link(LinkState.LOST, fault.words());
        told = fault.kind();
      }
      worker.endedWithin(BETWEEN_TRIES.toNanos());
    }
    outlet.link(LinkState.CLOSED, name + " was closed.");
  }

  /** Opens the port and listens until the end; why the link ended, or null if it was closed. */
  private @Nullable PortFault session(Outlet outlet) {
    try (PortLink link = PortLink.open(port, settings)) {
      decoder.opened(nanos.getAsLong());
      linkUp = true;
      outlet.link(LinkState.UP, name + " is connected.");
      listen(link, outlet);
      return null;
    } catch (PortFault fault) {
      return fault;
    } catch (RuntimeException | LinkageError e) {
      Outlet.report(e);
      return new PortFault(
          PortFault.Kind.UNUSABLE,
          "The link to " + name + " failed in an unexpected way and is tried again: " + e);
    }
  }

  /** Reads until the instrument is closed (returns) or the port is gone (throws). */
  private void listen(PortLink link, Outlet outlet) throws PortFault {
    try {
      while (!worker.ended()) {
        RawBytes bytes = link.read();
        long now = nanos.getAsLong();
        outlet.send(bytes.length() == 0 ? decoder.idle(now) : decoder.feed(bytes, now));
      }
    } finally {
      outlet.send(decoder.lost(nanos.getAsLong()));
    }
  }
}
