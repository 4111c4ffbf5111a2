/**
 * Signed, chained, append-only entries in a SQLite file, and their verification. Knows nothing of
 * archery: an entry is bytes with a kind.
 *
 * <p>Front door: {@link lanewarden.ledger.Ledger}. Words it owns: entry, head, key, thumbprint,
 * verification. May import: nothing but the JDK and libraries.
 */
@NullMarked
package lanewarden.ledger;

import org.jspecify.annotations.NullMarked;
