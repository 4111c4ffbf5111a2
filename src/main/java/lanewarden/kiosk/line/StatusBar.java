package lanewarden.kiosk.line;

import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import lanewarden.kiosk.look.Mark;
import lanewarden.kiosk.look.Texts;

/** The strip that is always there: event, station, link, official, ledger head. */
final class StatusBar extends HBox {
  private final Texts texts;
  private final Label place = new Label();
  private final Mark linkMark = new Mark();
  private final Label link = new Label();
  private final HBox linkState = new HBox(linkMark, link);
  private final Label official = new Label();
  private final Label head = new Label();

  StatusBar(Texts texts) {
    this.texts = texts;
    Region left = new Region();
    Region right = new Region();
    HBox.setHgrow(left, Priority.ALWAYS);
    HBox.setHgrow(right, Priority.ALWAYS);
    linkState.getStyleClass().add("link-state");
    linkState.setAccessibleRole(AccessibleRole.TEXT);
    linkState.setId("link-state");
    link.setId("link-words");
    head.setId("ledger-head");
    head.getStyleClass().add("raw");
    place.getStyleClass().add("place");
    link.setMinWidth(USE_PREF_SIZE);
    official.setMinWidth(USE_PREF_SIZE);
    head.setMinWidth(USE_PREF_SIZE);
    getChildren().addAll(place, left, linkState, right, official, head);
    getStyleClass().add("status-bar");
  }

  void show(LinePage page) {
    place.setText(page.place());
    Mark.show(linkState, page.linkSign());
    linkMark.show(page.linkSign());
    link.setText(
        page.unwritten() == 0
            ? page.link()
            : texts.of("line.unwritten", page.link(), page.unwritten()));
    linkState.setAccessibleText(link.getText() + ". " + page.linkWords());
    official.setText(texts.of("line.official", page.official()));
    head.setText(texts.of("line.head", page.head()));
  }
}
