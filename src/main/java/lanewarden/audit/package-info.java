/**
 * The audit report, made from a ledger file alone: needs no station.
 *
 * <p>Front door: {@link lanewarden.audit.AuditReport}. Words it owns: audit, finding, report, worth
 * of a figure. May import: quantity, metrology, bow, rules, ledger, journal.
 */
@NullMarked
package lanewarden.audit;

import org.jspecify.annotations.NullMarked;
