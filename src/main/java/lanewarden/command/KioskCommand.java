package lanewarden.command;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import lanewarden.station.CheckInLine;
import lanewarden.station.EventFolder;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Opens the screens of an event. */
@Command(
    description = {
      "Open the screens of the check-in line: the official's and the archers' board.",
      "Ends when the last window is closed. Where no display can be opened, exit code 4."
    })
final class KioskCommand implements Callable<Integer> {
  private final Workplace workplace;

  @Parameters(paramLabel = "FOLDER", description = "The event's folder.")
  private Path folder = Path.of("");

  @Mixin private InstrumentOptions instrument = new InstrumentOptions();

  KioskCommand(Workplace workplace) {
    this.workplace = workplace;
  }

  @Override
  public Integer call() throws Exception {
    EventFolder event = new EventFolder(folder);
    CheckInLine line =
        CheckInLine.open(event, instrument.port(), instrument.pace(), workplace.here());
    return new OrderlyEnd(line::leave, workplace.terminal()).after(() -> show(event, line));
  }

  private int show(EventFolder event, CheckInLine line) {
    try {
      workplace.screens().show(line.station(), event, Optional.empty());
      return ExitCode.FINE;
    } catch (NoDisplay e) {
      workplace.terminal().say(e.inWords() + ". Work in the terminal with: line " + folder);
      return ExitCode.ENVIRONMENT;
    }
  }
}
