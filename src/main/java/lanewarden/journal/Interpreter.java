package lanewarden.journal;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import lanewarden.quantity.Speed;
import org.jspecify.annotations.Nullable;

/**
 * Reads anew what instruments sent, with the papers that were signed when the line opened.
 *
 * <p>The language of instruments belongs to the chronograph, which neither the journal nor the
 * audit knows; whoever puts the rooms together hands one in. Holds no state.
 */
@FunctionalInterface
public interface Interpreter {

  /** What the papers of an opening say of the readings that were taken by them. */
  Interpretation of(Fact.StationOpened opened);

  /**
   * The papers of one opening. What speaks against a reading is said in sentences' parts, for
   * example {@code its bytes say 301.2 ft/s}; nothing where the reading follows from its bytes.
   */
  interface Interpretation {
    /** Why nothing can be read anew by these papers; empty where it can. */
    Optional<String> fault();

    /**
     * What speaks against the opening itself: a place of the instrument, or a budget of what makes
     * a reading uncertain, that its settings do not give.
     */
    List<String> against();

    /** What speaks against a reading of a check. */
    List<String> against(Fact.ReadingTaken taken);

    /** What speaks against a shot of a verification. */
    List<String> against(Fact.VerificationShot shot);

    /**
     * What speaks against the reason for which a line was refused: its bytes are a reading, or are
     * none for another reason. Whether the station had a use for a good reading is no matter here.
     *
     * @param before what the instrument had sent before it
     */
    List<String> against(Fact.LineRefused refused, Before before);

    /**
     * The reading that the bytes of a line give by themselves, whatever was made of them; empty
     * where they give none.
     *
     * @param instrument which sent it, by its name
     */
    Optional<Heard> heard(String instrument, String source, String raw);

    /**
     * The speed that the bytes of a refused line say, in words, whatever was made of them; of two
     * instruments that did not agree, both. Empty where they say none.
     */
    Optional<String> says(Fact.LineRefused refused);

    /**
     * What these papers, though it was not by them that it was taken, make of a reading where that
     * is something else than was signed: another speed, or none. Of which instrument it was said to
     * be is no matter.
     */
    Optional<String> otherwise(Fact.ReadingTaken taken);

    /** The same of a shot of a verification. */
    Optional<String> otherwise(Fact.VerificationShot shot);

    /**
     * The reading, in words, that these papers make of a line, though it was not by them that it
     * was refused; empty where they make none of it.
     */
    Optional<String> otherwise(Fact.LineRefused refused);
  }

  /**
   * What the bytes of a line say.
   *
   * @param line the instrument's number of it, or null where it numbers none
   */
  record Heard(Speed speed, @Nullable String line) {}

  /**
   * What one instrument had sent before a line, as far as the ledger tells.
   *
   * @param last the last line that was a good reading, whatever became of it
   * @param elapsed from it to the line
   * @param midway whether the line may have been joined midway: the link opened before it, or the
   *     line before it broke off
   * @param overlong whether the line before it was longer than any may be
   * @param uncertain whether lines before it were only counted, or the check has the very same one
   */
  record Before(
      Optional<Heard> last,
      Optional<Duration> elapsed,
      boolean midway,
      boolean overlong,
      boolean uncertain) {
    /** Of an instrument that just began. */
    public static final Before NOTHING =
        new Before(Optional.empty(), Optional.empty(), true, false, false);
  }
}
