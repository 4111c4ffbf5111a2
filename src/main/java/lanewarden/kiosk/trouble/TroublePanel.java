package lanewarden.kiosk.trouble;

import java.util.Optional;
import javafx.scene.Parent;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.Keys;
import lanewarden.kiosk.look.Page;
import lanewarden.kiosk.look.Texts;
import lanewarden.station.Trouble;

/** Why something that was asked for did not open, and the way back. */
public final class TroublePanel implements Page {
  private final VBox root = new VBox();
  private final Keys keys = new Keys();
  private final KeyButton back;

  /**
   * @param leave goes back
   */
  public TroublePanel(Trouble trouble, Texts texts, Runnable leave) {
    TroubleCard card = new TroubleCard(texts);
    card.show(Optional.of(trouble));
    card.setId("trouble-card");
    back = new KeyButton(texts.of("panel.back"), KeyCode.ESCAPE, leave);
    back.getStyleClass().add("primary");
    keys.add(back);
    HBox buttons = new HBox(back);
    buttons.getStyleClass().add("panel-buttons");
    root.getChildren().addAll(card, buttons);
    root.getStyleClass().add("panel");
    root.setMaxHeight(VBox.USE_PREF_SIZE);
    root.setId("trouble-panel");
  }

  @Override
  public Parent root() {
    return root;
  }

  @Override
  public void focus() {
    back.requestFocus();
  }

  @Override
  public boolean press(KeyCode code) {
    return keys.press(code);
  }

  @Override
  public void typed(String text) {
    // Nothing is typed into a trouble
  }
}
