/**
 * How checks, readings and protests read, the same in report, slip, export and finding.
 *
 * <p>Front doors: {@link lanewarden.audit.wording.Wording}, {@link
 * lanewarden.audit.wording.CheckRow} and {@link lanewarden.audit.wording.ProtestSheet}. Words it
 * owns: wording, row, cell, mark, worth of a figure. May import: quantity, metrology, bow, rules,
 * journal; no other sub-room.
 */
@NullMarked
package lanewarden.audit.wording;

import org.jspecify.annotations.NullMarked;
