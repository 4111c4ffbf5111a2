package lanewarden.command;

import java.util.Arrays;
import java.util.concurrent.Callable;
import lanewarden.station.ProgramLog;
import lanewarden.station.Surroundings;
import lanewarden.station.Trouble;
import picocli.CommandLine;

/** The program as it is started: chooses the command, runs it, and says how it went. */
public final class Program {
  private static final int HELP_WIDTH = 100;
  private static final String JSON = "--json";

  private final Terminal terminal;
  private final Surroundings here;
  private final Screens screens;
  private final StudioScreen studio;
  private final FirstScreen first;

  /** A program that reads, writes and shows where it is told. */
  public Program(
      Terminal terminal,
      Surroundings here,
      Screens screens,
      StudioScreen studio,
      FirstScreen first) {
    this.first = first;
    this.terminal = terminal;
    this.here = here;
    this.screens = screens;
    this.studio = studio;
  }

  /**
   * Runs a command; with no argument, or an event's folder as the only one, opens the start screen.
   *
   * @param arguments as typed behind the program's name
   * @return the exit code: 0 fine, 1 our bug, 2 wrong usage, 3 a failed proof, 4 environment
   */
  public int run(String... arguments) {
    Workplace workplace = new Workplace(terminal, here, screens);
    CommandLine program = new CommandLine(new Lanewarden());
    program.getCommandSpec().versionProvider(() -> new String[] {here.program()});
    add(program, "make", new MakeCommand(workplace));
    CommandLine line = new CommandLine(new LineCommand(workplace));
    line.getCommandSpec().usageMessage().footer("", "Words at the line:", LineWord.list());
    program.addSubcommand("line", line);
    add(program, "rules", new RulesCommand(workplace));
    add(program, "accuracy", new AccuracyCommand(workplace));
    add(program, "plan", new PlanCommand(workplace));
    add(program, "compare", new CompareCommand(workplace));
    add(program, "prospects", new ProspectsCommand(workplace));
    add(program, "adopt", new AdoptCommand(workplace));
    add(program, "official", new OfficialCommand(workplace));
    add(program, "passphrase", new PassphraseCommand(workplace));
    add(program, "draw", new DrawCommand(workplace));
    add(program, "protest", new ProtestCommand(workplace));
    add(program, "ruling", new RulingCommand(workplace));
    add(program, "correct", new CorrectCommand(workplace));
    add(program, "confirm", new ConfirmCommand(workplace));
    add(program, "docket", new DocketCommand(workplace));
    add(program, "kiosk", new KioskCommand(workplace));
    add(program, "studio", new StudioCommand(terminal, studio));
    add(program, "check-up", new CheckUpCommand(workplace));
    add(program, "listen", new ListenCommand(workplace));
    add(program, "witness", new WitnessCommand(workplace));
    add(program, "verify", new VerifyCommand(workplace));
    add(program, "seal-key", new SealKeyCommand(workplace));
    add(program, "report", new ReportCommand(workplace));
    add(program, "export", new ExportCommand(workplace));
    add(program, "import", new ImportCommand(workplace));
    add(program, "slip", new SlipCommand(workplace));
    add(program, "demo", new DemoCommand(workplace));
    program.setOut(terminal.results());
    program.setErr(terminal.talk());
    program.setUsageHelpWidth(HELP_WIDTH);
    program.setParameterExceptionHandler(this::misused);
    program.setExecutionExceptionHandler((e, command, parsed) -> failed(e, command));
    return logged(StartUp.isMeant(arguments, program), arguments, program);
  }

  /** Notes beginning and end; of a screen without a terminal, the screen tells if it cannot be. */
  private int logged(boolean fromMenu, String[] arguments, CommandLine program) {
    ProgramLog log = here.log();
    boolean known =
        arguments.length > 0 && program.getSubcommands().containsKey(arguments[0]) && !fromMenu;
    log.programBegins(here.program(), known ? arguments[0] : "no command");
    Thread.UncaughtExceptionHandler before = Thread.getDefaultUncaughtExceptionHandler();
    Thread.setDefaultUncaughtExceptionHandler(
        (thread, thrown) -> terminal.say(Trouble.of(thrown).toString()));
    try {
      if (!fromMenu) {
        tellOf(log);
      }
      int code = fromMenu ? start(arguments, program) : program.execute(arguments);
      log.programEnds(code);
      tellOf(log);
      return code;
    } finally {
      Thread.setDefaultUncaughtExceptionHandler(before);
    }
  }

  private void tellOf(ProgramLog log) {
    log.untold().ifPresent(trouble -> terminal.say(trouble.toString()));
  }

  private int start(String[] arguments, CommandLine program) {
    try {
      return new StartUp(terminal, here, first).run(arguments, program);
    } catch (Exception e) {
      return failed(e, program);
    }
  }

  private static void add(CommandLine program, String name, Callable<Integer> command) {
    program.addSubcommand(name, command);
  }

  private int misused(CommandLine.ParameterException e, String[] arguments) {
    CommandLine command = e.getCommandLine();
    return refused(
        new Trouble(
            "The command was not understood.",
            String.valueOf(e.getMessage()),
            "Type " + command.getCommandSpec().qualifiedName() + " --help to see how it is used.",
            "COMMAND-LINE",
            Trouble.Kind.USAGE),
        Arrays.asList(arguments).contains(JSON));
  }

  private int failed(Exception e, CommandLine command) {
    if (e instanceof InterruptedException) {
      Thread.currentThread().interrupt();
    }
    CommandLine.Model.OptionSpec json = command.getCommandSpec().findOption(JSON);
    return refused(
        e instanceof CommandRefused refused ? refused.trouble() : Trouble.of(e),
        json != null && Boolean.TRUE.equals(json.getValue()));
  }

  private int refused(Trouble trouble, boolean json) {
    terminal.refusal(trouble, json);
    return ExitCode.of(trouble);
  }
}
