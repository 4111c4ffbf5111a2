package lanewarden.kiosk.signin;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import lanewarden.kiosk.look.Texts;
import lanewarden.station.LineView;

/**
 * How long until an official who does nothing is signed out, told while it can still be helped;
 * used on the screen's thread.
 */
public final class IdleViewModel {
  private static final Duration TOLD = Duration.ofSeconds(60);

  private final Clock clock;
  private final Texts texts;
  private final ObjectProperty<Optional<String>> words =
      new SimpleObjectProperty<>(Optional.empty());
  private Optional<Instant> end = Optional.empty();
  private String official = "";

  /**
   * @param clock only to tell the seconds: the station decides by its own
   */
  public IdleViewModel(Clock clock, Texts texts) {
    this.clock = clock;
    this.texts = texts;
  }

  /** What is said; empty while there is time enough. */
  public ObjectProperty<Optional<String>> words() {
    return words;
  }

  /** Takes the next state of the line. */
  public void take(LineView view) {
    take(view.official().orElse(""), view.signOutIn());
  }

  void take(String name, Optional<Duration> left) {
    official = name;
    end = left.map(clock.instant()::plus);
    tick();
  }

  /** Another second has passed. */
  public void tick() {
    words.set(
        end.map(at -> Duration.between(clock.instant(), at))
            .filter(left -> left.compareTo(TOLD) < 0)
            .map(left -> texts.of("idle.left", official, seconds(left))));
  }

  private static long seconds(Duration left) {
    return Math.max(0, left.plusMillis(999).toSeconds());
  }
}
