package lanewarden.kiosk.line;

import java.util.List;
import javafx.scene.input.KeyCode;
import lanewarden.kiosk.look.KeyBar;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.Keys;
import lanewarden.kiosk.look.Texts;

/** Everything that can be done at the line, each with its key; what cannot be done now is dim. */
final class ActBar extends KeyBar {
  private final LineViewModel model;
  private final KeyButton next;
  private final KeyButton type;
  private final KeyButton voidLast;
  private final KeyButton end;
  private final KeyButton recheck;
  private final KeyButton hold;
  private final LineScreen.Doors doors;
  private final KeyButton signOut;
  private final KeyButton close;

  ActBar(LineViewModel model, Texts texts, LinePanels panels, LineScreen.Doors doors) {
    this.model = model;
    this.doors = doors;
    next = new KeyButton(texts.of("act.next"), KeyCode.ENTER, model::next);
    next.getStyleClass().add("primary");
    next.setId("next");
    type = new KeyButton(texts.of("act.type"), KeyCode.F2, panels::type);
    voidLast = new KeyButton(texts.of("act.void"), KeyCode.F3, panels::voidLast);
    end = new KeyButton(texts.of("act.end"), KeyCode.F4, panels::endCheck);
    recheck = new KeyButton(texts.of("act.recheck"), KeyCode.F5, model::recheck);
    hold = new KeyButton(texts.of("act.hold"), KeyCode.PAGE_DOWN, panels::holdOrLift);
    hold.setId("hold-unplanned");
    hold.managedProperty().bind(hold.visibleProperty());
    signOut = new KeyButton(texts.of("act.sign-out"), KeyCode.F9, panels::signOut);
    close = new KeyButton(texts.of("act.close"), KeyCode.F12, panels::closeLine);
    offer(
        List.of(
            next,
            type,
            voidLast,
            end,
            recheck,
            hold,
            doors.protests(),
            doors.theme(),
            doors.goTo(),
            signOut,
            close));
  }

  void addTo(Keys keys) {
    // Enter is the screen's own: with a bib typed it calls
    keys.add(type, voidLast, end, recheck, hold, signOut, close);
    keys.add(doors.protests(), doors.theme(), doors.goTo());
    doors.unseen().forEach(keys::add);
  }

  /**
   * @param proving who has its own strip has the button to hold the line there
   * @param unwritten whether something waits to be written, and nothing can be signed before it
   */
  void show(ProvingPage proving, boolean unwritten) {
    // What waits to be written comes first, and has the key
    doors.protests().setDisable(unwritten);
    hold.setVisible(!proving.shown());
    hold.setDisable(proving.shown());
    next.setDisable(!model.mayGoOn());
    type.setDisable(!model.mayType());
    voidLast.setDisable(!model.mayVoid());
    end.setDisable(!model.mayEnd());
    recheck.setDisable(model.recheckable().isEmpty());
  }
}
