package lanewarden.command;

import picocli.CommandLine;

/** The program's name on the command line; its commands do the work. */
@CommandLine.Command(
    name = "lanewarden",
    synopsisSubcommandLabel = "COMMAND",
    description = "The speed-check station of a 3D archery tournament.",
    footer = {
      "",
      "Results go to standard output, talk to standard error.",
      "Exit codes: 0 fine; 1 a fault of this program; 2 wrong usage; 3 a proof or verification"
          + " failed; 4 disk, port or display."
    })
final class Lanewarden {

  @CommandLine.Option(
      names = {"-h", "--help"},
      usageHelp = true,
      scope = CommandLine.ScopeType.INHERIT,
      description = "Say how this command is used.")
  private boolean help;

  @CommandLine.Option(
      names = "--version",
      versionHelp = true,
      description = "Say the program's name and version.")
  private boolean version;
}
