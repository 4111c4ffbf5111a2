package lanewarden.kiosk;

import java.security.SecureRandom;
import lanewarden.kiosk.audit.Paper;
import lanewarden.kiosk.audit.ReportMaker;
import lanewarden.kiosk.desk.Printing;
import lanewarden.kiosk.protest.SlipMaker;
import lanewarden.station.CheckUp;

/**
 * Who makes what can be printed, and who looks the station over.
 *
 * @param report makes the audit report
 * @param slips makes the slip of a check
 * @param printing prints either
 * @param checkUp looks the station over
 */
public record Makers(ReportMaker report, SlipMaker slips, Printing printing, CheckUp checkUp) {

  /**
   * What puts a ledger on paper.
   *
   * @param random for time-stamps
   */
  Paper paper(SecureRandom random) {
    return new Paper(report, slips, printing, random);
  }
}
