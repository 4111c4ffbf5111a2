package lanewarden.command;

import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.function.IntSupplier;
import lanewarden.station.ProgramEnd;
import lanewarden.station.ProgramLog;
import lanewarden.station.Surroundings;
import lanewarden.station.Trouble;
import picocli.CommandLine;

/** The program as it is started: chooses the command, runs it, and says how it went. */
public final class Program {
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
    Optional<Callable<Integer>> plain = KioskCommand.plain(workplace, arguments);
    if (plain.isPresent()) {
      return logged(first(arguments), true, () -> run(plain.get()));
    }
    CommandTable table = new CommandTable(workplace, studio, this::misused, this::failed);
    return StartUp.isMeant(arguments, table.names())
        ? logged("no command", false, () -> start(arguments, table))
        : logged(
            table.names().contains(first(arguments)) ? first(arguments) : "no command",
            true,
            () -> table.reading(arguments).execute(arguments));
  }

  /** Whether these arguments most likely ask for screens: what they need may be begun then. */
  public static boolean showsScreens(String... arguments) {
    return switch (first(arguments)) {
      case KioskCommand.NAME, "studio" -> true;
      case "demo" -> !Arrays.asList(arguments).contains("--terminal");
      default -> StartUp.isMeant(arguments, Set.of());
    };
  }

  private static String first(String[] arguments) {
    return arguments.length > 0 ? arguments[0] : "";
  }

  /**
   * Notes beginning and end.
   *
   * @param told whether a log that cannot be written is told first; a screen that has no terminal
   *     tells it by itself
   */
  private int logged(String command, boolean told, IntSupplier work) {
    ProgramLog log = here.log();
    log.programBegins(here.program(), command);
    Thread.UncaughtExceptionHandler before = Thread.getDefaultUncaughtExceptionHandler();
    Thread.setDefaultUncaughtExceptionHandler(
        (thread, thrown) -> {
          Trouble trouble = Trouble.of(thrown);
          if (!isOfTheEnd(trouble)) {
            terminal.say(trouble.toString());
          }
        });
    try {
      if (told) {
        tellOf(log);
      }
      int code = work.getAsInt();
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

  private int start(String[] arguments, CommandTable table) {
    return run(() -> new StartUp(terminal, here, first).run(arguments, table));
  }

  private int run(Callable<Integer> command) {
    try {
      return command.call();
    } catch (Exception e) {
      return failed(e, "", false);
    }
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

  private int failed(Exception e, CommandLine command, CommandLine.ParseResult parsed) {
    CommandLine.Model.OptionSpec json = command.getCommandSpec().findOption(JSON);
    return failed(
        e, command.getCommandName(), json != null && Boolean.TRUE.equals(json.getValue()));
  }

  private int failed(Exception e, String command, boolean json) {
    if (e instanceof CancellationException && ProgramEnd.isBegun()) {
      // What was being opened is not opened any more: whoever ends the program asked for that
      return ExitCode.ENVIRONMENT;
    }
    if (e instanceof InterruptedException) {
      Thread.currentThread().interrupt();
    }
    Trouble trouble = e instanceof CommandRefused refused ? refused.trouble() : Trouble.of(e);
    return refused(BesideTheLine.told(command, trouble), json);
  }

  private int refused(Trouble trouble, boolean json) {
    if (!isOfTheEnd(trouble)) {
      terminal.refusal(trouble, json);
    }
    return ExitCode.of(trouble);
  }

  /** What nobody expected is in the log; while the program is told to end it is no news. */
  private static boolean isOfTheEnd(Trouble trouble) {
    return trouble.kind() == Trouble.Kind.BUG && ProgramEnd.isBegun();
  }
}
