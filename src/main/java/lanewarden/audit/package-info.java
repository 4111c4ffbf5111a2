/**
 * The audit report, the slips and the export, made from a ledger file alone: needs no station.
 *
 * <p>Front doors: {@link lanewarden.audit.AuditReport}, {@link lanewarden.audit.Slips}, {@link
 * lanewarden.audit.SlipSearch}, {@link lanewarden.audit.Export} and, for set-ups side by side,
 * {@link lanewarden.audit.ComparisonPaper}. Words it owns: audit, finding, report, export, edition,
 * seal, slip, worth of a figure. May import: quantity, metrology, bow, rules, bench, ledger,
 * journal.
 */
@NullMarked
package lanewarden.audit;

import org.jspecify.annotations.NullMarked;
