package lanewarden.audit;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import lanewarden.audit.findings.Finding;
import lanewarden.audit.press.Progress;
import lanewarden.station.SignedPapers;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/** A report that was made, with the text that stands in its pages. */
public record PrintedReport(Path pdf, AuditSummary summary, List<Progress> progress, String text) {
  public static final Instant MADE = Instant.parse("2026-05-30T16:00:00Z");

  /** Makes the report of a ledger, beside it. */
  public static PrintedReport of(Path ledger) throws Exception {
    Path pdf = ledger.resolveSibling("report.pdf");
    List<Progress> progress = new ArrayList<>();
    AuditSummary summary = report().write(ledger, pdf, progress::add);
    return new PrintedReport(pdf, summary, progress, textOf(pdf));
  }

  public static AuditReport report() {
    return new AuditReport(Clock.fixed(MADE, ZoneOffset.UTC), SignedPapers::of);
  }

  /** All text, with every run of white space drawn together: lines break where they may. */
  public static String textOf(Path pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      return new PDFTextStripper().getText(document).replaceAll("[\\s\\u00a0]+", " ");
    }
  }

  public boolean says(String words) {
    return text.contains(words.replaceAll("\\s+", " "));
  }

  /** How often the words stand in it. */
  public int times(String words) {
    return text.split(Pattern.quote(words), -1).length - 1;
  }

  /** The words of the findings of one kind. */
  List<String> found(Finding.Kind kind) {
    return summary.findings().stream().filter(f -> f.kind() == kind).map(Finding::words).toList();
  }

  /** The kinds of the contradictions. */
  public List<Finding.Kind> contradictions() {
    return summary.contradictions().stream().map(Finding::kind).toList();
  }
}
