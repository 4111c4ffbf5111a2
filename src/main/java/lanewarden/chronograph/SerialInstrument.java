package lanewarden.chronograph;

import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
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
  private final WireWatch watch;
  private final Whereabouts whereabouts;

  /** Touched by the worker only. */
  private boolean linkUp;

  /**
   * @param port the port's path or system name, for example {@code /dev/ttyUSB0} or {@code COM3}
   * @param profile how the instrument speaks
   * @param clock gives the time of readings
   * @param nanos monotonic nanoseconds, as {@link System#nanoTime}
   */
  public SerialInstrument(String port, SentenceProfile profile, Clock clock, LongSupplier nanos) {
    this(port, profile, clock, nanos, PortLink::ports);
  }

  /**
   * @param here the serial ports that are here now
   */
  SerialInstrument(
      String port,
      SentenceProfile profile,
      Clock clock,
      LongSupplier nanos,
      Supplier<List<PortHere>> here) {
    this.port = port;
    this.name = profile.name() + " on " + port;
    this.settings = profile.port();
    this.decoder = new Decoder(profile, Source.SERIAL, name, clock);
    this.clock = clock;
    this.nanos = nanos;
    this.worker = new Worker(name);
    this.watch = new WireWatch(profile);
    this.whereabouts = new Whereabouts(port, here);
  }

  /** The system paths of the serial ports that are here now, sorted. */
  public static List<String> ports() {
    return PortLink.ports().stream().map(PortHere::path).toList();
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
    PortTrouble told = null;
    while (!worker.ended()) {
      PortTrouble trouble = session(outlet);
      boolean wasUp = linkUp;
      linkUp = false;
      if (trouble != null && (wasUp || isNews(trouble, told))) {
        outlet.link(LinkState.LOST, trouble.words());
        told = trouble;
      }
      worker.endedWithin(BETWEEN_TRIES.toNanos());
    }
    outlet.link(LinkState.CLOSED, name + " was closed.");
  }

  /** A port that stays away is told once, not three times a second. */
  private static boolean isNews(PortTrouble trouble, @Nullable PortTrouble told) {
    boolean stillAway =
        told != null
            && told.kind() == PortTrouble.Kind.VANISHED
            && trouble.kind() == PortTrouble.Kind.MISSING;
    return !stillAway && !trouble.equals(told);
  }

  /** Opens the port and listens until the end; why the link ended, or null if it was closed. */
  private @Nullable PortTrouble session(Outlet outlet) {
    try (PortLink link = PortLink.open(port, settings)) {
      long now = nanos.getAsLong();
      decoder.opened(now);
      watch.opened(now);
      linkUp = true;
      connected(outlet);
      whereabouts.seen();
      listen(link, outlet);
      return null;
    } catch (PortFault fault) {
      return linkUp ? fault.trouble() : whereabouts.known(fault.trouble());
    } catch (RuntimeException | LinkageError e) {
      Outlet.report(e);
      return PortTrouble.unexpected(name, e);
    }
  }

  private void connected(Outlet outlet) {
    outlet.link(LinkState.UP, name + " is connected.");
  }

  /** Reads until the instrument is closed (returns) or the port is gone (throws). */
  private void listen(PortLink link, Outlet outlet) throws PortFault {
    try {
      while (!worker.ended()) {
        RawBytes bytes = link.read();
        long now = nanos.getAsLong();
        List<Signal> signals = bytes.length() == 0 ? decoder.idle(now) : decoder.feed(bytes, now);
        outlet.send(signals);
        watch
            .came(bytes, signals, now)
            .ifPresent(trouble -> outlet.link(LinkState.UP, trouble.words()));
        if (watch.isOver(now)) {
          connected(outlet);
        }
      }
    } finally {
      outlet.send(decoder.lost(nanos.getAsLong()));
    }
  }
}
