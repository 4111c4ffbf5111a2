package lanewarden.audit;

import java.io.IOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import lanewarden.audit.findings.Evidence;
import lanewarden.audit.findings.Finding;
import lanewarden.audit.press.Enclosure;
import lanewarden.audit.press.Ink;
import lanewarden.audit.press.Typeface;
import lanewarden.audit.wording.CheckRow;
import lanewarden.audit.wording.OutcomeMark;
import lanewarden.audit.wording.ProtestSheet;
import lanewarden.audit.wording.Wording;
import lanewarden.journal.Check;
import lanewarden.journal.Fact;
import lanewarden.journal.Outcome;
import lanewarden.journal.Standing;
import lanewarden.ledger.Enrolled;
import lanewarden.ledger.Head;
import lanewarden.ledger.Verification;
import lanewarden.quantity.Sentence;
import lanewarden.rules.Division;
import lanewarden.rules.RuleBook;
import lanewarden.rules.Screening;

/** Words the evidence, page by page. */
final class PageWriter {
  private static final String NONE = "none";

  private final Evidence evidence;
  private final AuditSummary summary;
  private final Instant made;
  private final SealWords seal;
  private final List<Enclosure> enclosures;
  private final Typeface face;
  private final Ink ink;
  private final Verification verification;
  private final List<RuleBook> books;
  private final List<RuleRun> runs;
  private final List<Check> checks;
  private final Map<String, String> names;

  /**
   * @param seal what the report says of its own seal
   * @param enclosures the files that will travel inside
   */
  PageWriter(
      Evidence evidence,
      AuditSummary summary,
      Instant made,
      SealWords seal,
      List<Enclosure> enclosures,
      Typeface face,
      Ink ink) {
    this.seal = seal;
    this.enclosures = enclosures;
    this.evidence = evidence;
    this.summary = summary;
    this.made = made;
    this.face = face;
    this.ink = ink;
    this.verification = evidence.verification();
    this.books = evidence.standing().ruleBooks();
    this.runs = RuleRun.of(books);
    this.checks = evidence.standing().checks();
    this.names = evidence.names();
  }

  ReportPage page() throws IOException {
    return new ReportPage(
        books.isEmpty() ? "Event without a rule book" : books.get(books.size() - 1).event(),
        books.isEmpty() ? NONE : books.get(books.size() - 1).edition(),
        verification.station().orElse("not known: the ledger does not say"),
        period(),
        Wording.time(made),
        verification.head().map(Head::shortForm).orElse(NONE),
        verification.head().map(h -> h.hash().hex()).orElse(NONE),
        verification.organizer().orElse("not known: the ledger's first entry is faulty"),
        Wording.number(summary.entries()),
        summary.sound(),
        true,
        seal,
        enclosures.stream().map(e -> new ReportPage.Enclosed(e.name(), e.description())).toList(),
        verdictOnTheLedger(),
        faults(),
        figures(),
        findings(Finding.Kind::isContradiction),
        findings(k -> !k.isContradiction()),
        Screening.EVERYWHERE,
        bookPages(),
        evidence.standing().draws().stream().map(PageWriter::draw).toList(),
        officials(),
        evidence.openings().pages(),
        evidence.openings().papers(),
        VerificationSheet.of(evidence.standing(), names),
        ControlSheet.of(evidence.standing(), face, ink).stream().toList(),
        evidence.clock(),
        divisions(),
        FailLine.of(evidence.standing()),
        ProtestSheet.of(evidence.standing(), names),
        evidence.practices().pages(names),
        checks.stream().map(evidence::row).toList(),
        checks.stream().map(this::result).toList());
  }

  private String period() {
    if (evidence.first().isEmpty() || evidence.last().isEmpty()) {
      return "not known: no entry could be read";
    }
    return Wording.time(evidence.first().get()) + " to " + Wording.time(evidence.last().get());
  }

  private String verdictOnTheLedger() {
    return summary.sound()
        ? "Every signature fits, every signer was enrolled, and no entry up to the head is missing,"
            + " changed or out of place."
        : Wording.count(summary.faults().size(), "fault was", "faults were")
            + " found. What follows is what can be read; it is not proved.";
  }

  private List<ReportPage.Fault> faults() {
    return summary.faults().stream()
        .map(f -> new ReportPage.Fault(f.sequence() == 0 ? "file" : "" + f.sequence(), f.words()))
        .toList();
  }

