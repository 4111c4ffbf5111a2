package lanewarden.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import lanewarden.audit.findings.Evidence;
import lanewarden.audit.findings.Finding;
import lanewarden.audit.findings.Finding.Kind;
import lanewarden.audit.findings.LedgerFold;
import lanewarden.audit.press.Announcer;
import lanewarden.ledger.Verification;
import lanewarden.station.SignedPapers;

/** What the audit made of a ledger, for tests to ask. */
public record Audited(Evidence evidence) {

  public static Audited of(Path ledger) throws Exception {
    LedgerFold fold = new LedgerFold(SignedPapers::of, new Announcer(progress -> {}), 0);
    return new Audited(fold.finish(Verification.of(ledger, List.of(), fold)));
  }

  AuditSummary summary() {
    return Figures.of(evidence);
  }

  public List<Finding> findings() {
    return evidence.findings();
  }

  /** The kinds of all findings, the gravest first. */
  public List<Kind> kinds() {
    return findings().stream().map(Finding::kind).toList();
  }

  /** The kinds of the contradictions. */
  public List<Kind> contradictions() {
    return summary().contradictions().stream().map(Finding::kind).toList();
  }

  public List<String> words(Kind kind) {
    return findings().stream().filter(f -> f.kind() == kind).map(Finding::words).toList();
  }

  /** The words of the one finding of a kind. */
  public String only(Kind kind) {
    List<String> words = words(kind);
    assertEquals(1, words.size(), kind + ": " + words);
    return words.get(0);
  }

  /** The entries of all findings of a kind. */
  public List<Long> entries(Kind kind) {
    return findings().stream()
        .filter(f -> f.kind() == kind)
        .flatMap(f -> f.entries().stream())
        .toList();
  }
}
