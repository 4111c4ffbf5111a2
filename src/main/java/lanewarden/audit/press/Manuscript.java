package lanewarden.audit.press;

import java.io.StringReader;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * A page of HTML, read once from the front: what it says of itself first, then its body element by
 * element.
 *
 * <p>Owned by one thread.
 */
final class Manuscript {
  private final XMLStreamReader in;
  private final Map<String, String> bookmarks = new LinkedHashMap<>();
  private final Map<String, String> said = new LinkedHashMap<>();

  private Manuscript(XMLStreamReader in) {
    this.in = in;
  }

  /**
   * Reads the page as far as its body.
   *
   * @throws IllegalStateException if it is not well formed, as later reading does
   */
  static Manuscript open(String html) {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_COALESCING, true);
    try {
      Manuscript page = new Manuscript(factory.createXMLStreamReader(new StringReader(html)));
      page.heading();
      return page;
    } catch (XMLStreamException e) {
      throw torn(e);
    }
  }

  private static IllegalStateException torn(XMLStreamException e) {
    return new IllegalStateException("The page is not written as it must be.", e);
  }

  private void heading() {
    while (!(next() == XMLStreamConstants.START_ELEMENT && name().equals("body"))) {
      if (in.isStartElement()) {
        switch (name()) {
          case "title" -> said.put("title", words());
          case "meta" -> said.put(attribute("name"), attribute("content"));
          case "link" -> said.put("stylesheet", attribute("href"));
          case "bookmark" -> bookmarks.put(attribute("name"), attribute("href").substring(1));
          default -> {
            // What is around these.
          }
        }
      }
    }
  }

  /** Goes on to what comes next, one of {@link XMLStreamConstants}. */
  int next() {
    try {
      return in.next();
    } catch (XMLStreamException e) {
      throw torn(e);
    }
  }

  /** Goes on to the next element inside the one around; false where that one ends. */
  boolean nextChild() {
    int event = next();
    while (event != XMLStreamConstants.START_ELEMENT && event != XMLStreamConstants.END_ELEMENT) {
      event = next();
    }
    return event == XMLStreamConstants.START_ELEMENT;
  }

  /** The name of the element that begins or ends here. */
  String name() {
    return in.getLocalName();
  }

  /** The text that stands here. */
  String text() {
    return in.getText();
  }

  /** All of the element that begins here, which holds text alone. */
  String words() {
    try {
      return in.getElementText();
    } catch (XMLStreamException e) {
      throw torn(e);
    }
  }

  /** An attribute of the element that begins here; empty where it has none of this name. */
  String attribute(String attribute) {
    return Objects.requireNonNullElse(in.getAttributeValue(null, attribute), "");
  }

  /** Where its bookmarks lead, by their names, in their order. */
  Map<String, String> bookmarks() {
    return bookmarks;
  }

  /** Its title, subject, author or stylesheet. */
  String said(String what) {
    String found = said.get(what);
    if (found == null) {
      throw new IllegalStateException("The page does not say its " + what + ".");
    }
    return found;
  }
}
