package lanewarden.command;

import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.Callable;
import lanewarden.audit.comparison.ComparisonPaper;
import lanewarden.bench.Comparison;
import lanewarden.station.EventFolder;
import lanewarden.station.EventOffice;
import lanewarden.station.PracticeDay;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Compares the set-ups of a practice day. */
@Command(
    description = {
      "Compare bows and arrows that were shot on a practice day: mean, scatter and misreads of each"
          + " set-up, which differences are real and which are within noise, kinetic energy,"
          + " momentum, and what stays to the limits of a rule book.",
      "FILE is CSV, a line a shot, with the columns bow,arrow,arrow-mass,speed and, where known,"
          + " draw-weight, draw-length, brace-height, rated-speed with rated-draw-weight,"
          + " rated-draw-length and rated-arrow-mass, misread (yes or no) and remark. Figures carry"
          + " their unit; those of a bow or an arrow are written once."
    })
final class CompareCommand implements Callable<Integer> {
  private final Workplace workplace;

  @Parameters(paramLabel = "FILE", description = "The shots of the practice day.")
  private Path file = Path.of("");

  @Option(
      names = "--rules",
      paramLabel = "RULE-BOOK",
      description = "A rule book, or an event's folder with one: its limits are looked at.")
  private Optional<Path> rules = Optional.empty();

  @Option(names = "--pdf", paramLabel = "OUT", description = "Write tables and pictures as a PDF.")
  private Optional<Path> pdf = Optional.empty();

  @Option(
      names = "--csv",
      paramLabel = "OUT",
      description =
          "Write the table of set-ups as CSV, with margins, differences, what the rating makes one"
              + " expect and virtual mass.")
  private Optional<Path> csv = Optional.empty();

  @Option(
      names = "--keep-in",
      paramLabel = "FOLDER",
      description =
          "Keep the file in an event's ledger, signed by an official; no station may have the event"
              + " open. The report lists it.")
  private Optional<Path> event = Optional.empty();

  @Option(
      names = "--title",
      paramLabel = "TEXT",
      description = "What is kept, in your words (default: the file's name).")
  private Optional<String> title = Optional.empty();

  @Mixin private Signer signer = new Signer();

  @Option(names = "--json", description = "Answer with one JSON object.")
  private boolean json;

  CompareCommand(Workplace workplace) {
    this.workplace = workplace;
  }

  @Override
  public Integer call() throws Exception {
    Comparison comparison = PracticeDay.compare(file, rules);
    ComparisonPaper paper = new ComparisonPaper(workplace.here().clock());
    if (pdf.isPresent()) {
      paper.pdf(comparison, pdf.get());
    }
    if (csv.isPresent()) {
      paper.csv(comparison, csv.get());
    }
    OptionalLong entry = event.isPresent() ? keep(event.get()) : OptionalLong.empty();
    Terminal terminal = workplace.terminal();
    if (json) {
      terminal.result(JsonLine.of(ComparisonMembers.of(comparison, pdf, csv, entry)));
    } else {
      ComparisonLines.of(comparison).forEach(terminal::result);
      pdf.ifPresent(out -> terminal.result(Notice.of("pdf", out.toString()).line()));
      csv.ifPresent(out -> terminal.result(Notice.of("csv", out.toString()).line()));
      entry.ifPresent(number -> terminal.result(Notice.of("kept", "with entry " + number).line()));
    }
    return ExitCode.FINE;
  }

  private OptionalLong keep(Path folder) throws Exception {
    EventFolder kept = new EventFolder(folder);
    Signer.Signature by = signer.signature(kept, workplace.terminal());
    return OptionalLong.of(
        new EventOffice(kept, workplace.here())
            .keepPractice(
                by.name(),
                by.passphrase(),
                file,
                title.orElseGet(() -> String.valueOf(file.getFileName()))));
  }
}
