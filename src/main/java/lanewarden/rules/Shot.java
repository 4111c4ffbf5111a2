package lanewarden.rules;

import lanewarden.quantity.Speed;

/** One shot of a check: it gave a reading, or its reading is void. Either way it is used up. */
public sealed interface Shot {

  /**
   * A shot whose reading stands.
   *
   * @param kept whether an official let it count although it was in doubt
   */
  record Read(Speed speed, boolean kept) implements Shot {
    /** A reading that nobody was asked about. */
    public Read(Speed speed) {
      this(speed, false);
    }
  }

  /** A shot without a reading that stands: nothing was read, or the official voided it. */
  record Voided() implements Shot {}
}
