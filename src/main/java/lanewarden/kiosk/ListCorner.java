package lanewarden.kiosk;

import lanewarden.kiosk.start.ListScreen;
import lanewarden.kiosk.start.ListViewModel;

/** A list of competitors that is looked at without an event; on the screen's thread. */
final class ListCorner {
  private final Forecourt.Ground ground;
  private final ListScreen screen;

  ListCorner(Forecourt.Ground ground) {
    this.ground = ground;
    screen =
        new ListScreen(
            new ListViewModel(ground.table().work(), ground.table().screen()),
            ground.texts(),
            ground.chooser(),
            new ListScreen.Doors(ground.theme().get(), ground.goTo(), ground.back()));
  }

  /** Shows the list that was looked at last, or asks for one. */
  void open() {
    ground.shell().show(screen);
  }
}
