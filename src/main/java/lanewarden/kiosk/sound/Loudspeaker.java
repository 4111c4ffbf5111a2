package lanewarden.kiosk.sound;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.Clip;
import javax.sound.sampled.LineEvent;
import javax.sound.sampled.LineUnavailableException;
import org.jspecify.annotations.Nullable;

/**
 * Plays sounds on a thread of its own: whoever plays never waits. A sound that is overtaken by the
 * next before it began is not played late. Where there is no sound device it is silent, and says
 * so.
 */
public final class Loudspeaker {
  private static final Logger LOG = Logger.getLogger(Loudspeaker.class.getName());
  private static final AudioFormat FORMAT = new AudioFormat(Synthesis.RATE, 16, 1, true, false);
  private static final long LONGEST_SECONDS = 3;

  /** Where samples become sound. */
  @FunctionalInterface
  interface Output {
    /**
     * Plays to the end.
     *
     * @throws LineUnavailableException if there is no device, or another program has it
     * @throws IllegalArgumentException if no device takes such samples
     */
    void play(short[] samples) throws LineUnavailableException, InterruptedException;
  }

  /**
   * What is to be played.
   *
   * @param volume not off
   */
  private record Order(Cue cue, Volume volume) {}

  private final Output output;
  private final Executor work;
  private final Executor screen;
  private final AtomicReference<@Nullable Order> next = new AtomicReference<>();
  private final ReadOnlyBooleanWrapper silent = new ReadOnlyBooleanWrapper();

  /**
   * The machine's sound device.
   *
   * @param work plays one sound after the other
   * @param screen runs tasks on the screen's thread
   */
  public Loudspeaker(Executor work, Executor screen) {
    this(Loudspeaker::sound, work, screen);
  }

  Loudspeaker(Output output, Executor work, Executor screen) {
    this.output = output;
    this.work = work;
    this.screen = screen;
  }

  /** Whether the last sound could not be heard; on the screen's thread. */
  public ReadOnlyBooleanProperty silent() {
    return silent.getReadOnlyProperty();
  }

  /** Plays a sound, and returns at once. */
  public void play(Cue cue, Volume volume) {
    if (volume != Volume.OFF) {
      next.set(new Order(cue, volume));
      work.execute(this::playNext);
    }
  }

  private void playNext() {
    Order order = next.getAndSet(null);
    if (order == null) {
      return;
    }
    try {
      output.play(Synthesis.of(order.cue(), order.volume()));
      screen.execute(() -> silent.set(false));
    } catch (LineUnavailableException | IllegalArgumentException e) {
      screen.execute(() -> tell(e));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private void tell(Exception why) {
    if (!silent.get()) {
      LOG.log(Level.WARNING, "No sound is heard: there is no device for it.", why);
    }
    silent.set(true);
  }

  /** The device is opened anew each time: one that was plugged in since is heard. */
  private static void sound(short[] samples) throws LineUnavailableException, InterruptedException {
    ByteBuffer bytes = ByteBuffer.allocate(2 * samples.length).order(ByteOrder.LITTLE_ENDIAN);
    bytes.asShortBuffer().put(samples);
    CountDownLatch over = new CountDownLatch(1);
    try (Clip clip = AudioSystem.getClip()) {
      clip.addLineListener(
          event -> {
            if (event.getType().equals(LineEvent.Type.STOP)) {
              over.countDown();
            }
          });
      clip.open(FORMAT, bytes.array(), 0, bytes.capacity());
      clip.start();
      // A device that was pulled out may never say that it stopped
      if (!over.await(LONGEST_SECONDS, TimeUnit.SECONDS)) {
        throw new LineUnavailableException("the device did not play to the end");
      }
    }
  }
}
