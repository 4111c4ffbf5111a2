/**
 * Folds a ledger into evidence, and holds every entry against the rules: what an opponent should
 * look at.
 *
 * <p>Front door: {@link lanewarden.audit.findings.LedgerFold}, which gives {@link
 * lanewarden.audit.findings.Evidence}. Words it owns: evidence, examiner, finding, contradiction.
 * May import: quantity, metrology, rules, ledger, journal; of the sub-rooms wording, seal for
 * fingerprints, and press for progress and for bytes packed to be enclosed.
 */
@NullMarked
package lanewarden.audit.findings;

import org.jspecify.annotations.NullMarked;
