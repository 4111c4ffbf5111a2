package lanewarden.audit.press;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javax.xml.stream.XMLStreamConstants;
import lanewarden.audit.press.Paragraph.Label;

/**
 * Sets the body of a page as it is read: its elements become blocks in a column, each with its tag.
 *
 * <p>It knows the elements that the program's own pages use; any other is a fault of the page and
 * never passed over. Owned by one thread.
 */
final class Setter {
  private final Manuscript page;
  private final Stylesheet styles;
  private final LineBreaker breaker;
  private final Map<String, List<Run>> running = new HashMap<>();

  Setter(Manuscript page, Stylesheet styles, LineBreaker breaker) {
    this.page = page;
    this.styles = styles;
    this.breaker = breaker;
  }

  /**
   * Where blocks go.
   *
   * @param tag theirs are inside it
   * @param cell whether words belong to that tag itself, as in the cell of a table
   * @param indent from the left of the column, in points
   */
  private record Into(Column column, Tag tag, boolean cell, float indent) {}

  /** Sets the whole body. */
  void body(Column column, Tag document) throws IOException {
    Element body = Element.root("body");
    Into into = new Into(column, document, false, 0);
    put(into, "P", plain(body), inside(body, into));
  }

  /** The words that stand on every page, by their place: {@code header left} and so on. */
  Map<String, List<Run>> running() {
    return running;
  }

  private Style plain(Element element) {
    return Style.inside(styles.of(element).letters());
  }

  private Element child(Element element) {
    return element.inside(page.name(), page.attribute("class"));
  }

  private void put(Into into, String type, Style style, Words words) throws IOException {
    List<Run> runs = words.take();
    if (!runs.isEmpty()) {
      Tag tag = into.cell() ? into.tag() : into.tag().inside(type);
      into.column().add(new Paragraph(breaker, style, tag, into.indent(), null, runs));
    }
  }

  /**
   * Sets what is inside an element, up to its end.
   *
   * @return the words behind its last block, which are not set yet
   */
  private Words inside(Element element, Into into) throws IOException {
    Words words = new Words();
    inside(element, into, words);
    return words;
  }

  private void inside(Element element, Into into, Words words) throws IOException {
    for (int event = page.next(); event != XMLStreamConstants.END_ELEMENT; event = page.next()) {
      if (event == XMLStreamConstants.CHARACTERS) {
        words.add(page.text(), styles.of(element).letters());
      } else if (event == XMLStreamConstants.START_ELEMENT) {
        Element child = child(element);
        switch (child.name()) {
          case "b", "s", "span" -> inside(child, into, words);
          case "br" -> {
            words.feed(styles.of(element).letters());
            page.words();
          }
          default -> {
            put(into, "P", plain(element), words);
            block(child, into);
          }
        }
      }
    }
  }

  private void block(Element element, Into into) throws IOException {
    if (!page.attribute("id").isEmpty()) {
      into.column().anchor(page.attribute("id"));
    }
    switch (element.name()) {
      case "h1", "h2", "h3", "h4", "p" ->
          put(
              into,
              element.name().toUpperCase(Locale.ROOT),
              styles.of(element),
              inside(element, into));
      case "pre" -> put(into, "P", styles.of(element), inside(element, into));
      case "div" -> division(element, into);
      case "ul", "ol" -> list(element, into);
      case "table" -> table(element, into);
      case "svg" -> into.column().add(new PictureReader(page).picture(into.tag().inside("Figure")));
      case "header", "footer" -> {
        String place = element.name() + " " + page.attribute("class");
        running.put(place, inside(element, into).take());
      }
      default -> throw new IllegalStateException("A page has the element " + element.name() + ".");
    }
  }

  private void division(Element element, Into into) throws IOException {
    Style style = styles.of(element);
    into.column().white(style.margin().top());
    if (style.whole()) {
      Stack.Pile pile = new Stack.Pile();
      Into whole = new Into(pile, into.tag(), into.cell(), into.indent());
      put(whole, "P", plain(element), inside(element, whole));
      into.column().addWhole(pile.stack());
    } else {
      put(into, "P", style, inside(element, into));
    }
    into.column().white(style.margin().bottom());
  }

  private void list(Element element, Into into) throws IOException {
    Style style = styles.of(element);
    boolean numbered = element.name().equals("ol");
    Tag tag = into.tag().inside("L");
    tag.numbering(numbered ? "Decimal" : style.letters().bullet().equals("◦") ? "Circle" : "Disc");
    into.column().white(style.margin().top());
    int number = 0;
    while (page.nextChild()) {
      Element item = child(element);
      number++;
      Tag itsTag = tag.inside("LI");
      String mark = numbered ? number + "." : style.letters().bullet();
      Label label = new Label(mark, itsTag.inside("Lbl"));
      Into body = new Into(into.column(), itsTag.inside("LBody"), true, into.indent());
      Words words = inside(item, body);
      float indent = into.indent() + style.padding().left();
      into.column()
          .add(new Paragraph(breaker, styles.of(item), body.tag(), indent, label, words.take()));
    }
    into.column().white(style.margin().bottom());
  }

  private void table(Element element, Into into) throws IOException {
    Table table = new Table(styles.of(element));
    Tag tag = into.tag().inside("Table");
    into.column().white(table.margin().top());
    while (page.nextChild()) {
      Element section = child(element);
      boolean heads = section.name().equals("thead");
      Tag itsTag = tag.inside(heads ? "THead" : "TBody");
      while (page.nextChild()) {
        List<TableCell> cells = cells(child(section), itsTag.inside("TR"), heads);
        TableRow row = new TableRow(table, cells, heads);
        if (heads) {
          table.headedBy(row);
        }
        into.column().add(row);
      }
    }
    into.column().white(table.margin().bottom());
  }

  private List<TableCell> cells(Element row, Tag tag, boolean heads) throws IOException {
    List<TableCell> cells = new ArrayList<>();
    while (page.nextChild()) {
      Element cell = child(row);
      boolean heading = cell.name().equals("th");
      Tag itsTag = tag.inside(heading ? "TH" : "TD");
      if (heading) {
        itsTag.scope(heads ? "Column" : "Row");
      }
      Stack.Pile pile = new Stack.Pile();
      Into into = new Into(pile, itsTag, true, 0);
      put(into, "P", plain(cell), inside(cell, into));
      cells.add(new TableCell(styles.of(cell), pile.stack()));
    }
    return cells;
  }
}
