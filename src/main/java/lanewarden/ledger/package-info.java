/**
 * Signed, chained, append-only entries in a SQLite file, and their verification. Knows nothing of
 * archery: an entry is bytes with a kind.
 *
 * <p>Front doors: {@link lanewarden.ledger.Ledger} to write, {@link lanewarden.ledger.Verification}
 * to read and check a file without writing, {@link lanewarden.ledger.ExportedEntries} for entries
 * outside a ledger, {@link lanewarden.ledger.KeyFile} for keys at rest. The format is told in
 * {@code src/site/markdown/ledger-format.md}, so that a stranger can check a ledger without this
 * room.
 *
 * <p>Words it owns: entry, draft, head, organizer, enrolled, key, thumbprint, verification, fault.
 * May import: nothing but the JDK and libraries. JDBC stays in this room.
 */
@NullMarked
package lanewarden.ledger;

import org.jspecify.annotations.NullMarked;
