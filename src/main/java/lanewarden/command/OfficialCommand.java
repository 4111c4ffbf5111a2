package lanewarden.command;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import lanewarden.station.EventFolder;
import lanewarden.station.KeyOffice;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Enrols, suspends and replaces officials of an event that was made. */
@Command(
    description = {
      "List the officials of an event, or enrol, suspend, replace or readmit one; the organizer"
          + " signs it.",
      "A suspended official signs nothing more from then on; what was signed before stands. To"
          + " replace is to suspend a lost key and to enrol another for the same official.",
      "To list them only reads, also beside a station that is running. For the rest no station may"
          + " have the event open: at an open line type enrol, suspend, replace or readmit."
    })
final class OfficialCommand implements Callable<Integer> {
  private final Workplace workplace;

  @Parameters(paramLabel = "FOLDER", description = "The event's folder.")
  private Path folder = Path.of("");

  @ArgGroup(exclusive = true, multiplicity = "0..1")
  private Act act = new Act();

  /** What is done, to whom. */
  static final class Act {
    @Option(names = "--enrol", paramLabel = "NAME", description = "Enrol a new official.")
    private Optional<String> enrol = Optional.empty();

    @Option(
        names = "--suspend",
        paramLabel = "NAME",
        description = "From now on nothing may be signed with this official's key.")
    private Optional<String> suspend = Optional.empty();

    @Option(
        names = "--replace",
        paramLabel = "NAME",
        description = "Suspend this official's key and make a new one, as after a loss.")
    private Optional<String> replace = Optional.empty();

    @Option(
        names = "--readmit",
        paramLabel = "NAME",
        description = "Let a suspended official sign again, with the same key.")
    private Optional<String> readmit = Optional.empty();
  }

  @Option(names = "--judge", description = "With --enrol: who may rule on protests.")
  private boolean judge;

  @Option(
      names = "--reason",
      paramLabel = "TEXT",
      description = "Why, for --suspend and --replace; it is signed.")
  private String reason = "";

  @Mixin private OrganizerOptions organizer = new OrganizerOptions();

  @Option(
      names = "--new-passphrase-file",
      paramLabel = "FILE",
      description =
          "Read the passphrase of the official's new key from a file with a line \"NAME:"
              + " PASSPHRASE\".")
  private Optional<Path> newPassphraseFile = Optional.empty();

  @Option(names = "--json", description = "Answer with one JSON object an official.")
  private boolean json;

  OfficialCommand(Workplace workplace) {
    this.workplace = workplace;
  }

  @Override
  public Integer call() throws Exception {
    requireUse();
    KeyOffice office = new KeyOffice(new EventFolder(folder), workplace.here());
    if (act.enrol.isPresent()) {
      enrol(office, act.enrol.get());
    } else if (act.replace.isPresent()) {
      office.replace(organizer(office), act.replace.get(), fresh(act.replace.get()), reason);
    } else if (act.suspend.isPresent()) {
      office.suspend(organizer(office), act.suspend.get(), reason);
    } else if (act.readmit.isPresent()) {
      office.readmit(organizer(office), act.readmit.get());
    }
    office.officials().forEach(this::tell);
    return ExitCode.FINE;
  }

  /** What would be passed over is refused before anything is signed: nobody would miss it. */
  private void requireUse() throws CommandRefused {
    if (judge && act.enrol.isEmpty()) {
      throw unused("--judge", "--enrol: an official is enrolled as a judge, or not");
    }
    if (!reason.isBlank() && act.suspend.isEmpty() && act.replace.isEmpty()) {
      throw unused("--reason", "--suspend and --replace: nothing else is signed with one");
    }
  }

  private static CommandRefused unused(String option, String belongsTo) {
    return CommandRefused.misstep(
        "COMMAND-LINE",
        "The command was not understood.",
        option + " goes with " + belongsTo + ".",
        "Leave " + option + " out, or type the act that it belongs to.");
  }

  private void enrol(KeyOffice office, String name) throws Exception {
    if (judge) {
      office.enrolJudge(organizer(office), name, fresh(name));
    } else {
      office.enrol(organizer(office), name, fresh(name));
    }
  }

  private KeyOffice.Organizer organizer(KeyOffice office) throws Exception {
    return office.organizer(
        organizer.key(), organizer.passphrase(new EventFolder(folder), workplace.terminal()));
  }

  private char[] fresh(String name) throws Exception {
    return new Passphrases(workplace.terminal()).fresh(name, newPassphraseFile);
  }

  private void tell(KeyOffice.Official official) {
    Notice told = OfficialNotice.of(official);
    workplace.terminal().result(json ? JsonLine.of(told.members()) : told.line());
  }
}
