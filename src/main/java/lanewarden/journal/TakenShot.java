package lanewarden.journal;

import java.util.ArrayList;
import java.util.List;
import lanewarden.quantity.Speed;
import lanewarden.rules.Doubt;
import org.jspecify.annotations.Nullable;

/**
 * A shot of a check.
 *
 * @param sequence of the entry that took the reading
 * @param reading what was read
 * @param voided why it was declared void, or null if it was not
 * @param kept why it was let count although it was in doubt, or null if it was not
 * @param flags what was ever found to speak against it, in order
 * @param doubt what by the rule speaks against it as the check stands; null for nothing, and where
 *     no rule is known
 */
public record TakenShot(
    long sequence,
    Fact.ReadingTaken reading,
    Fact.@Nullable ReadingVoided voided,
    Fact.@Nullable ReadingKept kept,
    List<Fact.ReadingFlagged> flags,
    Doubt.@Nullable Kind doubt) {

  /** Copies the list. */
  public TakenShot {
    flags = List.copyOf(flags);
  }

  TakenShot(long sequence, Fact.ReadingTaken reading) {
    this(sequence, reading, null, null, List.of(), null);
  }

  /** Whether nobody declared the reading void. */
  public boolean stands() {
    return voided == null;
  }

  /**
   * Whether it is a reading of this bow and arrow: it stands, and by what is stated the bow can
   * give it. One that an official is still asked about counts until it is declared void.
   */
  public boolean counts() {
    return stands() && doubt != Doubt.Kind.IMPOSSIBLE;
  }

  /**
   * Whether the rule reckons with it: it stands, and nothing speaks against it that an official is
   * still asked about. Only such readings say how fast arrows flew.
   */
  public boolean isSettled() {
    return stands() && doubt == null;
  }

  /** Whether something was found to speak against it that does not any more, by itself. */
  public boolean isCleared() {
    return stands() && kept == null && doubt == null && !flags.isEmpty();
  }

  TakenShot declareVoid(Fact.ReadingVoided fact) {
    return new TakenShot(sequence, reading, fact, kept, flags, doubt);
  }

  TakenShot keep(Fact.ReadingKept fact) {
    return new TakenShot(sequence, reading, voided, fact, flags, doubt);
  }

  TakenShot flag(Fact.ReadingFlagged fact) {
    List<Fact.ReadingFlagged> more = new ArrayList<>(flags);
    more.add(fact);
    return new TakenShot(sequence, reading, voided, kept, more, doubt);
  }

  /** The same shot as it should have been typed. */
  TakenShot correct(Speed speed) {
    Fact.ReadingTaken right =
        new Fact.ReadingTaken(
            reading.check(),
            reading.shot(),
            speed,
            reading.raw(),
            reading.source(),
            reading.instrument(),
            reading.at(),
            reading.line(),
            reading.uncertainty(),
            reading.second());
    return new TakenShot(sequence, right, voided, kept, flags, doubt);
  }

  TakenShot doubted(Doubt.@Nullable Kind now) {
    return new TakenShot(sequence, reading, voided, kept, flags, now);
  }

  /** Whether this was found to speak against it already. */
  public boolean isFlagged(Doubt.Kind kind) {
    return flags.stream().anyMatch(flag -> flag.kind().equals(kind.word()));
  }
}
