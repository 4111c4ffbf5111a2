package lanewarden.command;

import lanewarden.journal.Correction;
import lanewarden.station.EventFolder;
import lanewarden.station.LedgerRecords;
import lanewarden.station.Protests;
import lanewarden.station.StationException;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Corrects what was written down wrongly of a check. */
@Command(
    description = {
      "Correct a wrong bib, a wrong division or a mistyped reading of a check; the official signs"
          + " it.",
      "It takes effect when somebody else confirms it: see confirm. What was signed before stays. A"
          + " measured reading is never corrected. No station may have the event open: at an open"
          + " line, type correct."
    })
final class CorrectCommand extends DeskCommand {
  @Parameters(index = "1", paramLabel = "CHECK", description = LAST_CHECK)
  private String meant = "";

  private long check;

  /** What is right: one of these. */
  static final class Right {
    @Option(
        names = "--bib",
        paramLabel = "BIB",
        required = true,
        description = "Whose check it is.")
    private String bib = "";

    @Option(
        names = "--division",
        paramLabel = "CODE",
        required = true,
        description = "The division.")
    private String division = "";

    @ArgGroup(exclusive = false)
    private Reading reading = new Reading();
  }

  /** A reading that was mistyped. */
  static final class Reading {
    @Option(
        names = "--shot",
        paramLabel = "NUMBER",
        required = true,
        description = "The shot whose reading was mistyped.")
    private int shot;

    @Option(
        names = "--speed",
        paramLabel = "SPEED",
        required = true,
        description = "What should have been typed.")
    private String speed = "";
  }

  @ArgGroup(multiplicity = "1")
  private Right right = new Right();

  @Option(names = "--reason", paramLabel = "TEXT", required = true, description = "Why.")
  private String reason = "";

  CorrectCommand(Workplace workplace) {
    super(workplace);
  }

  @Override
  void find(EventFolder event) throws StationException {
    check = LedgerRecords.of(event.path()).checks().last(meant);
  }

  @Override
  Notice sign(Protests protests) throws StationException {
    return DocketNarration.of(made(protests));
  }

  private Correction made(Protests protests) throws StationException {
    if (!right.bib.isEmpty()) {
      return protests.correctBib(check, right.bib, reason);
    }
    return right.division.isEmpty()
        ? protests.correctReading(check, right.reading.shot, right.reading.speed, reason)
        : protests.correctDivision(check, right.division, reason);
  }
}
