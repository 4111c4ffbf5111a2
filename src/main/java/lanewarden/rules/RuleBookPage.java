package lanewarden.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import lanewarden.written.Section;
import lanewarden.written.TomlPage;
import lanewarden.written.WrittenFault;
import lanewarden.written.WrittenRefused;
import lanewarden.written.WrittenText;

/** A rule book file being read; for one thread. */
final class RuleBookPage {

  /** The only format there is so far. */
  private static final String FORMAT = "1";

  /** More than any event has: a longer file is no rule book, and its faults would be no help. */
  private static final int MOST_DIVISIONS = 500;

  private final Set<String> codes = new TreeSet<>();
  private final List<Optional<Division>> divisions = new ArrayList<>();
  private Optional<String> name = Optional.empty();
  private Optional<String> edition = Optional.empty();

  private RuleBookPage() {}

  /**
   * @throws WrittenRefused with every fault
   */
  static RuleBook read(String file, byte[] utf8) throws WrittenRefused {
    TomlPage page = TomlPage.read(file, utf8);
    RuleBookPage book = new RuleBookPage();
    book.read(page);
    page.refuseIfFaulty();
    List<Division> divisions = book.divisions.stream().flatMap(Optional::stream).toList();
    return new RuleBook(book.name.orElseThrow(), book.edition.orElseThrow(), divisions, utf8);
  }

  /**
   * @throws WrittenRefused if it is not TOML, or of another format
   */
  static DraftRules draft(String file, byte[] utf8) throws WrittenRefused {
    TomlPage page = TomlPage.read(file, utf8);
    RuleBookPage book = new RuleBookPage();
    book.read(page);
    List<WrittenFault> faults = page.faults();
    List<Optional<Division>> right = new ArrayList<>();
    for (Optional<Division> division : book.divisions) {
      right.add(division.filter(d -> !DraftRules.isFaulty(faults, right.size() + 1)));
    }
    return new DraftRules(right, faults);
  }

  private void read(TomlPage page) throws WrittenRefused {
    Section root = page.root();
    List<Section> sections = root.sections(DraftRules.DIVISION);
    boolean noDivision = sections.isEmpty() && !page.faulty();
    requireFormat(page);
    if (sections.size() > MOST_DIVISIONS) {
      root.fault(
          "division",
          "at most " + MOST_DIVISIONS + " [[division]] tables",
          String.valueOf(sections.size()),
          "check that this is the right file, and cut it down");
      page.refuseIfFaulty();
    }
    if (noDivision) {
      root.fault(
          DraftRules.DIVISION,
          "at least one [[division]] table",
          "none",
          "add a [[division]] section");
    }
    Optional<Section> event = root.section("event");
    name = event.flatMap(RuleBookPage::name);
    edition = event.flatMap(section -> line(section, "edition"));
    event.ifPresent(Section::closed);
    for (Section section : sections) {
      divisions.add(division(section));
    }
    root.closed();
  }

  /** Another format may mean other things by the same keys: nothing else is judged then. */
  private static void requireFormat(TomlPage page) throws WrittenRefused {
    Section root = page.root();
    if (!root.has("format")) {
      root.fault("format", FORMAT, "nothing", "write format = " + FORMAT + " on the first line");
      return;
    }
    OptionalInt format = root.whole("format", 1, 999);
    if (format.isPresent() && format.getAsInt() != Integer.parseInt(FORMAT)) {
      root.fault(
          "format",
          FORMAT,
          String.valueOf(format.getAsInt()),
          "write the rule book in format 1, or take the Lanewarden version it was made for");
      page.refuseIfFaulty();
    }
  }

  private Optional<Division> division(Section section) {
    Optional<String> code = section.value("code", CODE, RuleBookPage::code);
    code.ifPresent(written -> requireNew(section, written));
    Optional<String> name = name(section);
    DivisionSection demands = new DivisionSection(section);
    Optional<Coverage> coverage = demands.coverage();
    Optional<Rule> rule = demands.rule();
    Origin origin = demands.origin();
    section.closed();
    return code.isEmpty() || name.isEmpty() || rule.isEmpty() || coverage.isEmpty()
        ? Optional.empty()
        : Optional.of(new Division(code.get(), name.get(), rule.get(), coverage.get(), origin));
  }

  private void requireNew(Section section, String code) {
    if (!codes.add(code.toUpperCase(Locale.ROOT))) {
      section.fault(
          "code",
          "a code that no other division has, in small or capital letters",
          "\"" + code + "\" a second time",
          "give each division its own code");
    }
  }

  private static final String CODE = "1 to 12 letters, digits or hyphens";

  private static String code(String written) {
    if (!written.matches("[A-Za-z0-9][A-Za-z0-9-]{0,11}")) {
      throw new IllegalArgumentException("write a short code such as \"OC\"");
    }
    return written;
  }

  private static final int LONGEST_NAME = 80;
  private static final String NAME =
      "a text of one line and at most " + LONGEST_NAME + " characters";

  /** What an event or a division is called. */
  private static Optional<String> name(Section section) {
    return section.value("name", NAME, RuleBookPage::name);
  }

  private static String name(String written) {
    String name = oneLine(written);
    if (name.length() > LONGEST_NAME) {
      throw new IllegalArgumentException("say it in fewer words");
    }
    return name;
  }

  private static Optional<String> line(Section section, String key) {
    return section.value(key, ONE_LINE, RuleBookPage::oneLine);
  }

  /** A text of one line that may be missing. */
  static Optional<String> optionalLine(Section section, String key) {
    return section.optionalValue(key, ONE_LINE, RuleBookPage::oneLine);
  }

  private static final String ONE_LINE = "a text of one line";

  private static String oneLine(String written) {
    if (written.isBlank() || !WrittenText.isPlain(written)) {
      throw new IllegalArgumentException("write some words on one line");
    }
    return written.strip();
  }
}
