package lanewarden.kiosk.line;

import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.Keys;
import lanewarden.kiosk.look.Mark;
import lanewarden.kiosk.look.Row;
import lanewarden.kiosk.look.ScreenFrame;
import lanewarden.kiosk.look.Sign;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.look.WrappedWords;
import lanewarden.kiosk.trouble.Particulars;
import lanewarden.kiosk.trouble.TroubleWords;

/** The strip that is always there: event, station, link, phase, official, ledger head. */
final class StatusBar extends VBox {
  private final Texts texts;
  private final Label place = new Label();
  private final Mark linkMark = new Mark();
  private final Label link = new Label();
  private final HBox linkState = new HBox(linkMark, link);
  private final Label official = new Label();
  private final Label head = new Label();
  private final Label remedy = new Label();
  private final Particulars particulars = new Particulars();
  private final KeyButton phase;
  private final HBox duty;
  private final HBox placeHome;
  private final HBox dutyHome;

  StatusBar(Texts texts, Runnable openPhase) {
    this.texts = texts;
    phase = new KeyButton(texts.of("act.phase"), KeyCode.HOME, openPhase);
    phase.setId("phase");
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
    WrappedWords.in(place);
    link.setMinWidth(USE_PREF_SIZE);
    official.setMinWidth(USE_PREF_SIZE);
    head.setMinWidth(USE_PREF_SIZE);
    duty = new HBox(official, head);
    duty.getStyleClass().add("status-duty");
    placeHome = new HBox(place);
    dutyHome = new HBox(duty);
    for (HBox part : List.of(duty, placeHome, dutyHome)) {
      part.setAlignment(Pos.CENTER_LEFT);
    }
    Row row = new Row(placeHome, left, linkState, right, phase, dutyHome);
    row.getStyleClass().add("status-row");
    remedy.setId("link-remedy");
    WrappedWords.in(remedy);
    remedy.setMaxWidth(Double.MAX_VALUE);
    remedy.getStyleClass().add("link-remedy");
    particulars.getStyleClass().add("link-remedy");
    particulars.setId("link-particulars");
    getChildren().addAll(row, remedy, particulars);
    getStyleClass().add("status-bar");
  }

  /** With large text the link and the phase stay in sight; where and who scroll. */
  void loosenIn(ScreenFrame frame) {
    frame.loosen(place, placeHome);
    frame.loosen(duty, dutyHome);
  }

  void addTo(Keys keys) {
    keys.add(phase);
  }

  void show(LinePage page) {
    phase.rename(texts.of("line.phase", page.phase()));
    place.setText(page.place());
    Mark.show(linkState, page.linkSign());
    linkMark.show(page.linkSign());
    link.setText(
        page.unwritten() == 0
            ? page.link()
            : texts.of("line.unwritten", page.link(), page.unwritten()));
    boolean heard = page.linkSign() == Sign.LINK_UP;
    Optional<TroubleWords> said = TroubleWords.in(page.linkWords(), texts);
    remedy.setText(said.map(TroubleWords::inShort).orElse(page.linkWords()));
    particulars.show(heard ? "" : said.map(TroubleWords::particulars).orElse(""));
    remedy.setVisible(!heard);
    remedy.setManaged(!heard);
    linkState.setAccessibleText(
        link.getText() + ". " + said.map(TroubleWords::spoken).orElse(page.linkWords()));
    official.setText(texts.of("line.official", page.official()));
    head.setText(texts.of("line.head", page.head()));
  }
}
