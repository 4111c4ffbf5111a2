package lanewarden.command;

import lanewarden.station.EventFolder;
import lanewarden.station.LedgerRecords;
import lanewarden.station.Protests;
import lanewarden.station.StationException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Takes down a protest. */
@Command(
    description = {
      "Take down a protest against a check, or a spot check, a re-test or a referral to a judge;"
          + " the official signs it.",
      "The recheck is shot at the line: type recheck PROTEST there. A judge rules on it: see"
          + " ruling. No station may have the event open: at an open line, type protest."
    })
final class ProtestCommand extends DeskCommand {
  @Parameters(index = "1", paramLabel = "CHECK", description = LAST_CHECK)
  private String meant = "";

  private long check;

  @Option(
      names = "--occasion",
      paramLabel = "WORD",
      description = "protest (the default), spot check, re-test or referral.")
  private String occasion = "protest";

  @Option(names = "--by", paramLabel = "WHO", required = true, description = "Who files it.")
  private String by = "";

  @Option(names = "--ground", paramLabel = "TEXT", required = true, description = "Why.")
  private String ground = "";

  ProtestCommand(Workplace workplace) {
    super(workplace);
  }

  @Override
  void find(EventFolder event) throws StationException {
    check = LedgerRecords.of(event.path()).checks().last(meant);
  }

  @Override
  Notice sign(Protests protests) throws StationException, CommandRefused {
    return DocketNarration.of(protests.file(check, DocketWords.cause(occasion), by, ground));
  }
}
