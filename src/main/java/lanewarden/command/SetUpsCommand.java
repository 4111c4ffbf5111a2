package lanewarden.command;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import lanewarden.audit.comparison.ComparisonPaper;
import lanewarden.station.CheckInLine;
import lanewarden.station.EventFolder;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Shoots set-ups beside each other in a terminal. */
@Command(
    description = {
      "Shoot set-ups beside each other at an event's instrument, in a terminal: state a bow and an"
          + " arrow, let the instrument listen or type readings, strike misreads out, compare. Every"
          + " shot is at once in a CSV file in the event's folder.",
      "It is a look and no check: nobody has to be on duty, and only what is kept is signed. While"
          + " readings come here none goes to the line. Shoot only on a range that its officer has"
          + " cleared."
    })
final class SetUpsCommand implements Callable<Integer> {
  private final Workplace workplace;

  @Parameters(paramLabel = "FOLDER", description = "The event's folder.")
  private Path folder = Path.of("");

  @Mixin private InstrumentOptions instrument = new InstrumentOptions();

  @Option(names = "--json", description = "Tell everything as JSON, an object a line.")
  private boolean json;

  SetUpsCommand(Workplace workplace) {
    this.workplace = workplace;
  }

  @Override
  public Integer call() throws Exception {
    Terminal terminal = workplace.terminal();
    CheckInLine line =
        CheckInLine.open(
            new EventFolder(folder), instrument.port(), instrument.pace(), workplace.here());
    PracticeSession session =
        new PracticeSession(
            line,
            new ComparisonPaper(workplace.here().clock()),
            terminal,
            told -> terminal.result(json ? told.json() : told.line()),
            json,
            trouble -> terminal.refusal(trouble, json));
    return new OrderlyEnd(session::leave, terminal)
        .after(
            () -> {
              terminal.say("State a bow and an arrow: setup BOW; ARROW; mass 352.5. Or type help.");
              session.obey(terminal::line);
              return ExitCode.FINE;
            });
  }
}
