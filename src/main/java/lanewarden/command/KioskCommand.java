package lanewarden.command;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import lanewarden.station.CurrentLine;
import lanewarden.station.EventFolder;
import lanewarden.station.LineOpening;
import lanewarden.station.StationException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Opens the screens of an event. */
@Command(
    description = {
      "Open the screens of the check-in line: the official's and the archers' board.",
      "Ends when the last window is closed. Where no display can be opened, exit code 4."
    })
final class KioskCommand implements Callable<Integer> {
  static final String NAME = "kiosk";

  private final Workplace workplace;

  @Parameters(paramLabel = "FOLDER", description = "The event's folder.")
  private Path folder = Path.of("");

  @Option(
      names = "--full",
      description = {
        "Fill the screen whole. Escape, closing and leaving then take the passphrase of an official",
        "of the event or of its organizer."
      })
  private boolean full;

  @Mixin private InstrumentOptions instrument = new InstrumentOptions();

  KioskCommand(Workplace workplace) {
    this.workplace = workplace;
  }

  /**
   * The command without options, which stands for itself: somebody waits for the screens, and to
   * learn what a command takes would cost a good part of a start.
   *
   * @return empty where the arguments are to be read like those of every command
   */
  static Optional<Callable<Integer>> plain(Workplace workplace, String... arguments) {
    if (arguments.length != 2 || !arguments[0].equals(NAME) || !StartUp.isFolder(arguments[1])) {
      return Optional.empty();
    }
    KioskCommand command = new KioskCommand(workplace);
    command.folder = Path.of(arguments[1]);
    return Optional.of(command);
  }

  @Override
  public Integer call() throws Exception {
    EventFolder event = new EventFolder(folder);
    CurrentLine line = new CurrentLine(workplace.here());
    return new OrderlyEnd(line::end, workplace.terminal()).after(() -> show(event, line));
  }

  private int show(EventFolder event, CurrentLine line) throws StationException {
    try {
      workplace
          .screens()
          .show(
              new LineOpening(line, event, instrument.port(), instrument.pace()),
              Optional.empty(),
              full);
      return ExitCode.FINE;
    } catch (NoDisplay e) {
      workplace.terminal().say(e.inWords() + ". Work in the terminal with: line " + folder);
      return ExitCode.ENVIRONMENT;
    }
  }
}
