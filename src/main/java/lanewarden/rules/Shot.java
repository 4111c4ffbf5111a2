package lanewarden.rules;

import lanewarden.quantity.Speed;

/** One shot of a check: it gave a reading, or its reading is void. Either way it is used up. */
public sealed interface Shot {

  /** A shot whose reading stands. */
  record Read(Speed speed) implements Shot {}

  /** A shot without a reading that stands: nothing was read, or the official voided it. */
  record Voided() implements Shot {}
}
