package lanewarden.kiosk;

import java.time.ZoneId;
import java.util.Optional;
import java.util.function.Supplier;
import lanewarden.audit.comparison.ComparisonPaper;
import lanewarden.kiosk.audit.LedgerViewModel;
import lanewarden.kiosk.audit.RecordsScreen;
import lanewarden.kiosk.audit.RecordsViewModel;
import lanewarden.kiosk.checkup.CheckUpScreen;
import lanewarden.kiosk.checkup.CheckUpViewModel;
import lanewarden.kiosk.desk.Desk;
import lanewarden.kiosk.desk.SideTable;
import lanewarden.kiosk.form.Chooser;
import lanewarden.kiosk.form.Places;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.people.PeopleScreen;
import lanewarden.kiosk.people.PeopleViewModel;
import lanewarden.kiosk.protest.DocketWords;
import lanewarden.kiosk.protest.ProtestScreen;
import lanewarden.kiosk.protest.ProtestViewModel;
import lanewarden.kiosk.protest.SlipViewModel;
import lanewarden.kiosk.setups.ProspectsScreen;
import lanewarden.kiosk.setups.ProspectsViewModel;
import lanewarden.kiosk.setups.SetUpsScreen;
import lanewarden.kiosk.setups.SetUpsViewModel;
import lanewarden.station.EventFolder;
import lanewarden.station.LineView;

/**
 * The screens beside the line, which one may go to whether or not anybody is on duty; on the
 * screen's thread.
 */
final class SideRooms {
  private final Shell shell;
  private final LedgerViewModel ledgers;
  private final RecordsViewModel records;
  private final RecordsScreen recordsScreen;
  private final ProtestViewModel protests;
  private final ProtestScreen protestScreen;
  private final PeopleViewModel people;
  private final PeopleScreen peopleScreen;
  private final ProspectsScreen prospects;
  private final SetUpsViewModel setUps;
  private final SetUpsScreen setUpsScreen;
  private final CheckUpViewModel checkUp;
  private final CheckUpScreen checkUpScreen;

  /**
   * @param post whose event it is
   * @param head of the ledger, as it now stands
   * @param chooser with which files are chosen, if there is one at the time
   * @param home where the way out leads
   */
  SideRooms(
      Desk desk,
      Shell shell,
      Texts texts,
      Doors doors,
      Post post,
      Makers makers,
      Front.Threads threads,
      Supplier<String> head,
      Supplier<Optional<Chooser>> chooser,
      Runnable home) {
    this.shell = shell;
    SideTable table = new SideTable(threads.report(), threads.screen());
    EventFolder folder = post.folder();
    ledgers =
        new LedgerViewModel(
            makers.paper(threads.random()),
            new DocketWords(texts, ZoneId.systemDefault()),
            Optional.of(folder),
            threads.report(),
            threads.screen(),
            texts);
    records = new RecordsViewModel(ledgers, desk, folder, threads.random(), texts);
    recordsScreen =
        RecordsScreen.of(
            records,
            post.key(),
            texts,
            shell,
            chooser,
            new RecordsScreen.Doors(doors.theme(), doors.goTo(), home));
    protests = new ProtestViewModel(desk, texts, ZoneId.systemDefault());
    protestScreen =
        new ProtestScreen(
            protests,
            new SlipViewModel(
                makers.slips(),
                makers.printing(),
                folder,
                head,
                threads.report(),
                threads.screen(),
                texts),
            texts,
            shell,
            new ProtestScreen.Doors(doors.theme(), doors.goTo(), home, home));
    people = new PeopleViewModel(desk, threads.random(), texts);
    peopleScreen =
        new PeopleScreen(
            people,
            post.key(),
            texts,
            shell,
            chooser,
            new PeopleScreen.Doors(doors.theme(), doors.goTo(), home));
    prospects =
        new ProspectsScreen(
            new ProspectsViewModel(
                (asked, answer, missed) ->
                    desk.ask(
                        station ->
                            station
                                .proceedings()
                                .outlook(asked.brought(), asked.scatter(), asked.only()),
                        answer,
                        missed),
                texts),
            texts,
            new ProspectsScreen.Doors(Optional.empty(), doors.theme(), doors.goTo(), home));
    setUps =
        new SetUpsViewModel(
            desk, new ComparisonPaper(threads.clock()), new Places(folder), table, texts);
    setUpsScreen =
        new SetUpsScreen(
            setUps,
            texts,
            shell,
            chooser,
            new SetUpsScreen.Doors(doors.theme(), doors.goTo(), home));
    checkUp = new CheckUpViewModel(makers.checkUp(), Optional.of(desk), folder, table, texts);
    checkUpScreen =
        new CheckUpScreen(
            checkUp, texts, shell, new CheckUpScreen.Doors(doors.theme(), doors.goTo(), home));
  }

  /** What became of the line. */
  void take(LineView view) {
    protests.take(view);
    records.take(view);
    setUps.take(view);
  }

  /** Whether a report is being made, or something is looked up. */
  boolean isBusy() {
    return ledgers.isBusy();
  }

  /**
   * Another page or panel is shown: protests that nobody looks at need not follow the ledger, and
   * the instrument's readings go to set-ups only while somebody looks at them.
   */
  void turned() {
    if (!shell.shows(protestScreen)) {
      protests.close();
    }
    if (!shell.shows(setUpsScreen)) {
      setUps.close();
    }
  }

  /** Nobody looks at any of them any more. */
  void close() {
    protests.close();
    setUps.close();
  }

  /**
   * To the protests.
   *
   * @param check the one that a protest is most likely against
   */
  void openProtests(Optional<Long> check) {
    protests.open(check);
    shell.show(protestScreen);
  }

  /** To the officials. */
  void openPeople() {
    people.open();
    shell.show(peopleScreen);
  }

  /** To the records. */
  void openRecords() {
    records.open();
    shell.show(recordsScreen);
  }

  /** To what awaits a set-up. */
  void openProspects() {
    shell.show(prospects);
  }

  /** To the set-ups that are shot beside each other. */
  void openSetUps() {
    setUps.open();
    shell.show(setUpsScreen);
  }

  /** To a check-up, which is made anew each time. */
  void openCheckUp() {
    checkUp.look();
    shell.show(checkUpScreen);
  }
}
