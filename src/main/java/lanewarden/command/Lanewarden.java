package lanewarden.command;

import picocli.CommandLine;

/** The program's name on the command line; its commands do the work. */
@CommandLine.Command(
    name = "lanewarden",
    mixinStandardHelpOptions = true,
    scope = CommandLine.ScopeType.INHERIT,
    synopsisSubcommandLabel = "COMMAND",
    description = {
      "The speed-check station of a 3D archery tournament.",
      "Without a command, or with an event's folder in place of one, it opens its start screen."
    },
    footer = {
      "",
      "Results go to standard output, talk to standard error.",
      "Exit codes: 0 fine; 1 a fault of this program; 2 wrong usage; 3 a proof or verification"
          + " failed; 4 disk, port or display."
    })
final class Lanewarden {}
