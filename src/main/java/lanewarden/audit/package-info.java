/**
 * The audit report and the export, made from a ledger file alone: needs no station.
 *
 * <p>Front doors: {@link lanewarden.audit.AuditReport} and {@link lanewarden.audit.Export} here,
 * {@link lanewarden.audit.slip.Slips}, {@link lanewarden.audit.slip.SlipSearch} and {@link
 * lanewarden.audit.comparison.ComparisonPaper} in sub-rooms. Words it owns: audit, report, export,
 * edition, summary. May import: quantity, metrology, bow, rules, bench, ledger, journal.
 *
 * <p>It joins its sub-rooms press, seal, wording and findings; none of them, nor slip or
 * comparison, imports it, and no circle joins them. {@code SubRoomsTest} holds who may import whom.
 */
@NullMarked
package lanewarden.audit;

import org.jspecify.annotations.NullMarked;
