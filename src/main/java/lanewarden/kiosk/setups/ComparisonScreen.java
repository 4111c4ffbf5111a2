package lanewarden.kiosk.setups;

import java.util.List;
import java.util.Optional;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.form.Chooser;
import lanewarden.kiosk.look.KeyBar;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.KeyedPage;
import lanewarden.kiosk.look.PanelFrame;
import lanewarden.kiosk.look.Panels;
import lanewarden.kiosk.look.ScreenFrame;
import lanewarden.kiosk.look.Scroll;
import lanewarden.kiosk.look.Texts;

/** What the shots of a practice file show, without an event, never without its cautions. */
public final class ComparisonScreen extends KeyedPage {

  /**
   * What the screen's buttons lead to that is not the screen's own.
   *
   * @param open asks for another file
   * @param theme turns through the themes
   * @param goTo lists what else is done without an event
   * @param leave goes back
   */
  public record Doors(KeyButton open, KeyButton theme, KeyButton goTo, KeyButton leave) {}

  private final ScreenFrame root = new ScreenFrame();
  private final ComparisonPane told;
  private final Scroll scroll;
  private final ComparisonCautions cautions;

  /** Shows what the model knows. */
  public ComparisonScreen(
      ComparisonViewModel model, Texts texts, Panels panels, Chooser chooser, Doors doors) {
    super(doors.leave());
    told = new ComparisonPane(texts);
    cautions = new ComparisonCautions(texts);
    scroll = new Scroll(told);
    Label title = new Label(texts.of("setups.title"));
    title.getStyleClass().add("panel-title");
    Label files = new Label();
    files.setId("compared-files");
    files.textProperty().bind(model.files());
    Label done = new Label();
    done.setId("compared-done");
    done.getStyleClass().add("docket-title");
    done.textProperty().bind(model.done());
    done.visibleProperty().bind(model.done().isNotEmpty());
    done.managedProperty().bind(done.visibleProperty());
    PanelFrame.wrap(title, files, done);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    VBox middle = new VBox(title, files, done, scroll, cautions);
    middle.getStyleClass().add("people-middle");
    middle.setMinHeight(0);
    KeyButton write =
        new KeyButton(
            texts.of("act.setups.write"),
            KeyCode.F8,
            () ->
                panels.open(
                    WritePanel.of(
                        List.of(Copy.PAPER, Copy.TABLE),
                        model::write,
                        texts.of("compared.write.words"),
                        texts,
                        Optional.of(chooser),
                        panels::close)));
    write.getStyleClass().add("primary");
    KeyButton more = new KeyButton(texts.of("act.more"), KeyCode.PAGE_DOWN, () -> scroll.turn(1));
    more.setId("compared-more");
    more.disableProperty().bind(scroll.isAtEnd());
    KeyButton[] acts = {write, more, doors.open(), doors.theme(), doors.goTo(), doors.leave()};
    keys().add(acts);
    root.fill(middle, new KeyBar(acts));
    root.getStyleClass().add("protest");
    root.setId("compared");
    model
        .sheet()
        .subscribe(
            sheet -> {
              told.show(sheet);
              cautions.show(sheet);
              scroll.setVvalue(0);
            });
  }

  @Override
  public Parent root() {
    return root;
  }

  @Override
  public boolean press(KeyCode code) {
    return scroll.press(code) || super.press(code);
  }
}
