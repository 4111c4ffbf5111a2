package lanewarden.audit.press;

import java.io.IOException;
import java.io.OutputStream;
import java.time.Instant;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * Sets a page of HTML as a PDF made to last: PDF/A-3 of level A (ISO 19005-3) and PDF/UA-1 (ISO
 * 14289-1), tagged, with bookmarks, its typefaces and its colours embedded.
 *
 * <p>Owned by one thread.
 */
public final class Press {
  /** Held, because a logger that nobody holds forgets its level. */
  private final Logger pdfLogger = Logger.getLogger("org.apache.pdfbox");

  private final Logger fontLogger = Logger.getLogger("org.apache.fontbox");
  private final Class<?> home;
  private final Announcer announcer;
  private final int from;
  private final int to;

  /**
   * @param home the class beside which the style sheets of its pages lie
   * @param from where in the whole this work begins
   * @param to where it ends
   */
  public Press(Class<?> home, Announcer announcer, int from, int to) {
    this.home = home;
    this.announcer = announcer;
    this.from = from;
    this.to = to;
    pdfLogger.setLevel(Level.SEVERE);
    fontLogger.setLevel(Level.SEVERE);
  }

  /**
   * Sets the page and writes it.
   *
   * @param faces the typefaces to set it in
   * @param enclosures files that travel inside it
   * @param made the time to put into the document
   * @throws IOException if it cannot be written
   * @throws IllegalStateException if the page itself is wrong, which is a fault of this program
   */
  public void print(
      String html, Typefaces faces, Instant made, List<Enclosure> enclosures, OutputStream out)
      throws IOException {
    Manuscript page = Manuscript.open(html);
    Stylesheet styles = Stylesheet.of(Template.text(home, page.said("stylesheet")));
    try (PDDocument document = new PDDocument()) {
      PrintedFaces printed = new PrintedFaces(faces, document);
      LineBreaker breaker = new LineBreaker(printed);
      Structure structure = new Structure();
      Sheets sheets = new Sheets(document, printed, announcer, from, styles.paper());
      Setter setter = new Setter(page, styles, breaker);
      setter.body(sheets, structure.document());
      List<Sheet> all = sheets.finish();
      Margins margins = new Margins(breaker, setter.running(), styles.paper());
      for (int i = 0; i < all.size(); i++) {
        int number = i + 1;
        announcer.say("Printing page " + number + " of " + all.size(), from, to, i, all.size());
        margins.draw(all.get(i), number, all.size());
        all.get(i).finish(document);
      }
      structure.into(document, all);
      new Bookmarks(page.bookmarks()).into(document, sheets.places());
      new Imprint(page.said("title"), page.said("subject"), page.said("author"), made)
          .into(document, faces.ink());
      Enclosure.into(document, enclosures, made);
      printed.finish();
      document.save(out);
    }
  }
}
