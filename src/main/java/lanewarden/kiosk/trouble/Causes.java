package lanewarden.kiosk.trouble;

import lanewarden.audit.printing.PrintRefused;
import lanewarden.audit.slip.SlipRefused;
import lanewarden.station.Trouble;

/** What an exception means to whoever stands at the screen. */
public final class Causes {

  private Causes() {}

  /** The trouble that an exception means, one of the audit's too. */
  public static Trouble trouble(Throwable thrown) {
    if (thrown instanceof SlipRefused refused) {
      return new Trouble(
          refused.what(),
          refused.why(),
          refused.remedy(),
          refused.code(),
          Trouble.Kind.valueOf(refused.nature().name()));
    }
    if (thrown instanceof PrintRefused refused) {
      return new Trouble(
          refused.what(),
          refused.why(),
          refused.remedy(),
          refused.code(),
          Trouble.Kind.ENVIRONMENT);
    }
    return Trouble.of(thrown);
  }
}
