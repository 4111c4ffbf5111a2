package lanewarden.kiosk;

import lanewarden.kiosk.audit.ReportMaker;
import lanewarden.kiosk.protest.SlipMaker;
import lanewarden.station.CheckUp;

/**
 * Who makes what can be printed, and who looks the station over.
 *
 * @param report makes the audit report
 * @param slips make and print the slip of a check
 * @param checkUp looks the station over
 */
public record Makers(ReportMaker report, SlipMaker slips, CheckUp checkUp) {}
