package lanewarden.kiosk.protest;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.look.PanelFrame;
import lanewarden.kiosk.look.Scroll;
import lanewarden.kiosk.look.Texts;

/** What is looked into: checks with their rechecks side by side, and what was done about them. */
final class DossierPane extends Scroll {
  /** More than two beside each other cannot be read. */
  private static final int ABREAST = 2;

  private final Texts texts;
  private final VBox told;
  private List<String> shown = List.of();

  DossierPane(Texts texts) {
    this(texts, new VBox());
  }

  private DossierPane(Texts texts, VBox told) {
    super(told);
    this.texts = texts;
    this.told = told;
    setId("dossier");
  }

  /** Shows a check, or how to come to one. */
  void show(Optional<DossierPage> page) {
    if (page.isPresent()) {
      show(List.of(page.get()));
      return;
    }
    shown = List.of();
    setAccessibleText(texts.of("protest.pick"));
    Label how = new Label(texts.of("protest.pick"));
    PanelFrame.wrap(how);
    how.setId("protest-pick");
    told.getChildren().setAll(how);
  }

  /** Shows checks under each other. */
  void show(List<DossierPage> pages) {
    List<String> who = pages.stream().map(DossierPage::who).toList();
    double at = who.equals(shown) ? getVvalue() : 0;
    shown = who;
    setAccessibleText(String.join(". ", who));
    told.getChildren().setAll(pages.stream().flatMap(page -> parts(page).stream()).toList());
    setVvalue(at);
  }

  private List<Node> parts(DossierPage page) {
    Label who = new Label(page.who());
    who.getStyleClass().add("dossier-who");
    who.setId("dossier-who");
    List<Node> parts = new ArrayList<>(List.of(who));
    page.acts().forEach(act -> parts.add(act(act)));
    List<SheetPage> sheets = page.sheets();
    for (int i = 0; i < sheets.size(); i += ABREAST) {
      parts.add(row(sheets.subList(i, Math.min(sheets.size(), i + ABREAST)), sheets.size() > 1));
    }
    return parts;
  }

  private HBox row(List<SheetPage> sheets, boolean beside) {
    HBox row = new HBox();
    row.getStyleClass().add("sheets");
    for (SheetPage sheet : sheets) {
      SheetPane pane = new SheetPane(sheet, beside, texts);
      // Equal shares, whatever stands in them
      pane.setPrefWidth(1);
      HBox.setHgrow(pane, Priority.ALWAYS);
      row.getChildren().add(pane);
    }
    return row;
  }

  private static VBox act(DossierPage.Act act) {
    Label title = new Label(act.title());
    title.getStyleClass().add("act-title");
    Label words = new Label(act.words());
    PanelFrame.wrap(title, words);
    VBox box = new VBox(title, words);
    box.getStyleClass().add("dossier-act");
    box.setAccessibleRole(AccessibleRole.TEXT);
    box.setAccessibleText(act.title() + ". " + act.words());
    return box;
  }
}
