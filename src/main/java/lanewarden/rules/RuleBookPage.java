package lanewarden.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import lanewarden.quantity.Sentence;
import lanewarden.written.FileTold;
import lanewarden.written.Section;
import lanewarden.written.TomlPage;
import lanewarden.written.ValueRefused;
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
          Sentence.of(BookTold.DIVISIONS_AT_MOST, MOST_DIVISIONS),
          Sentence.verbatim(String.valueOf(sections.size())),
          Sentence.of(FileTold.CUT_DOWN));
      page.refuseIfFaulty();
    }
    if (noDivision) {
      root.fault(
          DraftRules.DIVISION,
          Sentence.of(BookTold.ONE_DIVISION),
          Sentence.of(BookTold.NONE),
          Sentence.of(BookTold.ADD_DIVISION));
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
      root.fault(
          "format",
          Sentence.verbatim(FORMAT),
          Sentence.of(FileTold.NOTHING),
          Sentence.of(BookTold.WRITE_FORMAT, FORMAT));
      return;
    }
    OptionalInt format = root.whole("format", 1, 999);
    if (format.isPresent() && format.getAsInt() != Integer.parseInt(FORMAT)) {
      root.fault(
          "format",
          Sentence.verbatim(FORMAT),
          Sentence.verbatim(String.valueOf(format.getAsInt())),
          Sentence.of(BookTold.OTHER_FORMAT));
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
          Sentence.of(BookTold.OWN_CODE),
          Sentence.of(BookTold.SECOND_TIME, code),
          Sentence.of(BookTold.GIVE_OWN_CODE));
    }
  }

  private static final Sentence CODE = Sentence.of(BookTold.CODE);

  private static String code(String written) {
    if (!written.matches("[A-Za-z0-9][A-Za-z0-9-]{0,11}")) {
      throw new ValueRefused(Sentence.of(BookTold.SHORT_CODE));
    }
    return written;
  }

  private static final int LONGEST_NAME = 80;
  private static final Sentence NAME = Sentence.of(BookTold.NAME, LONGEST_NAME);

  /** What an event or a division is called. */
  private static Optional<String> name(Section section) {
    return section.value("name", NAME, RuleBookPage::name);
  }

  private static String name(String written) {
    String name = oneLine(written);
    if (name.length() > LONGEST_NAME) {
      throw new ValueRefused(Sentence.of(BookTold.FEWER_WORDS));
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

  private static final Sentence ONE_LINE = Sentence.of(BookTold.ONE_LINE);

  private static String oneLine(String written) {
    if (written.isBlank() || !WrittenText.isPlain(written)) {
      throw new ValueRefused(Sentence.of(BookTold.SOME_WORDS));
    }
    return written.strip();
  }
}
