package lanewarden.kiosk;

import java.time.ZoneId;
import java.util.Optional;
import lanewarden.kiosk.audit.LedgerViewModel;
import lanewarden.kiosk.audit.RecordsScreen;
import lanewarden.kiosk.protest.DocketWords;

/** What is made of a ledger and proved with it at any machine, without its event. */
final class LedgerCorner {
  private final Forecourt.Ground ground;
  private final LedgerViewModel model;
  private final RecordsScreen screen;

  LedgerCorner(Forecourt.Ground ground, Makers makers, Front.Threads threads) {
    this.ground = ground;
    model =
        new LedgerViewModel(
            makers.paper(threads.random()),
            new DocketWords(ground.texts(), ZoneId.systemDefault()),
            Optional.empty(),
            threads.report(),
            threads.screen(),
            ground.texts());
    screen =
        RecordsScreen.ofLedgers(
            model,
            ground.texts(),
            ground.shell(),
            ground.chooser(),
            new RecordsScreen.Doors(ground.theme().get(), ground.goTo(), ground.home()));
  }

  /** Shows what can be done, and what was done last. */
  void open() {
    model.open();
    ground.shell().show(screen);
  }
}
