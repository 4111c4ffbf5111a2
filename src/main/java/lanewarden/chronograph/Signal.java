package lanewarden.chronograph;

import java.time.Instant;

/** What an instrument tells the station. */
public sealed interface Signal {
  /** A good reading. */
  record Heard(Reading reading) implements Signal {}

  /** Bytes that were refused. */
  record Refused(Refusal refusal) implements Signal {}

  /**
   * The link came, went or ended.
   *
   * @param state how it stands now
   * @param words what happened, why, and what to do, for people
   * @param at when
   */
  record LinkChanged(LinkState state, String words, Instant at) implements Signal {}
}
