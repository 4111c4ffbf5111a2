package lanewarden.audit;

import com.samskivert.mustache.Mustache;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.StringReader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Objects;

/** Puts the evidence into the template: the report as one page of HTML. */
final class Composition {
  private static final String TEMPLATE = "report";

  private final Evidence evidence;
  private final AuditSummary summary;
  private final Instant made;

  Composition(Evidence evidence, AuditSummary summary, Instant made) {
    this.evidence = evidence;
    this.summary = summary;
    this.made = made;
  }

  /** The page; every text in it is escaped. */
  String html() throws IOException {
    try (Typeface text = Typeface.open(Cut.TEXT);
        Typeface bold = Typeface.open(Cut.BOLD);
        Typeface fixed = Typeface.open(Cut.FIXED)) {
      Ink ink = new Ink(List.of(text, bold, fixed));
      ReportPage page = new PageWriter(evidence, summary, made, text, ink).page();
      return Mustache.compiler()
          .emptyStringIsFalse(true)
          .zeroIsFalse(true)
          .withEscaper(ink::escape)
          .withLoader(Composition::part)
          .compile(part(TEMPLATE))
          .execute(page);
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }

  private static Reader part(String name) {
    String file = name.contains(".") ? name : name + ".html";
    try (InputStream in =
            Objects.requireNonNull(
                Composition.class.getResourceAsStream(file), file + " is missing");
        Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
      StringWriter all = new StringWriter();
      reader.transferTo(all);
      return new StringReader(all.toString());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
