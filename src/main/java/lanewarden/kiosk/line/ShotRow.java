package lanewarden.kiosk.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.look.Row;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.look.WrappedWords;

/** One card a shot that may be taken; a card that counts can be pressed to declare it void. */
final class ShotRow extends Row {
  private static final PseudoClass VOID = PseudoClass.getPseudoClass("void");
  private static final PseudoClass DOUBT = PseudoClass.getPseudoClass("doubt");

  private final Texts texts;
  private final Consumer<ShotLine> declareVoid;

  ShotRow(Texts texts, Consumer<ShotLine> declareVoid) {
    this.texts = texts;
    this.declareVoid = declareVoid;
    getStyleClass().add("shot-row");
    setId("shots");
  }

  void show(CheckPage check) {
    List<Node> cards = new ArrayList<>();
    check.shots().forEach(shot -> cards.add(card(shot)));
    for (int number = cards.size() + 1; number <= check.places(); number++) {
      Label empty = new Label(String.valueOf(number));
      empty.getStyleClass().add("shot-place");
      empty.setAccessibleText(texts.of("line.shot.place", number));
      empty.setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
      cards.add(empty);
    }
    for (Node card : cards) {
      HBox.setHgrow(card, Priority.ALWAYS);
    }
    getChildren().setAll(cards);
  }

  private Button card(ShotLine shot) {
    Label number = new Label(texts.of("line.shot.number", shot.number(), shot.source()));
    number.getStyleClass().add("shot-number");
    Label speed = new Label(shot.speed());
    speed.getStyleClass().add("shot-speed");
    Label below =
        new Label(
            shot.voided()
                .map(reason -> texts.of("line.shot.void", reason))
                .or(() -> shot.doubt().isEmpty() ? Optional.empty() : Optional.of(shot.doubt()))
                .or(shot::converted)
                .orElse(""));
    below.getStyleClass().add("shot-below");
    WrappedWords.in(below);
    Button card = new Button();
    card.setGraphic(new VBox(number, speed, below));
    card.setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
    card.setAccessibleText(shot.spoken(texts));
    card.getStyleClass().add("shot");
    card.setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
    boolean impossible = !shot.doubt().isEmpty() && !shot.open();
    card.pseudoClassStateChanged(VOID, shot.voided().isPresent() || impossible);
    card.pseudoClassStateChanged(DOUBT, shot.open());
    if (shot.voided().isEmpty()) {
      card.setOnAction(e -> declareVoid.accept(shot));
    } else {
      card.setMouseTransparent(true);
      card.setFocusTraversable(false);
    }
    return card;
  }
}
