package lanewarden.kiosk.desk;

import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import lanewarden.station.LineView;
import lanewarden.station.Station;
import lanewarden.station.StationException;
import lanewarden.station.Trouble;
import org.jspecify.annotations.Nullable;

/**
 * The desk between the screens and the station: what the screens ask is done off their thread, one
 * thing after the other, and answered on it.
 *
 * <p>All methods are called on the screen's thread, and all answers come there.
 */
public final class Desk {

  /** Something to do or to ask at the station. */
  @FunctionalInterface
  public interface Question<T> {
    /** Runs off the screen's thread. */
    T ask(Station station) throws StationException;
  }

  /** Something to do at the station that has no answer. */
  @FunctionalInterface
  public interface Act {
    /** Runs off the screen's thread. */
    void run(Station station) throws StationException;
  }

  private final CompletableFuture<Station> station;
  private final Executor work;
  private final Executor screen;
  private final Map<Ear, CompletableFuture<Void>> ears = new HashMap<>();
  private final ReadOnlyIntegerWrapper pending = new ReadOnlyIntegerWrapper();
  private final ReadOnlyBooleanWrapper opening = new ReadOnlyBooleanWrapper();

  /**
   * @param station may still be on its way: then what is asked waits for it, and is a trouble where
   *     it never comes
   * @param work runs one task after the other, off the screen's thread
   * @param screen runs tasks on the screen's thread
   */
  public Desk(CompletableFuture<Station> station, Executor work, Executor screen) {
    this.station = station;
    this.work = work;
    this.screen = screen;
    opening.set(!station.isDone());
    if (opening.get()) {
      CompletableFuture<Station> unused =
          station.whenComplete((there, thrown) -> screen.execute(() -> opening.set(false)));
    }
  }

  /**
   * Whether the station is still on its way: its ledger is being verified, and nothing is known yet
   * of what is in it.
   */
  public ReadOnlyBooleanProperty opening() {
    return opening.getReadOnlyProperty();
  }

  /**
   * Tells of every state of the line, on the screen's thread; where the line changes faster than
   * the screen follows, only of the latest.
   */
  public void listen(Consumer<LineView> listener) {
    Ear ear = new Ear(listener);
    ears.put(
        ear, station.thenAccept(there -> there.listen(ear)).whenComplete(this::tellOfDeafness));
  }

  /** A station that never comes is told by whoever opens it; this is a fault of our own. */
  private void tellOfDeafness(@Nullable Void heard, @Nullable Throwable thrown) {
    if (thrown != null && !station.isCompletedExceptionally()) {
      screen.execute(
          () -> {
            throw new IllegalStateException("the line was not listened to", thrown);
          });
    }
  }

  /** Hands the latest state on to the screen's thread, unless it was left meanwhile. */
  private final class Ear implements Consumer<LineView> {
    private final AtomicReference<@Nullable LineView> latest = new AtomicReference<>();
    private final Consumer<LineView> listener;

    Ear(Consumer<LineView> listener) {
      this.listener = listener;
    }

    @Override
    public void accept(LineView view) {
      if (latest.getAndSet(view) == null) {
        screen.execute(this::tell);
      }
    }

    private void tell() {
      LineView taken = latest.getAndSet(null);
      if (taken != null && ears.containsKey(this)) {
        listener.accept(taken);
      }
    }
  }

  /** Tells nobody any more of the line; what was asked is still answered. */
  public void leave() {
    ears.forEach(
        (ear, heard) -> {
          CompletableFuture<Void> unused =
              heard.thenAcceptBoth(station, (listening, there) -> there.unlisten(ear));
        });
    ears.clear();
  }

  /** How many acts are not answered yet. */
  public ReadOnlyIntegerProperty pending() {
    return pending.getReadOnlyProperty();
  }

  /**
   * Has something done.
   *
   * @param done runs when it was done
   * @param missed takes what kept it from being done
   */
  public void act(Act act, Runnable done, Consumer<Trouble> missed) {
    this.<Boolean>ask(
        s -> {
          act.run(s);
          return true;
        },
        yes -> done.run(),
        missed);
  }

  /**
   * Asks something.
   *
   * @param answer takes the answer
   * @param missed takes what kept it from being answered
   */
  public <T> void ask(Question<T> question, Consumer<T> answer, Consumer<Trouble> missed) {
    pending.set(pending.get() + 1);
    work.execute(
        () -> {
          Runnable reply = reply(question, answer, missed);
          screen.execute(
              () -> {
                pending.set(pending.get() - 1);
                reply.run();
              });
        });
  }

  /** Every failure becomes a trouble: nothing that goes wrong at the station may pass unseen. */
  private <T> Runnable reply(Question<T> question, Consumer<T> answer, Consumer<Trouble> missed) {
    try {
      T given = question.ask(there());
      return () -> answer.accept(given);
    } catch (StationException | RuntimeException | Error e) {
      Trouble trouble = Trouble.of(e);
      return () -> missed.accept(trouble);
    }
  }

  private Station there() throws StationException {
    try {
      return station.join();
    } catch (CompletionException e) {
      if (e.getCause() instanceof StationException refused) {
        throw refused;
      }
      throw e;
    }
  }
}
