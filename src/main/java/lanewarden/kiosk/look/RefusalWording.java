package lanewarden.kiosk.look;

import java.util.Arrays;
import java.util.Optional;
import lanewarden.chronograph.Reason;
import lanewarden.journal.Untimely;

/**
 * Why a line did not become a reading of anybody, in a word or two of the screens. What is signed
 * with it, a sentence, stands as it is signed.
 */
public final class RefusalWording {

  private RefusalWording() {}

  /** The words of a reason that was signed; as signed where it is none that is known. */
  public static String of(String signed, Texts texts) {
    return Untimely.of(signed)
        .map(RefusalWording::key)
        .or(() -> reason(signed).map(RefusalWording::key))
        .map(texts::of)
        .orElse(signed);
  }

  private static Optional<Reason> reason(String signed) {
    return Arrays.stream(Reason.values()).filter(one -> one.word().equals(signed)).findFirst();
  }

  private static String key(Untimely why) {
    return switch (why) {
      case STOPPED -> "refused.stopped";
      case NO_SHOT -> "refused.no-shot";
      case HELD -> "refused.held";
      case OFF_DUTY -> "refused.off-duty";
      case NO_COMPETITOR -> "refused.no-competitor";
      case DECIDED -> "refused.decided";
      case REPEATED -> "refused.repeated";
      case NOT_ASKED -> "refused.not-asked";
    };
  }

  private static String key(Reason why) {
    return switch (why) {
      case TORN -> "refused.torn";
      case OVERLONG -> "refused.overlong";
      case CHECKSUM -> "refused.checksum";
      case PATTERN -> "refused.pattern";
      case REPEATED -> "refused.repeated";
      case NOT_A_NUMBER -> "refused.not-a-number";
      case OUT_OF_RANGE -> "refused.out-of-range";
      case STATUS -> "refused.status";
      case UNIT -> "refused.unit";
      case GATES -> "refused.gates";
      case REVERSED -> "refused.reversed";
      case DISAGREE -> "refused.disagree";
      case UNPAIRED -> "refused.unpaired";
    };
  }
}
