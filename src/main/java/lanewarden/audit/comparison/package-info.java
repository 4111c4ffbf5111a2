/**
 * Set-ups of a practice day side by side, on paper and as a table. It is no evidence.
 *
 * <p>Front door: {@link lanewarden.audit.comparison.ComparisonPaper}. Words it owns: paper of a
 * comparison. May import: quantity, metrology, rules, bench; of the sub-rooms wording and press.
 */
@NullMarked
package lanewarden.audit.comparison;

import org.jspecify.annotations.NullMarked;
