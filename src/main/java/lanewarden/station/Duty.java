package lanewarden.station;

import java.time.Duration;
import java.util.Optional;
import lanewarden.ledger.SigningKey;
import lanewarden.ledger.Suspension;
import org.jspecify.annotations.Nullable;

/** Who signs at the station, if anybody does; under the station's lock. */
final class Duty {
  private final Intake intake;
  private final Stillness still;
  private final Optional<Duration> longest;
  private @Nullable SigningKey key;

  /**
   * @param longest how long an official may do nothing and stay signed in, if there is a limit
   */
  Duty(Intake intake, Stillness still, Optional<Duration> longest) {
    this.intake = intake;
    this.still = still;
    this.longest = longest;
  }

  /** Whether the official who is signed in has done nothing for longer than is allowed. */
  boolean isForgotten() {
    return key != null && longest.isPresent() && still.length().compareTo(longest.get()) >= 0;
  }

  /** How long it takes until then, if somebody is signed in and there is a limit. */
  Optional<Duration> left() {
    return key == null ? Optional.empty() : longest.map(limit -> limit.minus(still.length()));
  }

  /** The official is at work. */
  void stir() {
    still.end();
  }

  /** An official takes over. */
  void begin(SigningKey opened) {
    key = opened;
    still.end();
  }

  /** Nobody signs any more. */
  void end() {
    key = null;
  }

  /** Nobody signs any more if the key was suspended; what is said of it then. */
  Optional<Trouble> endIfSuspended(People people) {
    SigningKey signer = key;
    Optional<Suspension> suspension = signer == null ? Optional.empty() : people.suspension(signer);
    if (suspension.isPresent()) {
      key = null;
    }
    return suspension.map(s -> People.trouble(s.official().name() + " was signed out.", s));
  }

  boolean isOn() {
    return key != null;
  }

  /** Writes what was heard, if somebody can sign it. */
  void flush() {
    if (key != null) {
      intake.write(key);
    }
  }

  /**
   * A stop of the line, to be signed by whoever is on duty before anything that comes after it.
   *
   * @param reason in the official's words, if it was said
   * @throws StationException if nobody is on duty
   */
  void stop(Optional<String> reason) throws StationException {
    if (key == null) {
      throw StationException.stuck(StopGate.unsigned(nobody().trouble()));
    }
    if (!intake.stops()) {
      intake.stop(reason);
    }
  }

  /** Why a stop of the line waits to be signed, if one does and that was tried. */
  Optional<Trouble> stopWaits() {
    return intake.stops() ? intake.trouble() : Optional.empty();
  }

  /** Refuses what is not to go on while the line is not clear, or a stop of it waits. */
  void requireClear(Book book) throws StationException {
    new StopGate(book.standing()).requireClear();
    if (intake.stops()) {
      intake.requireWritten();
    }
  }

  /**
   * The key to sign with, when everything that was heard before is written.
   *
   * @throws StationException if nobody is on duty, or something cannot be written
   */
  SigningKey ready() throws StationException {
    SigningKey signer = key;
    if (signer == null) {
      throw nobody();
    }
    intake.write(signer);
    intake.requireWritten();
    intake.settle(signer);
    still.end();
    return signer;
  }

  private static StationException nobody() {
    return StationException.misstep(
        "NOBODY-ON-DUTY",
        "Nothing was done.",
        "No official is signed in, so nobody could sign it.",
        "Sign in first.");
  }
}
