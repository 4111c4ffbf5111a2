/**
 * What people write in files, read strictly: every fault has a file, a line, a column, what was
 * expected, what was found and the mend.
 *
 * <p>Front door: {@link lanewarden.written.TomlPage}. Words it owns: fault in a written file, page,
 * section. May import: nothing but the JDK and the TOML library.
 */
@NullMarked
package lanewarden.written;

import org.jspecify.annotations.NullMarked;
