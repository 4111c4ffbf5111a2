package lanewarden.command;

import lanewarden.station.Protests;
import lanewarden.station.StationException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Confirms a correction. */
@Command(
    description = {
      "Confirm a correction that somebody else made; it takes effect with this second signature.",
      "Where the rule has to be asked anew, its verdict is signed with it. No station may have the"
          + " event open: at an open line, type confirm CORRECTION."
    })
final class ConfirmCommand extends DeskCommand {
  @Parameters(index = "1", paramLabel = "CORRECTION", description = "The number of the correction.")
  private long correction;

  ConfirmCommand(Workplace workplace) {
    super(workplace);
  }

  @Override
  Notice sign(Protests protests) throws StationException {
    return DocketNarration.of(protests.confirm(correction));
  }
}
