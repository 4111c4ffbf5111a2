/**
 * The printers of the system, for whatever was made as a PDF.
 *
 * <p>Front door: {@link lanewarden.audit.printing.Printers}. Words it owns: printer. May import:
 * nothing of the house.
 */
@NullMarked
package lanewarden.audit.printing;

import org.jspecify.annotations.NullMarked;
