package lanewarden.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import lanewarden.station.CompetitorList;
import lanewarden.station.EventFolder;
import lanewarden.station.LedgerInspection;
import lanewarden.station.NewEvent;
import lanewarden.station.Packed;
import lanewarden.station.StationSettings;
import lanewarden.station.Surroundings;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Makes an event: its folder, its keys and its ledger. */
@Command(
    description = {
      "Make an event: a folder with its rule book, roster, keys and a new ledger.",
      "The folder appears whole or not at all, and nothing is ever made over another."
    },
    footer = {
      "",
      "Passphrases are asked for unseen, or read from a file with one line a person:",
      "  the name, a colon, the passphrase (spaces at its ends do not count).",
      "The file may be a descriptor, such as /dev/fd/3. The shortest passphrase has "
          + NewEvent.SHORTEST_PASSPHRASE
          + " characters."
    })
final class MakeCommand implements Callable<Integer> {
  private final Workplace workplace;

  @Parameters(paramLabel = "FOLDER", description = "The folder to make.")
  private Path folder = Path.of("");

  @Option(
      names = "--rule-book",
      required = true,
      paramLabel = "FILE",
      description =
          "The rule book (TOML); config/rule-book.toml is one to copy, and rules --example writes"
              + " it.")
  private Path ruleBook = Path.of("");

  @Option(
      names = "--roster",
      required = true,
      paramLabel = "FILE",
      description =
          "The competitors (CSV): bib,name,division, or any list with such columns; command roster"
              + " shows what becomes of it.")
  private Path roster = Path.of("");

  @Mixin private ColumnOptions columns = new ColumnOptions();

  @Option(
      names = "--profile",
      required = true,
      paramLabel = "FILE",
      description =
          "How the instrument speaks (TOML); see config/profiles. Or the name of one that the"
              + " program carries: gate-timer.toml, plain-decimal.toml, three-gate-timer.toml.")
  private Path profile = Path.of("");

  @Option(
      names = "--station",
      required = true,
      paramLabel = "NAME",
      description = "The station's name, which every entry of its ledger carries.")
  private String station = "";

  /** Where readings come from: one of the three. */
  static final class Readings {
    @Option(
        names = "--port",
        required = true,
        paramLabel = "PORT",
        description = "The instrument's serial port, such as /dev/ttyUSB0 or COM3.")
    private String port = "";

    @Option(
        names = "--simulator",
        required = true,
        description = "No instrument: invented arrows, for practice.")
    private boolean simulator;

    @Option(
        names = "--typed",
        required = true,
        description = "No line to the instrument: every reading is typed in and marked so.")
    private boolean typed;

    StationSettings.Kind kind() {
      if (simulator) {
        return StationSettings.Kind.SIMULATOR;
      }
      return typed ? StationSettings.Kind.TYPED : StationSettings.Kind.SERIAL;
    }
  }

  @ArgGroup(multiplicity = "1")
  private Readings readings = new Readings();

  @Option(
      names = "--organizer",
      required = true,
      paramLabel = "NAME",
      description = "Whose key the whole ledger rests on.")
  private String organizer = "";

  /** At least one of either. */
  private static final class Signers {
    @Option(
        names = "--official",
        paramLabel = "NAME",
        description = "Who may sign at the station; repeat it for each.")
    private List<String> officials = List.of();

    @Option(
        names = "--judge",
        paramLabel = "NAME",
        description =
            "An official who may rule on protests too; repeat it for each. One official or judge is"
                + " enough.")
    private List<String> judges = List.of();
  }

  @ArgGroup(exclusive = false, multiplicity = "1")
  private Signers signers = new Signers();

  @Option(
      names = "--passphrase-file",
      paramLabel = "FILE",
      description = "Read the passphrases from a file; see below.")
  private Optional<Path> passphraseFile = Optional.empty();

  @Option(names = "--json", description = "Answer with one JSON object.")
  private boolean json;

  MakeCommand(Workplace workplace) {
    this.workplace = workplace;
  }

  @Override
  public Integer call() throws Exception {
    NewEvent.Source rules = NewEvent.Source.of(ruleBook);
    CompetitorList list = CompetitorList.read(roster, columns.said(), Optional.of(ruleBook));
    NewEvent.Source competitors = list.roster();
    NewEvent.Source sentence = Packed.profileAt(profile);
    ColumnOptions.leftOut(list).forEach(workplace.terminal()::say);
    List<NewEvent.Person> people = new ArrayList<>();
    NewEvent.Person root;
    try (Passphrases.Fresh passphrases =
        new Passphrases(workplace.terminal()).fresh(passphraseFile)) {
      root = person(organizer, passphrases);
      for (String official : signers.officials) {
        people.add(person(official, passphrases));
      }
      for (String judge : signers.judges) {
        people.add(NewEvent.Person.judge(judge, passphrases.of(judge.strip())));
      }
    }
    NewEvent event =
        new NewEvent(
            rules, competitors, sentence, station, readings.kind(), readings.port, root, people);
    Surroundings here = workplace.here();
    answer(event.make(folder, here.clock(), here.nanos(), here.random()));
    return ExitCode.FINE;
  }

  private static NewEvent.Person person(String name, Passphrases.Fresh passphrases)
      throws CommandRefused {
    return new NewEvent.Person(name, passphrases.of(name.strip()));
  }

  private void answer(EventFolder made) throws Exception {
    LedgerInspection inspection = LedgerInspection.of(made.path(), List.of());
    String thumbprint = inspection.organizer().orElseThrow();
    Terminal terminal = workplace.terminal();
    if (json) {
      Map<String, Object> members = new LinkedHashMap<>();
      members.put("folder", made.path().toString());
      members.put("organizer", thumbprint);
      members.put("head", inspection.head().orElseThrow());
      terminal.result(JsonLine.of(members));
      return;
    }
    terminal.result(Notice.of("folder", made.path().toString()).line());
    terminal.result(Notice.of("organizer", thumbprint).line());
    terminal.say(
        "Write the organizer's thumbprint down and publish it: whoever verifies the ledger later"
            + " compares it.");
    terminal.say("Keep keys/organizer.key somewhere else: the station does not need it.");
  }
}
