/**
 * The seal of a PDF: a signature over its bytes, with a time-stamp (RFC 3161) where an authority
 * gives one.
 *
 * <p>Front doors: {@link lanewarden.audit.seal.Seal} and {@link lanewarden.audit.seal.Sealing}.
 * Words it owns: seal, sealing, time-stamp authority. May import: ledger, for its keys; no other
 * sub-room.
 */
@NullMarked
package lanewarden.audit.seal;

import org.jspecify.annotations.NullMarked;
