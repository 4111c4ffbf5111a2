package lanewarden.command;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import lanewarden.journal.CheckSought;
import lanewarden.station.EventFolder;
import lanewarden.station.EventOffice;
import lanewarden.station.Protests;
import lanewarden.station.StationException;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What an official or a judge signs about a check while no station runs. */
abstract class DeskCommand implements Callable<Integer> {

  /** How a command tells that it takes a check as {@link CheckSought} does, and which is meant. */
  static final String LAST_CHECK =
      "A bib, or a name or a part of it, whose last check is meant, or the number of a check;"
          + " where a bib is the same, write \"check 16\".";

  private final Workplace workplace;

  @Parameters(index = "0", paramLabel = "FOLDER", description = "The event's folder.")
  private Path folder = Path.of("");

  @Mixin private Signer signer = new Signer();

  @Option(names = "--json", description = "Answer with one JSON object.")
  private boolean json;

  DeskCommand(Workplace workplace) {
    this.workplace = workplace;
  }

  /**
   * Looks up what is meant, before anybody is asked for a passphrase.
   *
   * @throws StationException if it is not clear, or there is none
   */
  void find(EventFolder event) throws StationException {
    // Whatever is meant by its number is looked up when it is signed
  }

  /** Signs, and says what was signed. */
  abstract Notice sign(Protests protests) throws StationException, CommandRefused;

  @Override
  public Integer call() throws Exception {
    Terminal terminal = workplace.terminal();
    EventFolder event = new EventFolder(folder);
    event.requireUnused();
    find(event);
    Signer.Signature by = signer.signature(event, terminal);
    Notice told =
        sign(new EventOffice(event, workplace.here()).protests(by.name(), by.passphrase()));
    terminal.result(json ? told.json() : told.line());
    return ExitCode.FINE;
  }
}
