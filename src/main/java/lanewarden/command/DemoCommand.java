package lanewarden.command;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import lanewarden.audit.AuditSummary;
import lanewarden.station.CheckInLine;
import lanewarden.station.CurrentLine;
import lanewarden.station.DemoEvent;
import lanewarden.station.LedgerNames;
import lanewarden.station.LineOpening;
import lanewarden.station.StationException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Plays the invented event that the program carries with it. */
@Command(
    description = {
      "Open the screens on an invented event, with simulated arrows from captured bytes.",
      "Where no display can be opened, the same event is played in the terminal, with the same"
          + " ledger and report."
    },
    footer = {
      "",
      "The demo event's passphrase is known to everybody: its ledger proves nothing to anyone."
    })
final class DemoCommand implements Callable<Integer> {
  private static final double AT_THE_SCREENS = 0.5;
  private static final double IN_THE_TERMINAL = 0;

  private final Workplace workplace;

  @Option(
      names = "--into",
      paramLabel = "FOLDER",
      defaultValue = "lanewarden-demo",
      description =
          "Where the event is, or is made if it is not there (default: ${DEFAULT-VALUE}).")
  private Path folder = Path.of("");

  @Option(names = "--terminal", description = "Play it in the terminal even if there is a display.")
  private boolean terminal;

  @Option(names = "--fresh", description = "Begin anew: the demo event that is there is deleted.")
  private boolean fresh;

  @Option(
      names = "--pace",
      paramLabel = "NUMBER",
      description =
          "1 takes as long as archers do, 0 no time (default: 0.5 at the screens, 0 in the"
              + " terminal).")
  private Optional<Double> pace = Optional.empty();

  DemoCommand(Workplace workplace) {
    this.workplace = workplace;
  }

  @Override
  public Integer call() throws Exception {
    DemoEvent demo =
        fresh ? DemoEvent.anew(folder, workplace.here()) : DemoEvent.in(folder, workplace.here());
    if (!terminal && isShown(demo)) {
      tell("ledger", demo.folder().ledger());
      return ExitCode.FINE;
    }
    AuditSummary summary = play(demo);
    return ReportCommand.isFine(summary) ? ExitCode.FINE : ExitCode.PROOF;
  }

  /** Shows the screens until they are closed; false if no display can be opened. */
  private boolean isShown(DemoEvent demo) throws Exception {
    Terminal talk = workplace.terminal();
    CurrentLine line = new CurrentLine(workplace.here());
    return new OrderlyEnd(line::end, talk).after(() -> isShown(demo, line));
  }

  private boolean isShown(DemoEvent demo, CurrentLine line) throws StationException {
    try {
      workplace
          .screens()
          .show(
              new LineOpening(line, demo.folder(), Optional.empty(), pace.orElse(AT_THE_SCREENS)),
              Optional.of(hint()),
              false);
      return true;
    } catch (NoDisplay e) {
      workplace.terminal().say(e.inWords() + ": the event is played in this terminal.");
      return false;
    }
  }

  private AuditSummary play(DemoEvent there) throws Exception {
    Terminal talk = workplace.terminal();
    DemoEvent demo = unbegun(there);
    talk.say(hint());
    CheckInLine line =
        CheckInLine.open(
            demo.folder(), Optional.empty(), pace.orElse(IN_THE_TERMINAL), workplace.here());
    LineSession session =
        new LineSession(
            line,
            workplace,
            Optional.empty(),
            told -> talk.result(told.line()),
            trouble -> talk.refusal(trouble, false));
    new OrderlyEnd(session::leave, talk)
        .after(
            () -> {
              line.station().signIn(DemoEvent.OFFICIAL, DemoEvent.PASSPHRASE.toCharArray());
              session.obey(LineSource.of(DemoEvent.script()));
              return ExitCode.FINE;
            });
    Path pdf =
        demo.folder().path().resolve(LedgerNames.of(demo.folder().ledger()).report(true, false));
    AuditSummary summary = new ReportWriting(workplace).write(demo.folder().ledger(), pdf);
    tell("ledger", demo.folder().ledger());
    tell("report", pdf);
    return summary;
  }

  /** The morning is played from its beginning: a demo event that was begun is made anew. */
  private DemoEvent unbegun(DemoEvent demo) throws StationException {
    if (!demo.isBegun(workplace.here())) {
      return demo;
    }
    workplace.terminal().say("The demo event in " + folder + " was begun before: it is made anew.");
    return DemoEvent.anew(folder, workplace.here());
  }

  private void tell(String kind, Path path) {
    workplace.terminal().result(Notice.of(kind, path.toString()).line());
  }

  private static String hint() {
    return "For the demo, sign in as "
        + DemoEvent.OFFICIAL
        + "; the passphrase, also the organizer's: "
        + DemoEvent.PASSPHRASE;
  }
}
