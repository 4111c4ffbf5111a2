/**
 * What people write in files, read strictly: every fault has a file, a line, a column, what was
 * expected, what was found and the mend. And changed gently: everything that a change does not
 * touch stays byte for byte.
 *
 * <p>Front doors: {@link lanewarden.written.TomlPage} and {@link lanewarden.written.CsvTable} to
 * read, {@link lanewarden.written.WrittenToml} to change. Words it owns: fault in a written file,
 * page, section, literal, table, row, cell. May import: quantity; of the libraries the TOML and the
 * CSV one.
 */
@NullMarked
package lanewarden.written;

import org.jspecify.annotations.NullMarked;
