package lanewarden.audit;

import java.util.List;
import java.util.stream.Collectors;
import lanewarden.audit.wording.Openings;
import lanewarden.audit.wording.ProtestSheet;

/**
 * What of a report may be shown to everybody: bibs and outcomes, without a name, without a word
 * that somebody typed, and without single readings.
 */
final class PublicPage {
  private static final String LEFT_OUT = "left out in this edition";

  private PublicPage() {}

  /** The page without what is personal. */
  static ReportPage of(ReportPage page) {
    return new ReportPage(
        page.event(),
        page.edition(),
        page.station(),
        page.period(),
        page.made(),
        page.head(),
        page.headHash(),
        page.organizer(),
        page.entries(),
        page.sound(),
        false,
        page.seal(),
        page.enclosures(),
        page.verification(),
        page.faults().stream().map(f -> new ReportPage.Fault(f.entry(), LEFT_OUT)).toList(),
        page.figures(),
        page.contradictions().stream().map(PublicPage::contradictions).toList(),
        page.lookAt().stream().map(PublicPage::findings).toList(),
        page.everywhere(),
        page.books(),
        page.draws().stream().map(PublicPage::draw).toList(),
        page.officials().stream().map(PublicPage::official).toList(),
        page.instruments().stream().map(PublicPage::instrument).toList(),
        page.papers().stream().map(PublicPage::paper).toList(),
        new VerificationSheet(false, List.of(), List.of()),
        page.control(),
        page.clock(),
        page.divisions().stream().map(DivisionSheet::published).toList(),
        List.of(),
        new ProtestSheet(false, List.of(), List.of()),
        List.of(),
        List.of(),
        page.results());
  }

  /** That the ledger contradicts itself, how often and in what, nobody is spared. */
  private static ReportPage.Findings contradictions(ReportPage.Findings findings) {
    return findings(
        findings,
        "The ledger contradicts itself here: "
            + findings.count()
            + " of this kind. Whom it touches is "
            + LEFT_OUT
            + ".");
  }

  private static ReportPage.Findings findings(ReportPage.Findings findings) {
    return findings(findings, LEFT_OUT);
  }

  /** A finding's words name competitors and quote officials; its kind and its entries do not. */
  private static ReportPage.Findings findings(ReportPage.Findings findings, String words) {
    String entries =
        findings.lines().stream()
            .map(ReportPage.Findings.Line::entries)
            .collect(Collectors.joining("; "));
    return new ReportPage.Findings(
        findings.heading(),
        findings.count(),
        List.of(new ReportPage.Findings.Line(entries, words)));
  }

  /** The digits are needed to draw again; what was typed around them is not. */
  private static ReportPage.Draw draw(ReportPage.Draw draw) {
    return new ReportPage.Draw(
        draw.entry(),
        draw.division(),
        draw.share(),
        draw.pool(),
        draw.seed().replaceAll("[^0-9 ]", ""),
        draw.drawn());
  }

  /** That something changed is for everybody; the words of the settings are not. */
  private static Openings.Instrument instrument(Openings.Instrument shown) {
    return new Openings.Instrument(
        shown.entries(),
        shown.name(),
        shown.program(),
        shown.budget(),
        shown.place(),
        shown.papers(),
        shown.changed().isEmpty()
            ? List.of()
            : List.of("other papers than the row before; what changed is " + LEFT_OUT));
  }

  private static Openings.Shown paper(Openings.Shown shown) {
    return new Openings.Shown("", shown.name(), shown.sha256(), shown.entries(), "");
  }

  private static ReportPage.Official official(ReportPage.Official official) {
    return new ReportPage.Official(
        LEFT_OUT, official.thumbprint(), official.enrolled(), official.signed());
  }
}
