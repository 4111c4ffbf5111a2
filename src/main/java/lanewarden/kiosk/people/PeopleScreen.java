package lanewarden.kiosk.people;

import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.form.Chooser;
import lanewarden.kiosk.form.OrganizersKey;
import lanewarden.kiosk.look.KeyBar;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.Keys;
import lanewarden.kiosk.look.Page;
import lanewarden.kiosk.look.PanelFrame;
import lanewarden.kiosk.look.Panels;
import lanewarden.kiosk.look.ScreenFrame;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.look.WrappedWords;
import lanewarden.kiosk.trouble.TroubleCard;
import lanewarden.station.KeyOffice;

/** The officials: who may sign, and what the organizer does about it. */
public final class PeopleScreen implements Page {

  /**
   * What the screen's buttons lead to that is not the screen's own.
   *
   * @param theme turns through the themes
   * @param goTo lists every screen with its key
   * @param leave goes back
   */
  public record Doors(KeyButton theme, KeyButton goTo, Runnable leave) {}

  private final PeopleViewModel model;
  private final ScreenFrame root = new ScreenFrame();
  private final Keys keys = new Keys();
  private final ListView<KeyOffice.Official> list = new ListView<>();
  private final KeyButton suspend;
  private final KeyButton replace;
  private final KeyButton readmit;

  /**
   * Shows what the model looks at.
   *
   * @param chooser with which files are chosen, if there is one at the time
   */
  public PeopleScreen(
      PeopleViewModel model,
      OrganizersKey key,
      Texts texts,
      Panels panels,
      Supplier<Optional<Chooser>> chooser,
      Doors doors) {
    this.model = model;
    PeoplePanels own = new PeoplePanels(model, key, texts, panels, chooser);
    Label title = new Label(texts.of("people.title"));
    title.getStyleClass().add("sign-in-title");
    Label words = new Label(texts.of("people.words"));
    PanelFrame.wrap(words);
    TroubleCard notice = new TroubleCard(texts);
    model.notice().addListener((all, before, now) -> notice.show(now));
    list.setItems(model.people());
    list.setCellFactory(all -> new PersonCell(texts));
    list.setId("people-list");
    Label none = new Label(texts.of("ledger.verifying"));
    none.setId("people-none");
    none.visibleProperty().bind(model.opening());
    WrappedWords.in(none);
    list.setPlaceholder(none);
    list.setAccessibleText(texts.of("people.title"));
    list.getSelectionModel()
        .selectedItemProperty()
        .addListener(
            (all, before, now) -> {
              if (now != null) {
                model.chosen().set(Optional.of(now));
              }
            });
    model.chosen().addListener((all, before, now) -> pickOut(now));
    VBox.setVgrow(list, Priority.ALWAYS);
    VBox middle = new VBox(title, words, notice, list);
    middle.getStyleClass().add("people-middle");
    suspend = new KeyButton(texts.of("act.suspend"), KeyCode.F3, own::suspend);
    replace = new KeyButton(texts.of("act.replace"), KeyCode.F4, own::replace);
    readmit = new KeyButton(texts.of("act.readmit"), KeyCode.F5, own::readmit);
    KeyButton[] acts = {
      new KeyButton(texts.of("act.enrol"), KeyCode.F2, own::enrol),
      suspend,
      replace,
      readmit,
      new KeyButton(texts.of("act.change"), KeyCode.F8, own::change),
      doors.theme(),
      doors.goTo(),
      new KeyButton(texts.of("panel.back"), KeyCode.ESCAPE, doors.leave())
    };
    keys.add(acts);
    root.fill(middle, new KeyBar(acts));
    root.getStyleClass().add("protest");
    root.setId("people");
    pickOut(model.chosen().get());
  }

  private void pickOut(Optional<KeyOffice.Official> chosen) {
    int at = chosen.map(model.people()::indexOf).orElse(-1);
    if (at >= 0 && list.getSelectionModel().getSelectedIndex() != at) {
      list.getSelectionModel().select(at);
      list.scrollTo(at);
    }
    suspend.setDisable(model.standing().isEmpty());
    replace.setDisable(model.standing().isEmpty());
    readmit.setDisable(model.suspended().isEmpty());
  }

  @Override
  public Parent root() {
    return root;
  }

  @Override
  public void focus() {
    list.requestFocus();
  }

  @Override
  public boolean press(KeyCode code) {
    if (code == KeyCode.DOWN || code == KeyCode.UP) {
      model.choose(code == KeyCode.DOWN ? 1 : -1);
      return true;
    }
    return keys.press(code);
  }
}
