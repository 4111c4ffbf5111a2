package lanewarden.kiosk.protest;

import java.util.List;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.KeyedPage;
import lanewarden.kiosk.look.PanelFrame;
import lanewarden.kiosk.look.Texts;

/** Checks of a ledger that are looked into, over the screen that they were asked for at. */
public final class DossierPanel extends KeyedPage {
  private final PanelFrame root = new PanelFrame("dossier-panel");
  private final DossierPane pane;

  /**
   * @param cautions why not all is proved or shown; none where there is nothing to be said
   * @param leave goes back
   */
  public DossierPanel(
      String title, List<String> cautions, List<DossierPage> pages, Texts texts, Runnable leave) {
    super(new KeyButton(texts.of("panel.back"), KeyCode.ESCAPE, leave));
    root.say(new Label(title), cautions.stream().map(Label::new).toArray(Label[]::new));
    pane = new DossierPane(texts);
    pane.show(pages);
    VBox.setVgrow(pane, Priority.ALWAYS);
    root.getChildren().add(pane);
    root.getStyleClass().add("protest");
    root.offer(back());
  }

  @Override
  public Parent root() {
    return root;
  }

  @Override
  public boolean press(KeyCode code) {
    return pane.press(code) || root.press(code);
  }

  @Override
  public boolean isPassable() {
    return true;
  }
}
