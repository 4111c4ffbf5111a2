package lanewarden.kiosk.protest;

import javafx.css.PseudoClass;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.look.Mark;
import lanewarden.kiosk.look.PanelFrame;
import lanewarden.kiosk.look.Texts;

/**
 * One check on a sheet: outcome, limit, every reading and every refused line with the bytes as they
 * came, and what else is to be known.
 */
final class SheetPane extends VBox {
  private static final PseudoClass VOID = PseudoClass.getPseudoClass("void");
  private static final PseudoClass COUNTS = PseudoClass.getPseudoClass("counts");

  SheetPane(SheetPage page, boolean beside, Texts texts) {
    Label title = label(page.title(), "sheet-title");
    Label about = label(page.about(), "sheet-about");
    getChildren().addAll(title, about, outcome(page));
    getChildren()
        .add(label(texts.of(page.counts() ? "sheet.counts" : "sheet.counts-not"), "sheet-counts"));
    getChildren().add(label(page.limit(), "sheet-limit"));
    if (page.readings().isEmpty()) {
      getChildren().add(label(texts.of("sheet.no-readings"), "sheet-note"));
    }
    page.readings().forEach(reading -> getChildren().add(reading(reading)));
    if (!page.refused().isEmpty()) {
      getChildren().add(label(texts.of("sheet.refused", page.refused().size()), "sheet-note"));
      page.refused().forEach(line -> getChildren().add(refused(line)));
    }
    page.notes().forEach(note -> getChildren().add(label(note, "sheet-note")));
    pseudoClassStateChanged(COUNTS, beside && page.counts());
    getStyleClass().add("sheet");
    setId("sheet-" + page.number());
    setMinWidth(0);
  }

  private static HBox outcome(SheetPage page) {
    Mark mark = new Mark();
    mark.show(page.sign());
    VBox said = new VBox(label(page.word(), "sheet-word"), label(page.words(), "sheet-why"));
    said.setMinWidth(0);
    HBox box = new HBox(mark, said);
    box.getStyleClass().add("outcome");
    Mark.show(box, page.sign());
    box.setAccessibleRole(AccessibleRole.TEXT);
    box.setAccessibleText(page.word() + ". " + page.words());
    return box;
  }

  private static VBox reading(SheetPage.Reading reading) {
    VBox box = new VBox(label(reading.speed(), "sheet-speed"));
    if (!reading.told().isBlank()) {
      box.getChildren().add(label(reading.told(), "sheet-told"));
    }
    box.getChildren().addAll(raw(reading.raw()), label(reading.origin(), "sheet-origin"));
    box.getStyleClass().add("sheet-reading");
    box.pseudoClassStateChanged(VOID, !reading.stands());
    box.setAccessibleRole(AccessibleRole.TEXT);
    box.setAccessibleText(String.join(". ", reading.speed(), reading.told(), reading.origin()));
    return box;
  }

  private static VBox refused(SheetPage.Refused line) {
    VBox box = new VBox(raw(line.raw()), label(line.words(), "sheet-origin"));
    box.getStyleClass().add("sheet-refused");
    box.setAccessibleRole(AccessibleRole.TEXT);
    box.setAccessibleText(line.words());
    return box;
  }

  private static Label raw(String bytes) {
    Label raw = label(bytes, "sheet-raw");
    raw.getStyleClass().add("raw");
    return raw;
  }

  private static Label label(String words, String style) {
    Label label = new Label(words);
    PanelFrame.wrap(label);
    label.getStyleClass().add(style);
    label.setMaxWidth(Double.MAX_VALUE);
    return label;
  }
}
