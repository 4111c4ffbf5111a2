package lanewarden.audit;

import java.util.Optional;
import lanewarden.audit.seal.Seal;
import lanewarden.audit.seal.TimeStampAuthority;

/**
 * Which report is to be made.
 *
 * @param named whether names and typed words stand in it, and the ledger travels inside; without
 *     them it may be published
 * @param seal what signs the file, if anything does
 * @param authority asked for a time-stamp of the seal, if anybody is; nobody is without a seal
 */
public record ReportEdition(
    boolean named, Optional<Seal> seal, Optional<TimeStampAuthority> authority) {

  /** The whole report, unsealed. */
  public static ReportEdition plain() {
    return new ReportEdition(true, Optional.empty(), Optional.empty());
  }
}
