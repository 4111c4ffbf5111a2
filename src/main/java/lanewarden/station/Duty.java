package lanewarden.station;

import lanewarden.ledger.SigningKey;
import org.jspecify.annotations.Nullable;

/** Who signs at the station, if anybody does; under the station's lock. */
final class Duty {
  private final Intake intake;
  private @Nullable SigningKey key;

  Duty(Intake intake) {
    this.intake = intake;
  }

  /** An official takes over. */
  void begin(SigningKey opened) {
    key = opened;
  }

  /** Nobody signs any more. */
  void end() {
    key = null;
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
   * The key to sign with, when everything that was heard before is written.
   *
   * @throws StationException if nobody is on duty, or something cannot be written
   */
  SigningKey ready() throws StationException {
    SigningKey signer = key;
    if (signer == null) {
      throw StationException.misstep(
          "NOBODY-ON-DUTY",
          "Nothing was done.",
          "No official is signed in, so nobody could sign it.",
          "Sign in first.");
    }
    intake.write(signer);
    intake.requireWritten();
    intake.settle(signer);
    return signer;
  }
}
