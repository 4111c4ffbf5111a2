package lanewarden.kiosk;

import lanewarden.kiosk.audit.ReportMaker;
import lanewarden.kiosk.protest.SlipMaker;

/**
 * Who makes what can be printed.
 *
 * @param report makes the audit report
 * @param slips make and print the slip of a check
 */
public record Makers(ReportMaker report, SlipMaker slips) {}
