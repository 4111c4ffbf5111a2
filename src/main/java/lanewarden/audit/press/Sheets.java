package lanewarden.audit.press;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.jspecify.annotations.Nullable;

/**
 * The pages of a document, filled from above with one block after the other.
 *
 * <p>A page that is full is put into the document at once. Owned by one thread.
 */
final class Sheets implements Column {
  private final PDDocument document;
  private final PrintedFaces faces;
  private final Announcer announcer;
  private final int at;
  private final Paper paper;
  private final List<Sheet> sheets = new ArrayList<>();
  private final List<Held> held = new ArrayList<>();
  private final Map<String, Place> places = new HashMap<>();
  private @Nullable String anchor;
  private Sheet sheet;
  private float y;
  private float white;

  /** A block that waits for what must stand on its page, and where bookmarks call it. */
  private record Held(Block block, @Nullable String anchor) {}

  /** A point of a page, counted from its upper edge. */
  record Place(Sheet sheet, float y) {}

  /**
   * @param at where in the whole this work stands
   */
  Sheets(PDDocument document, PrintedFaces faces, Announcer announcer, int at, Paper paper) {
    this.document = document;
    this.faces = faces;
    this.announcer = announcer;
    this.at = at;
    this.paper = paper;
    this.sheet = next();
  }

  private Sheet next() {
    Sheet fresh = new Sheet(paper.width(), paper.height(), faces);
    sheets.add(fresh);
    document.addPage(fresh.page());
    announcer.say("Setting page " + sheets.size(), at);
    y = paper.edges().top();
    return fresh;
  }

  private void turn() throws IOException {
    sheet.finish(document);
    sheet = next();
    white = 0;
  }

  private float bottom() {
    return paper.textEnd();
  }

  private boolean isOnTop() {
    return y == paper.edges().top();
  }

  @Override
  public void white(float points) {
    if (held.isEmpty()) {
      white = Math.max(white, points);
    }
  }

  @Override
  public void add(Block block) throws IOException {
    block.fit(paper.textWidth());
    held.add(new Held(block, anchor));
    anchor = null;
    if (!block.withNext()) {
      place();
    }
  }

  @Override
  public void addWhole(Stack stack) throws IOException {
    stack.fit(paper.textWidth());
    if (!isOnTop() && stack.height() > bottom() - y - white) {
      turn();
    }
    for (Stack.Placed placed : stack.blocks()) {
      white(placed.white());
      add(placed.block());
    }
    white(stack.end());
  }

  /** Places what was held, on one page as far as it must be. */
  private void place() throws IOException {
    List<Held> together = List.copyOf(held);
    held.clear();
    Block first = together.get(0).block();
    float needed = white(first);
    for (int i = 0; i + 1 < together.size(); i++) {
      Block block = together.get(i).block();
      needed += block.height() + Math.max(block.below(), together.get(i + 1).block().above());
    }
    needed += together.get(together.size() - 1).block().least();
    if (!isOnTop() && needed > bottom() - y) {
      turn();
      again(first);
    }
    for (Held one : together) {
      draw(one);
    }
  }

  /** On top of a page that was turned to, no white is wanted. */
  private float white(Block block) {
    return isOnTop() && sheets.size() > 1 ? 0 : Math.max(white, block.above());
  }

  private void again(Block block) throws IOException {
    Optional<Block> again = block.again();
    if (again.isPresent()) {
      sheet.repeat(() -> again.get().draw(sheet, paper.edges().left(), y, bottom() - y));
      y += again.get().height();
    }
  }

  private void draw(Held one) throws IOException {
    Block block = one.block();
    y += white(block);
    if (one.anchor() != null) {
      places.put(one.anchor(), new Place(sheet, y));
    }
    float height = block.height();
    Optional<Block> rest = block.draw(sheet, paper.edges().left(), y, bottom() - y);
    while (rest.isPresent()) {
      turn();
      again(block);
      height = rest.get().height();
      rest = rest.get().draw(sheet, paper.edges().left(), y, bottom() - y);
      if (rest.isPresent() && rest.get().height() >= height) {
        throw new IllegalStateException("Something on the page is higher than any page.");
      }
    }
    y += height;
    white = block.below();
  }

  @Override
  public void anchor(String name) {
    anchor = name;
  }

  /** Puts the last page into the document. */
  List<Sheet> finish() throws IOException {
    if (!held.isEmpty()) {
      place();
    }
    sheet.finish(document);
    return List.copyOf(sheets);
  }

  /** Where the anchors came to stand, by name. */
  Map<String, Place> places() {
    return Map.copyOf(places);
  }
}
