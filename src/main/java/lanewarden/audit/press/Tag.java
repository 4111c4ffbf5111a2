package lanewarden.audit.press;

import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;

/**
 * A place in the structure of a document (ISO 32000-1, 14.7), for whoever has it read aloud.
 *
 * <p>Written as plain dictionaries: a report has tens of thousands of them. Owned by one thread.
 */
final class Tag {
  private static final COSName ATTRIBUTES = COSName.A;
  private static final COSName OWNER = COSName.O;

  private final COSDictionary element = new COSDictionary();
  private final COSArray kids = new COSArray();

  private Tag(String type, COSDictionary parent) {
    element.setItem(COSName.S, COSName.getPDFName(type));
    element.setItem(COSName.P, parent);
    kids.setDirect(true);
  }

  /** The tag of the whole document. */
  static Tag document(COSDictionary root) {
    return new Tag("Document", root);
  }

  /** A new tag inside this one, after what is there. */
  Tag inside(String type) {
    Tag tag = new Tag(type, element);
    add(tag.element);
    return tag;
  }

  private void add(COSBase kid) {
    if (kids.size() == 0) {
      element.setItem(COSName.K, kids);
    }
    kids.add(kid);
  }

  /** Says which cells a heading stands for: {@code Column} or {@code Row}. */
  void scope(String which) {
    attribute("Table", "Scope", which);
  }

  /** Says how the items of a list are marked: {@code Disc}, {@code Circle} or {@code Decimal}. */
  void numbering(String how) {
    attribute("List", "ListNumbering", how);
  }

  private void attribute(String owner, String name, String value) {
    attributes(owner).setName(name, value);
  }

  private COSDictionary attributes(String owner) {
    COSDictionary attributes = new COSDictionary();
    attributes.setDirect(true);
    attributes.setName(OWNER, owner);
    element.setItem(ATTRIBUTES, attributes);
    return attributes;
  }

  /** Says what a picture shows, and where it stands on its page, in points from below. */
  void picture(String alternative, float left, float bottom, float right, float top) {
    element.setString(COSName.ALT, alternative);
    COSDictionary layout = attributes("Layout");
    layout.setName("Placement", "Block");
    COSArray box = new COSArray();
    box.setDirect(true);
    for (float edge : new float[] {left, bottom, right, top}) {
      box.add(new COSFloat(edge));
    }
    layout.setItem(COSName.BBOX, box);
  }

  /** Gives it a piece of a page. */
  void holds(PDPage page, int piece) {
    COSDictionary first = element.getCOSDictionary(COSName.PG);
    if (first == null) {
      element.setItem(COSName.PG, page.getCOSObject());
    }
    if (first == null || first == page.getCOSObject()) {
      add(COSInteger.get(piece));
    } else {
      COSDictionary elsewhere = new COSDictionary();
      elsewhere.setDirect(true);
      elsewhere.setItem(COSName.TYPE, COSName.getPDFName("MCR"));
      elsewhere.setItem(COSName.PG, page.getCOSObject());
      elsewhere.setInt(COSName.MCID, piece);
      add(elsewhere);
    }
  }

  /** What the type is called. */
  String type() {
    return element.getNameAsString(COSName.S);
  }

  COSDictionary element() {
    return element;
  }
}
