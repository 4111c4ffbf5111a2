package lanewarden.audit;

import java.io.IOException;
import java.time.Instant;
import java.util.List;
import lanewarden.audit.findings.Evidence;
import lanewarden.audit.press.Cut;
import lanewarden.audit.press.Enclosure;
import lanewarden.audit.press.Ink;
import lanewarden.audit.press.Template;
import lanewarden.audit.press.Typefaces;

/** Puts the evidence into the template: the report as one page of HTML. */
final class Composition {
  private static final String TEMPLATE = "report";

  private final Evidence evidence;
  private final AuditSummary summary;
  private final Instant made;
  private final boolean named;

  /**
   * @param named whether names and typed words stand in it
   */
  Composition(Evidence evidence, AuditSummary summary, Instant made, boolean named) {
    this.named = named;
    this.evidence = evidence;
    this.summary = summary;
    this.made = made;
  }

  /**
   * The page; every text in it is escaped.
   *
   * @param faces it will be set in
   * @param seal what it says of the report's seal
   * @param enclosures the files that will travel inside
   */
  String html(Typefaces faces, SealWords seal, List<Enclosure> enclosures) throws IOException {
    Ink ink = faces.ink();
    ReportPage page =
        new PageWriter(evidence, summary, made, seal, enclosures, faces.of(Cut.TEXT), ink).page();
    return new Template(Composition.class, TEMPLATE, ink).fill(named ? page : PublicPage.of(page));
  }
}
