package lanewarden.kiosk;

import java.util.List;
import lanewarden.kiosk.desk.Desk;
import lanewarden.kiosk.line.LineScreen;
import lanewarden.kiosk.line.LineViewModel;
import lanewarden.kiosk.look.Texts;

/**
 * The screen of the line, and what it shows; on the screen's thread.
 *
 * @param model what it shows
 */
record LineRoom(LineViewModel model, LineScreen screen) {

  static LineRoom of(Desk desk, Shell shell, Texts texts, Doors doors, Faults faults) {
    LineViewModel model = new LineViewModel(desk);
    model.notice().addListener((all, before, now) -> now.ifPresent(faults::showIfUnexpected));
    return new LineRoom(
        model,
        new LineScreen(
            model,
            texts,
            shell,
            new LineScreen.Doors(
                doors.protests(),
                List.of(doors.theme(), doors.records(), doors.instrument()),
                doors.goTo())));
  }
}
