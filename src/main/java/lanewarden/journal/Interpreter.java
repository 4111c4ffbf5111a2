package lanewarden.journal;

import java.util.List;
import java.util.Optional;

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

    /** What speaks against a reading of a check. */
    List<String> against(Fact.ReadingTaken taken);

    /** What speaks against a shot of a verification. */
    List<String> against(Fact.VerificationShot shot);
  }
}
