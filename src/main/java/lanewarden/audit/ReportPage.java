package lanewarden.audit;

import java.util.List;
import lanewarden.audit.findings.ClockSheet;
import lanewarden.audit.findings.Practices;
import lanewarden.audit.wording.CheckRow;
import lanewarden.audit.wording.Openings;
import lanewarden.audit.wording.OutcomeMark;
import lanewarden.audit.wording.ProtestSheet;

/**
 * Everything the template shows, in the order of the pages; texts are not escaped yet.
 *
 * @param head the ledger's head in its short form
 * @param sound whether verification found no fault
 * @param named whether names, typed words and single readings stand in it
 * @param seal what the report says of its own seal
 * @param enclosures the files that travel inside it
 * @param papers by which the line was opened, with their texts
 * @param control the instrument's control charts; none where there are too few shots
 * @param results every check by bib and outcome alone
 */
record ReportPage(
    String event,
    String edition,
    String station,
    String period,
    String made,
    String head,
    String headHash,
    String organizer,
    String entries,
    boolean sound,
    boolean named,
    SealWords seal,
    List<Enclosed> enclosures,
    String verification,
    List<Fault> faults,
    List<Figure> figures,
    List<Findings> contradictions,
    List<Findings> lookAt,
    String everywhere,
    List<Book> books,
    List<Draw> draws,
    List<Official> officials,
    List<Openings.Instrument> instruments,
    List<Openings.Shown> papers,
    VerificationSheet verifications,
    List<ControlSheet> control,
    ClockSheet clock,
    List<DivisionSheet> divisions,
    List<FailLine> fails,
    ProtestSheet protests,
    List<Practices.Day> practices,
    List<CheckRow> checks,
    List<Result> results) {

  /** A file that travels inside. */
  record Enclosed(String name, String description) {}

  /** A check by bib and outcome alone. */
  record Result(
      String entry,
      String bib,
      String division,
      String attempt,
      OutcomeMark outcome,
      String follows,
      List<String> disputes) {}

  /** A fault of the ledger. */
  record Fault(String entry, String words) {}

  /** A figure of the first page. */
  record Figure(String name, String value) {}

  /** Findings of one sort. */
  record Findings(String heading, String count, List<Line> lines) {
    /** One finding. */
    record Line(String entries, String words) {}
  }

  /**
   * A rule book.
   *
   * @param rules its divisions that the rule book before does not have so
   * @param unchanged a sentence for each earlier rule book of which it keeps divisions
   */
  record Book(
      String event,
      String edition,
      String sha256,
      List<Rule> rules,
      List<String> unchanged,
      String text,
      String anchor) {
    /** What a division demands and what there is to know of it, a sentence each. */
    record Rule(String code, String name, List<String> sentences, List<String> cases) {}
  }

  /** A draw of those who are to be checked. */
  record Draw(
      String entry, String division, String share, String pool, String seed, String drawn) {}

  /** An official's key. */
  record Official(String name, String thumbprint, String enrolled, String signed) {}
}