  private List<ReportPage.Figure> figures() {
    List<ReportPage.Figure> figures = new ArrayList<>();
    figures.add(figure("Competitors checked", summary.competitors()));
    figures.add(figure("Checks", summary.checks()));
    for (Outcome outcome : Outcome.values()) {
      OutcomeMark mark = OutcomeMark.of(outcome);
      int count = summary.outcomes().getOrDefault(outcome, 0);
      figures.add(figure("Checks " + mark.shape() + " " + mark.word(), count));
    }
    figures.add(figure("– without a verdict", summary.withoutVerdict()));
    figures.add(figure("○ in question, counting for nothing", summary.inQuestion()));
    for (Outcome outcome : Outcome.values()) {
      OutcomeMark mark = OutcomeMark.of(outcome);
      figures.add(
          figure(
              "Competitors ended " + mark.shape() + " " + mark.word(),
              evidence.standing().competitorsWith(outcome)));
    }
    figures.add(figure("Contradictions found", summary.contradictions().size()));
    figures.add(figure("To look at", summary.findings().size() - summary.contradictions().size()));
    return figures;
  }

  private static ReportPage.Figure figure(String name, int value) {
    return new ReportPage.Figure(name, Wording.number(value));
  }

  private List<ReportPage.Findings> findings(Predicate<Finding.Kind> wanted) {
    Map<Finding.Kind, List<Finding>> byKind = new LinkedHashMap<>();
    for (Finding finding : summary.findings()) {
      if (wanted.test(finding.kind())) {
        byKind.computeIfAbsent(finding.kind(), k -> new ArrayList<>()).add(finding);
      }
    }
    return byKind.entrySet().stream().map(e -> findings(e.getKey(), e.getValue())).toList();
  }

  private static ReportPage.Findings findings(Finding.Kind kind, List<Finding> found) {
    long times = found.stream().mapToLong(Finding::times).sum();
    return new ReportPage.Findings(
        kind.heading(),
        times == found.size()
            ? Wording.number(times)
            : Wording.number(times) + " in " + Wording.count(found.size(), "entry", "entries"),
        found.stream()
            .map(f -> new ReportPage.Findings.Line(Wording.numbers(f.entries()), f.words()))
            .toList());
  }

  private List<ReportPage.Book> bookPages() {
    List<ReportPage.Book> pages = new ArrayList<>();
    for (RuleBook book : books) {
      pages.add(
          new ReportPage.Book(
              book.event(),
              book.edition(),
              book.sha256(),
              runs.stream().filter(run -> run.first().equals(book)).map(PageWriter::rule).toList(),
              unchanged(book),
              book.text(),
              "rule-book-" + (pages.size() + 1)));
    }
    return pages;
  }

  private static ReportPage.Book.Rule rule(RuleRun run) {
    Division division = run.division();
    return new ReportPage.Book.Rule(
        division.code(),
        division.name(),
        division.told().stream().map(Sentence::toString).toList(),
        division.workedCases().stream().map(one -> one.inWords().toString()).toList());
  }

  /** A sentence for each earlier rule book in which divisions of this one stand as they are. */
  private List<String> unchanged(RuleBook book) {
    Map<RuleBook, List<String>> since = new LinkedHashMap<>();
    runs.stream()
        .filter(run -> run.goesOnIn(book))
        .forEach(
            run ->
                since
                    .computeIfAbsent(run.first(), first -> new ArrayList<>())
                    .add(run.division().code()));
    return since.entrySet().stream()
        .map(
            e ->
                "Unchanged since rule book "
                    + Wording.shortHash(e.getKey().sha256())
                    + ": "
                    + String.join(", ", e.getValue())
                    + ".")
        .toList();
  }

  private static ReportPage.Draw draw(Standing.Draw draw) {
    Fact.DrawMade fact = draw.fact();
    return new ReportPage.Draw(
        String.valueOf(draw.sequence()),
        fact.division(),
        fact.share(),
        Wording.number(fact.pool().size()),
        fact.seed(),
        String.join(", ", fact.drawn()));
  }

  private List<ReportPage.Official> officials() {
    return verification.officials().stream().map(this::official).toList();
  }

  private ReportPage.Official official(Enrolled official) {
    return new ReportPage.Official(
        official.name(),
        official.thumbprint(),
        String.valueOf(official.sequence()),
        Wording.number(evidence.signed().getOrDefault(official.thumbprint(), 0)));
  }

  private List<DivisionSheet> divisions() throws IOException {
    List<DivisionSheet> sheets = new ArrayList<>();
    for (RuleRun run : runs) {
      String which = books.size() > 1 ? run.inWords() : "";
      sheets.add(DivisionSheet.of(run.division(), which, run.governed(checks), face, ink));
    }
    return sheets;
  }

  private ReportPage.Result result(Check check) {
    return new ReportPage.Result(
        String.valueOf(check.number()),
        check.opened().bib(),
        check.opened().division(),
        String.valueOf(check.opened().attempt()),
        OutcomeMark.of(check),
        CheckRow.follows(check),
        ProtestSheet.disputes(evidence.standing(), check));
  }
}
