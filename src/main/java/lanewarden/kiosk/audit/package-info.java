/** Making the audit report, with its progress. */
@NullMarked
package lanewarden.kiosk.audit;

import org.jspecify.annotations.NullMarked;
