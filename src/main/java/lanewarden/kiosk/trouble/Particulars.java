package lanewarden.kiosk.trouble;

import javafx.geometry.NodeOrientation;
import javafx.scene.control.Label;
import lanewarden.kiosk.look.PanelFrame;

/** What a trouble says of itself in English, small below the language of the screens. */
public final class Particulars extends Label {

  /** Hidden until there are any. */
  public Particulars() {
    getStyleClass().add("particulars");
    setNodeOrientation(NodeOrientation.LEFT_TO_RIGHT);
    setMaxWidth(Double.MAX_VALUE);
    PanelFrame.wrap(this);
    show("");
  }

  /** Shows them; blank ones take no room. */
  public void show(String particulars) {
    setText(particulars);
    setVisible(!particulars.isBlank());
    setManaged(!particulars.isBlank());
  }
}
