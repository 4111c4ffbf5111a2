package lanewarden.kiosk;

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
public record Makers(ReportMaker report, SlipMaker slips, Printing printing, CheckUp checkUp) {}
