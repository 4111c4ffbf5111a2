package lanewarden.audit.comparison;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import lanewarden.audit.press.Announcer;
import lanewarden.audit.press.Cut;
import lanewarden.audit.press.Destination;
import lanewarden.audit.press.Ink;
import lanewarden.audit.press.Press;
import lanewarden.audit.press.Template;
import lanewarden.audit.press.Typefaces;
import lanewarden.bench.Comparison;

/**
 * A comparison of set-ups on paper and for other programs. It is no evidence, and nothing signs it.
 *
 * <p>May be used again and by any thread; a single call stays on its caller's thread.
 */
public final class ComparisonPaper {
  private final Clock clock;

  /**
   * @param clock for the time a paper was made
   */
  public ComparisonPaper(Clock clock) {
    this.clock = clock;
  }

  /**
   * Writes tables and pictures as a PDF. It appears whole or not at all; only another PDF is ever
   * replaced.
   *
   * @throws IOException if it cannot be written, saying why and what to do
   */
  public void pdf(Comparison comparison, Path pdf) throws IOException {
    Destination destination = Destination.of(pdf);
    Instant made = clock.instant();
    Announcer nobody = new Announcer(step -> {});
    destination.deliver(
        out -> {
          try (Typefaces faces = Typefaces.open();
              OutputStream buffered = new BufferedOutputStream(out)) {
            Ink ink = faces.ink();
            ComparisonPage page = ComparisonPage.of(comparison, made, faces.of(Cut.TEXT), ink);
            String html = new Template(ComparisonPaper.class, "comparison", ink).fill(page);
            new Press(ComparisonPaper.class, nobody, 0, Announcer.WHOLE)
                .print(html, faces, made, List.of(), buffered);
          }
        });
  }

  /**
   * Writes the table of set-ups as CSV (RFC 4180). It appears whole or not at all, and replaces
   * nothing.
   *
   * @throws IOException if it cannot be written, saying why and what to do
   */
  public void csv(Comparison comparison, Path csv) throws IOException {
    Destination.fresh(csv)
        .deliver(
            out -> {
              try (CsvWriter writer =
                  CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(out)) {
                new ComparisonTable(comparison).rows().forEach(writer::writeRecord);
              }
            });
  }
}
