package lanewarden.journal;

import java.util.Arrays;
import java.util.Optional;

/** Why a good reading counted for nobody when it came: the words signed as the reason. */
public enum Untimely {
  /** While the line was stopped for safety. */
  STOPPED("line not clear"),
  /** While the instrument was verified, and the verification had no use for it. */
  NO_SHOT("no shot of it"),
  /** While the line was held. */
  HELD("held"),
  /** While no official was on duty. */
  OFF_DUTY("nobody on duty"),
  /** While no competitor was called. */
  NO_COMPETITOR("no competitor"),
  /** After the check at the line was decided. */
  DECIDED("already decided"),
  /** A line that the check at the line had already. */
  REPEATED("repeated"),
  /** While the check at the line waited for something else than a shot. */
  NOT_ASKED("not asked for");

  private final String word;

  Untimely(String word) {
    this.word = word;
  }

  /** The reason, as it is signed. */
  public String word() {
    return word;
  }

  /** The one that is signed so; empty where the reason is another. */
  public static Optional<Untimely> of(String word) {
    return Arrays.stream(values()).filter(one -> one.word.equals(word)).findFirst();
  }
}
