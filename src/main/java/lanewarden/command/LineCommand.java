package lanewarden.command;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import lanewarden.station.CheckInLine;
import lanewarden.station.EventFolder;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Runs the check-in line in a terminal. */
@Command(
    description = {
      "Run the check-in line in a terminal: type bibs and words, readings come from the instrument.",
      "Whatever is told was signed and is safe on the disk before. A check that ran when the program"
          + " ended is still at the line when it starts again."
    })
final class LineCommand implements Callable<Integer> {
  private final Workplace workplace;

  @Parameters(paramLabel = "FOLDER", description = "The event's folder.")
  private Path folder = Path.of("");

  @Mixin private InstrumentOptions instrument = new InstrumentOptions();

  @Mixin private Signer signer = new Signer();

  @Option(
      names = "--organizer-key",
      paramLabel = "FILE",
      description = {
        "Where the organizer's key is, for adopt, seal, enrol, suspend, replace and readmit",
        "(default: keys/organizer.key in the folder)."
      })
  private Optional<Path> organizerKey = Optional.empty();

  @Option(names = "--json", description = "Tell everything as JSON, an object a line.")
  private boolean json;

  LineCommand(Workplace workplace) {
    this.workplace = workplace;
  }

  @Override
  public Integer call() throws Exception {
    Terminal terminal = workplace.terminal();
    EventFolder event = new EventFolder(folder);
    Signer.Signature by = signer.signature(event, terminal);
    CheckInLine line =
        CheckInLine.open(event, instrument.port(), instrument.pace(), workplace.here());
    LineSession session =
        new LineSession(
            line,
            workplace,
            organizerKey,
            told -> terminal.result(json ? told.json() : told.line()),
            trouble -> terminal.refusal(trouble, json));
    return new OrderlyEnd(session::leave, terminal)
        .after(
            () -> {
              line.station().signIn(by.name(), by.passphrase());
              terminal.say("Type a bib to call a competitor, or help.");
              session.obey(terminal::line);
              return ExitCode.FINE;
            });
  }
}
