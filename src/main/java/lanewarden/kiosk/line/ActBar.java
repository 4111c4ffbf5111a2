package lanewarden.kiosk.line;

import java.util.List;
import javafx.css.PseudoClass;
import javafx.scene.input.KeyCode;
import lanewarden.kiosk.look.KeyBar;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.Keys;
import lanewarden.kiosk.look.Texts;

/** Everything that can be done at the line, each with its key; what cannot be done now is dim. */
final class ActBar extends KeyBar {
  private static final PseudoClass STOPPED = PseudoClass.getPseudoClass("stopped");

  private final LineViewModel model;
  private final Texts texts;
  private final KeyButton next;
  private final KeyButton type;
  private final KeyButton voidLast;
  private final KeyButton end;
  private final KeyButton recheck;
  private final KeyButton hold;
  private final KeyButton stop;
  private final LineScreen.Doors doors;
  private final KeyButton signOut;
  private final KeyButton close;

  ActBar(LineViewModel model, Texts texts, LinePanels panels, LineScreen.Doors doors) {
    this.model = model;
    this.texts = texts;
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
    stop = new KeyButton(texts.of("act.stop"), KeyCode.F6, panels::stopOrClear);
    stop.setId("stop-line");
    stop.getStyleClass().add("stop-act");
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
            stop,
            doors.protests(),
            doors.goTo(),
            signOut,
            close));
  }

  void addTo(Keys keys) {
    // Enter is the screen's own: with a bib typed it calls
    keys.add(type, voidLast, end, recheck, hold, stop, signOut, close);
    keys.add(doors.protests(), doors.goTo());
    doors.unseen().forEach(keys::add);
  }

  void show(LinePage page) {
    // What waits to be written comes first, and has the key
    doors.protests().setDisable(page.unwritten() > 0);
    // Whether the instrument can be believed may have a strip, and its button to hold the line
    hold.setVisible(!page.proving().shown());
    hold.setDisable(page.proving().shown());
    stop.rename(texts.of(model.stopped() ? "act.clear" : "act.stop"));
    stop.pseudoClassStateChanged(STOPPED, page.stop().isPresent());
    next.setDisable(!model.mayGoOn());
    type.setDisable(!model.mayType());
    voidLast.setDisable(!model.mayVoid());
    end.setDisable(!model.mayEnd());
    recheck.setDisable(model.recheckable().isEmpty());
  }
}
