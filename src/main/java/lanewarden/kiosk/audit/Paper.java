package lanewarden.kiosk.audit;

import java.security.SecureRandom;
import lanewarden.kiosk.desk.Printing;
import lanewarden.kiosk.protest.SlipMaker;

/**
 * What puts a ledger on paper.
 *
 * @param reports makes audit reports
 * @param slips makes slips
 * @param printing prints either
 * @param random for time-stamps
 */
public record Paper(ReportMaker reports, SlipMaker slips, Printing printing, SecureRandom random) {}
