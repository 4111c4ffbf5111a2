package lanewarden.chronograph;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.time.Clock;
import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.function.Consumer;
import lanewarden.quantity.Speed;

/**
 * The built-in simulator: writes bytes of its profile, which take the same way as bytes of a port.
 *
 * <p>The simulated wire has its own time, which only {@link #shoot} and {@link #pause} move on;
 * nothing here waits, except {@link #settle}. Before each shot the wire is silent long enough that
 * the shot is never taken for a repeat.
 *
 * <p>Threads: its methods may be called from any thread, before {@link #start} too; the sink is
 * called on the simulator's own thread, in the order of the calls.
 */
public final class SimulatedInstrument implements Instrument {
  /** An arrow every two seconds is faster than any archer. */
  private static final Duration BETWEEN_SHOTS = Duration.ofSeconds(2);

  private final SentenceProfile profile;
  private final String name;
  private final Clock clock;
  private final Decoder decoder;
  private final Worker worker;
  private final LinkedBlockingQueue<Consumer<Outlet>> wire = new LinkedBlockingQueue<>();

  // Touched by the simulator's own thread only
  private long now;
  private long sequence;
  private boolean plugged;

  /**
   * @param profile how the simulated instrument speaks
   * @param clock gives the time of readings
   */
  public SimulatedInstrument(SentenceProfile profile, Clock clock) {
    this.profile = profile;
    this.name = profile.name() + ", simulated";
    this.clock = clock;
    this.decoder = new Decoder(profile, Source.SIMULATED, name, clock);
    this.worker = new Worker(name);
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public Source source() {
    return Source.SIMULATED;
  }

  @Override
  public void start(Consumer<Signal> sink) {
    Outlet outlet = new Outlet(sink, clock);
    worker.start(() -> work(outlet));
  }

  /**
   * Writes a good sentence for the speed: as the profile writes it, with the next sequence number
   * and the right checksum. While unplugged, the sentence is lost. Returns at once.
   *
   * @throws IllegalStateException if the profile does not say how the simulator writes a line
   * @throws IllegalArgumentException if the speed has more digits than the profile's lines
   */
  public void shoot(Speed speed) {
    SimulatedLine line =
        profile
            .simulated()
            .orElseThrow(
                () ->
                    new IllegalStateException(
                        "The profile " + profile.name() + " has no [simulator] line. Add one."));
    // Written once here, so that a speed that cannot be written is the caller's fault to see
    line.write(speed, 0);
    wire.add(
        outlet -> {
          sequence++;
          silent(BETWEEN_SHOTS, outlet);
          write(
              RawBytes.of(line.write(speed, sequence).getBytes(ISO_8859_1))
                  .then(profile.line().terminator()),
              outlet);
        });
  }

  /**
   * Writes any bytes, at the wire's present time. While unplugged, they are lost. Returns at once.
   */
  public void emit(RawBytes bytes) {
    wire.add(outlet -> write(bytes, outlet));
  }

  /** Lets the wire be silent for this long in its own time. Returns at once. */
  public void pause(Duration silence) {
    wire.add(outlet -> silent(silence, outlet));
  }

  /** Loses the link, as if the plug were pulled. Returns at once. */
  public void unplug() {
    wire.add(
        outlet -> {
          if (plugged) {
            plugged = false;
            outlet.send(decoder.lost(now));
            outlet.link(
                LinkState.LOST,
                name
                    + " was unplugged. Plug it in again. ("
                    + PortTrouble.Kind.VANISHED.code()
                    + ")");
          }
        });
  }

  /** Brings the link back. Returns at once. */
  public void replug() {
    wire.add(this::plug);
  }

  /**
   * Waits until the sink has taken everything written so far, or until this is closed. Must not be
   * called from the sink.
   *
   * @throws InterruptedException if the waiting thread is interrupted
   */
  public void settle() throws InterruptedException {
    CountDownLatch reached = new CountDownLatch(1);
    wire.add(outlet -> reached.countDown());
    worker.await(reached);
  }

  @Override
  public void close() {
    worker.askToEnd();
    // Only now, so that a thread woken by it sees that it is to end
    wire.add(outlet -> {});
    worker.end();
  }

  private void work(Outlet outlet) {
    plug(outlet);
    try {
      while (!worker.ended()) {
        wire.take().accept(outlet);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    outlet.send(decoder.lost(now));
    outlet.link(LinkState.CLOSED, name + " was closed.");
  }

  private void plug(Outlet outlet) {
    if (!plugged) {
      plugged = true;
      decoder.opened(now);
      outlet.link(LinkState.UP, name + " is connected.");
    }
  }

  private void silent(Duration silence, Outlet outlet) {
    now += silence.toNanos();
    if (plugged) {
      outlet.send(decoder.idle(now));
    }
  }

  private void write(RawBytes bytes, Outlet outlet) {
    if (plugged) {
      outlet.send(decoder.feed(bytes, now));
    }
  }
}
