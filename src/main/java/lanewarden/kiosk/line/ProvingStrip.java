package lanewarden.kiosk.line;

import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.Keys;
import lanewarden.kiosk.look.Mark;
import lanewarden.kiosk.look.PanelFrame;
import lanewarden.kiosk.look.Row;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.trouble.Particulars;

/** Whether the instrument can be believed: held, due or good, with what to do about it. */
final class ProvingStrip extends Row {
  private final Texts texts;
  private final Mark mark = new Mark();
  private final Label word = new Label();
  private final Label words = new Label();
  private final Particulars particulars = new Particulars();
  private final KeyButton hold;
  private final KeyButton verify;

  ProvingStrip(Texts texts, Runnable openHold, Runnable openVerification) {
    this.texts = texts;
    word.setId("proving-word");
    word.getStyleClass().add("proving-word");
    words.setId("proving-words");
    PanelFrame.wrap(words);
    VBox said = new VBox(word, words, particulars);
    said.setMinWidth(0);
    said.setAlignment(Pos.CENTER_LEFT);
    said.setAccessibleRole(AccessibleRole.TEXT);
    HBox.setHgrow(said, Priority.ALWAYS);
    hold = new KeyButton(texts.of("act.hold"), KeyCode.PAGE_DOWN, openHold);
    hold.setId("hold");
    verify = new KeyButton(texts.of("act.verify"), KeyCode.END, openVerification);
    verify.setId("verify");
    getChildren().addAll(mark, said, hold, verify);
    getStyleClass().addAll("outcome", "proving-strip");
    setMinHeight(USE_PREF_SIZE);
    setId("proving");
  }

  void addTo(Keys keys) {
    keys.add(hold, verify);
  }

  /**
   * @param stopped whether the line is not clear: nobody is called then for that alone, and the
   *     sentences give way to what must be in sight
   */
  void show(ProvingPage page, boolean stopped) {
    setVisible(page.shown());
    setManaged(page.shown());
    mark.show(page.sign());
    Mark.show(this, page.sign());
    word.setText(page.word());
    words.setText(page.words());
    words.setVisible(!stopped);
    words.setManaged(!stopped);
    particulars.show(stopped ? "" : page.particulars());
    setAccessibleText((page.word() + ". " + page.words() + " " + page.particulars()).strip());
    hold.rename(texts.of(page.held() ? "act.lift" : "act.hold"));
    boolean mayHold = !page.running() && (!page.held() || page.liftable());
    // Where nothing is planned the strip is not seen, and the bar of acts has a button instead
    hold.setDisable(!mayHold || !page.shown());
    hold.setVisible(mayHold);
    hold.setManaged(mayHold);
    verify.rename(texts.of(page.running() ? "act.verify.on" : "act.verify"));
    verify.setDisable(!page.planned());
    verify.setVisible(page.planned());
    verify.setManaged(page.planned());
  }
}
