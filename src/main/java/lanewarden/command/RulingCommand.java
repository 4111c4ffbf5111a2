package lanewarden.command;

import lanewarden.station.Protests;
import lanewarden.station.StationException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A judge rules on a protest. */
@Command(
    description = {
      "Rule on a protest, and say which check counts from here on; a judge signs it.",
      "The judge must have signed nothing of the check in dispute, nor of its rechecks. No station"
          + " may have the event open: at an open line, a judge on duty types rule."
    })
final class RulingCommand extends DeskCommand {
  @Parameters(index = "1", paramLabel = "PROTEST", description = "The number of the protest.")
  private long protest;

  @Option(
      names = "--ruling",
      paramLabel = "upheld|dismissed",
      required = true,
      description = "Whether the protest is right; dismissed, the check in dispute stands.")
  private String ruling = "";

  @Option(
      names = "--stands",
      paramLabel = "CHECK",
      required = true,
      description = "The number of the check whose outcome counts.")
  private long stands;

  @Option(
      names = "--consequence",
      paramLabel = "TEXT",
      required = true,
      description = "What follows for the archer.")
  private String consequence = "";

  @Option(names = "--reason", paramLabel = "TEXT", required = true, description = "Why.")
  private String reason = "";

  RulingCommand(Workplace workplace) {
    super(workplace);
  }

  @Override
  Notice sign(Protests protests) throws StationException, CommandRefused {
    return DocketNarration.of(
        protests.rule(protest, DocketWords.answer(ruling), stands, consequence, reason));
  }
}
