/**
 * The command line.
 *
 * <p>Front door: {@link lanewarden.command.Program}. Words it owns: command, option, exit code. May
 * import: station, audit and value types.
 */
@NullMarked
package lanewarden.command;

import org.jspecify.annotations.NullMarked;
