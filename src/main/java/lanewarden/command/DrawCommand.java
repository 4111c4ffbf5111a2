package lanewarden.command;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import lanewarden.station.EventFolder;
import lanewarden.station.EventOffice;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Draws those of a division who are to be checked. */
@Command(
    description = {
      "Draw those of a division who are to be checked, from digits thrown before witnesses; the"
          + " official signs the draw.",
      "Anybody can draw again from the bibs and the digits: src/site/markdown/public-draw.md says"
          + " how. A division is drawn once under a rule book. No station may have the event open:"
          + " at an open line, type draw DIVISION SEED."
    })
final class DrawCommand implements Callable<Integer> {
  private final Workplace workplace;

  @Parameters(index = "0", paramLabel = "FOLDER", description = "The event's folder.")
  private Path folder = Path.of("");

  @Parameters(index = "1", paramLabel = "DIVISION", description = "The division's code.")
  private String division = "";

  @Option(
      names = "--seed",
      paramLabel = "DIGITS",
      required = true,
      description = "What the dice showed, 20 digits or more; spaces between them do not count.")
  private String seed = "";

  @Mixin private Signer signer = new Signer();

  @Option(names = "--json", description = "Answer with one JSON object.")
  private boolean json;

  DrawCommand(Workplace workplace) {
    this.workplace = workplace;
  }

  @Override
  public Integer call() throws Exception {
    Terminal terminal = workplace.terminal();
    EventFolder event = new EventFolder(folder);
    Signer.Signature by = signer.signature(event, terminal);
    Notice told =
        Narration.draw(
            new EventOffice(event, workplace.here())
                .draw(by.name(), by.passphrase(), division, seed));
    terminal.result(json ? told.json() : told.line());
    return ExitCode.FINE;
  }
}
