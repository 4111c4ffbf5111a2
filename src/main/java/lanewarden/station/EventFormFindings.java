package lanewarden.station;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lanewarden.chronograph.SentenceProfile;
import lanewarden.quantity.Sentence;
import lanewarden.roster.RosterSheet;
import lanewarden.rules.Division;
import lanewarden.rules.RuleBook;
import lanewarden.written.WrittenFault;
import lanewarden.written.WrittenRefused;

/**
 * What is right and wrong in the form of an event to be made.
 *
 * @param faults by the fields as {@link EventForm} names them
 * @param divisions the codes that the rule book has; none if it is faulty
 * @param sheet the list of competitors, if it is a table
 * @param columns which of its columns are taken: as chosen, or as guessed
 * @param mapped the roster that comes of it, if every column is found that it must have
 */
public record EventFormFindings(
    Map<String, List<Fault>> faults,
    List<String> divisions,
    Optional<RosterSheet> sheet,
    Map<String, Integer> columns,
    Optional<RosterSheet.Mapped> mapped) {
  private static final int TOLD = 4;

  /** Of what is wrong within a file, which is told without one. */
  private static final String OF_A_FILE = "";

  /**
   * Something wrong with a field.
   *
   * @param code the same for every occurrence of its cause; blank for a fault within a file
   * @param words all of it; only English where there is a code
   */
  public record Fault(String code, Sentence words) {}

  /** Something that is examined. */
  @FunctionalInterface
  private interface Examination<T> {
    T result() throws StationException, WrittenRefused, IOException;
  }

  /** Notes what goes wrong, field by field. */
  private static final class Notes {
    private final Map<String, List<Fault>> faults = new LinkedHashMap<>();

    <T> Optional<T> examine(String field, Examination<T> examination) {
      try {
        return Optional.of(examination.result());
      } catch (WrittenRefused e) {
        inWords(e.faults()).forEach(words -> note(field, new Fault(OF_A_FILE, words)));
      } catch (StationException e) {
        Trouble trouble = e.trouble();
        note(field, trouble.code(), trouble.why() + " " + trouble.remedy());
      } catch (IOException e) {
        Trouble trouble = Trouble.of(e);
        note(field, trouble.code(), trouble.what() + " " + trouble.why() + " " + trouble.remedy());
      }
      return Optional.empty();
    }

    void note(String field, String code, String words) {
      note(field, new Fault(code, Sentence.verbatim(words)));
    }

    private void note(String field, Fault fault) {
      faults.computeIfAbsent(field, f -> new ArrayList<>()).add(fault);
    }
  }

  static EventFormFindings of(EventForm form) {
    Notes notes = new Notes();
    notes.examine(EventForm.FOLDER, () -> place(form.folder()));
    notes.examine(EventForm.STATION, () -> name(form.station(), "station", "STATION-NAME"));
    List<String> divisions =
        notes.examine(EventForm.RULE_BOOK, () -> codes(form.ruleBookSource())).orElse(List.of());
    EventFormFindings found = ofList(form.roster(), form.columns(), divisions, notes);
    notes.examine(EventForm.PROFILE, () -> profile(form.profileSource()));
    if (form.kind() == StationSettings.Kind.SERIAL) {
      notes.examine(EventForm.PORT, () -> port(form.port()));
    }
    examinePeople(form.people(), notes);
    return found;
  }

  static EventFormFindings of(ListForm form) {
    Notes notes = new Notes();
    List<String> divisions =
        form.ruleBook().isBlank()
            ? List.of()
            : notes
                .examine(EventForm.RULE_BOOK, () -> codes(form.ruleBookSource()))
                .orElse(List.of());
    return ofList(form.roster(), form.columns(), divisions, notes);
  }

  /** Whatever is noted later stands in it too. */
  private static EventFormFindings ofList(
      String roster, Map<String, Integer> chosen, List<String> divisions, Notes notes) {
    Optional<RosterSheet> sheet = notes.examine(EventForm.ROSTER, () -> sheet(roster));
    Map<String, Integer> columns =
        chosen.isEmpty() ? sheet.map(RosterSheet::guess).orElse(Map.of()) : chosen;
    Optional<RosterSheet.Mapped> mapped =
        sheet.flatMap(list -> mapped(list, columns, divisions, notes));
    return new EventFormFindings(notes.faults, divisions, sheet, columns, mapped);
  }

  private static Path place(String folder) throws StationException, IOException {
    Path target = EventForm.path(folder).normalize();
    NewEvent.requireFree(target);
    Path there = target;
    while (!Files.exists(there) && there.getParent() != null) {
      there = there.getParent();
    }
    if (!Files.isDirectory(there)) {
      throw new NotDirectoryException(there.toString());
    }
    if (!Files.isWritable(there)) {
      throw new AccessDeniedException(there.toString());
    }
    return target;
  }

  private static String name(String name, String what, String code) throws StationException {
    NewEvent.requireName(name.strip(), what, code);
    return name;
  }

  private static String port(String port) throws StationException {
    if (port.isBlank()) {
      throw StationException.misstep(
          "PORT-NEEDED",
          NewEvent.NOTHING_MADE,
          "It is not said where the instrument is.",
          "Pick its port or type it, or have the readings typed in.");
    }
    return name(port, "port", "PORT-NAME");
  }

  private static List<String> codes(NewEvent.Source source) throws WrittenRefused {
    return RuleBook.read(source.name(), source.bytes()).divisions().stream()
        .map(Division::code)
        .toList();
  }

  private static RosterSheet sheet(String roster) throws StationException, WrittenRefused {
    NewEvent.Source source = EventForm.source(roster);
    return RosterSheet.read(source.name(), source.bytes());
  }

  private static SentenceProfile profile(NewEvent.Source source) throws WrittenRefused {
    return SentenceProfile.read(source.name(), source.bytes());
  }

  private static Optional<RosterSheet.Mapped> mapped(
      RosterSheet sheet, Map<String, Integer> columns, List<String> divisions, Notes notes) {
    for (String title : RosterSheet.missing(columns)) {
      notes.note(
          EventForm.COLUMN + title,
          "COLUMN-NEEDED",
          "Every competitor needs this. Choose the column that holds it.");
    }
    Optional<RosterSheet.Mapped> mapped =
        CompetitorList.of(EventFolder.ROSTER, sheet, columns, new LinkedHashSet<>(divisions))
            .mapped();
    int faults = mapped.map(roster -> roster.faults().size()).orElse(0);
    if (faults > 0) {
      notes.note(
          EventForm.ROSTER,
          "LIST-FAULTY",
          faults
              + (faults == 1 ? " line is" : " places are")
              + " wrong in the list, each told below. Choose another column, or mend the"
              + " file and have it read again.");
    }
    return mapped;
  }

  private static void examinePeople(List<EventForm.Person> people, Notes notes) {
    Set<String> files = new HashSet<>(Set.of(KeyCabinet.ORGANIZER_KEY));
    boolean someone = false;
    for (int i = 0; i < people.size(); i++) {
      EventForm.Person person = people.get(i);
      boolean organizer = i == 0;
      if (!organizer && person.isNobody()) {
        continue;
      }
      someone |= !organizer;
      boolean taken = !organizer && !files.add(KeyCabinet.nameOf(person.name()));
      examine(person, i, taken, notes);
    }
    if (!someone) {
      notes.note(
          EventForm.nameField(1),
          "NO-OFFICIAL",
          "Without an official nobody could sign. Name at least one.");
    }
  }

  private static void examine(EventForm.Person person, int i, boolean taken, Notes notes) {
    notes.examine(
        EventForm.nameField(i),
        () -> {
          KeyCabinet.requireName(person.name(), taken, NewEvent.NOTHING_MADE);
          return person;
        });
    notes.examine(
        EventForm.passphraseField(i),
        () -> {
          KeyCabinet.requireLong(
              person.name().isBlank() ? "this person" : person.name().strip(),
              person.passphrase().toCharArray(),
              NewEvent.NOTHING_MADE);
          return person;
        });
    if (!person.passphrase().equals(person.again())) {
      notes.note(
          EventForm.againField(i),
          "NOT-SAME-TWICE",
          "It was not typed the same twice. Type both passphrases again.");
    }
  }

  /** The first of them; a field has no room for hundreds. */
  private static List<Sentence> inWords(List<WrittenFault> faults) {
    List<Sentence> told =
        new ArrayList<>(faults.stream().limit(TOLD).map(WrittenFault::withinFile).toList());
    if (faults.size() > TOLD) {
      told.add(Sentence.of(FormTold.MORE, faults.size() - TOLD));
    }
    return told;
  }

  /** Every fault of the list of competitors, in words. */
  public List<Sentence> rosterFaults() {
    return mapped.map(RosterSheet.Mapped::faults).orElse(List.of()).stream()
        .map(WrittenFault::withinFile)
        .toList();
  }

  /** The list's columns of which nothing is taken. */
  public List<CompetitorList.Column> leftOut() {
    return sheet
        .map(list -> new CompetitorList(EventFolder.ROSTER, list, columns, mapped).leftOut())
        .orElse(List.of());
  }

  /** The faults of fields whose names begin so. */
  public Map<String, List<Fault>> faultsOf(Set<String> beginnings) {
    return faults.entrySet().stream()
        .filter(f -> beginnings.stream().anyMatch(f.getKey()::startsWith))
        .collect(
            Collectors.toMap(
                Map.Entry::getKey, Map.Entry::getValue, (a, b) -> a, LinkedHashMap::new));
  }
}
