package lanewarden.kiosk.trouble;

import java.time.Duration;
import java.util.Optional;
import javafx.beans.value.ObservableValue;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.look.Mark;
import lanewarden.kiosk.look.PanelFrame;
import lanewarden.kiosk.look.Reach;
import lanewarden.kiosk.look.Row;
import lanewarden.kiosk.look.ScreenFrame;
import lanewarden.kiosk.look.Sign;
import lanewarden.kiosk.look.TextSize;
import lanewarden.kiosk.look.Texts;
import lanewarden.station.Trouble;

/**
 * An expected trouble in its place: what happened, why, what to do, code; in another language than
 * English by its code, with its own sentences below.
 */
public final class TroubleCard extends Row {
  private final Texts texts;
  private final Label what = new Label();
  private final Label why = new Label();
  private final Label remedy = new Label();
  private final Label code = new Label();
  private final Particulars particulars = new Particulars();
  private final Countdown countdown;

  private final VBox words;

  // Held here, so that it is followed as long as this lives
  private final ObservableValue<Boolean> large = ScreenFrame.sizeAt(this).map(TextSize::isLarge);
  private boolean narrow;
  private String below = "";

  /** Hidden until there is a trouble. */
  public TroubleCard(Texts texts) {
    this.texts = texts;
    Mark mark = new Mark();
    mark.show(Sign.OVER);
    what.getStyleClass().add("trouble-what");
    code.getStyleClass().add("trouble-code");
    PanelFrame.wrap(what, why, remedy);
    code.setMinSize(USE_PREF_SIZE, USE_PREF_SIZE);
    countdown = new Countdown(texts);
    words = new VBox(what, why, remedy, countdown, particulars);
    HBox.setHgrow(words, Priority.ALWAYS);
    getChildren().addAll(mark, words);
    large.subscribe(now -> placeCode());
    getStyleClass().add("trouble-card");
    setAccessibleRole(AccessibleRole.TEXT);
    show(Optional.empty());
  }

  /**
   * Whether it stands in a narrow place: its code goes below its sentences then, and what a
   * translated one has below them is only spoken.
   */
  public void narrow(boolean now) {
    narrow = now;
    placeCode();
    particulars.show(narrow ? "" : below);
  }

  private void placeCode() {
    Pane place = narrow || large.getValue() ? words : this;
    if (code.getParent() != place) {
      place.getChildren().add(code);
    }
  }

  /** Shows a trouble, which is brought into sight, or nothing. */
  public void show(Optional<Trouble> trouble) {
    setVisible(trouble.isPresent());
    setManaged(trouble.isPresent());
    countdown.start(trouble.flatMap(Trouble::pause).orElse(Duration.ZERO));
    trouble.ifPresent(
        t -> {
          TroubleWords said = TroubleWords.of(t, texts);
          what.setText(said.what());
          why.setText(said.why());
          why.setVisible(!said.why().isBlank());
          why.setManaged(!said.why().isBlank());
          remedy.setText(said.remedy());
          below = said.particulars();
          particulars.show(narrow ? "" : below);
          code.setText(texts.of("trouble.code", t.code()));
          setAccessibleText(said.spoken() + " " + code.getText());
          if (getScene() != null) {
            applyCss();
            Reach.bring(this);
          }
        });
  }
}
