package lanewarden.command;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine;

/** The commands of the program by their names, in the order of its help. */
final class CommandTable {
  private static final int HELP_WIDTH = 100;

  private final Workplace workplace;
  private final CommandLine.IParameterExceptionHandler misused;
  private final CommandLine.IExecutionExceptionHandler failed;
  private final Map<String, Supplier<Callable<Integer>>> commands = new LinkedHashMap<>();

  /**
   * @param misused takes what was not understood
   * @param failed takes what kept a command from its end
   */
  CommandTable(
      Workplace workplace,
      StudioScreen studio,
      CommandLine.IParameterExceptionHandler misused,
      CommandLine.IExecutionExceptionHandler failed) {
    this.workplace = workplace;
    this.misused = misused;
    this.failed = failed;
    commands.put("make", () -> new MakeCommand(workplace));
    commands.put("roster", () -> new RosterCommand(workplace));
    commands.put("port", () -> new PortCommand(workplace));
    commands.put("line", () -> new LineCommand(workplace));
    commands.put("rules", () -> new RulesCommand(workplace));
    commands.put("accuracy", () -> new AccuracyCommand(workplace));
    commands.put("plan", () -> new PlanCommand(workplace));
    commands.put("set-ups", () -> new SetUpsCommand(workplace));
    commands.put("compare", () -> new CompareCommand(workplace));
    commands.put("prospects", () -> new ProspectsCommand(workplace));
    commands.put("adopt", () -> new AdoptCommand(workplace));
    commands.put("official", () -> new OfficialCommand(workplace));
    commands.put("passphrase", () -> new PassphraseCommand(workplace));
    commands.put("draw", () -> new DrawCommand(workplace));
    commands.put("protest", () -> new ProtestCommand(workplace));
    commands.put("ruling", () -> new RulingCommand(workplace));
    commands.put("correct", () -> new CorrectCommand(workplace));
    commands.put("confirm", () -> new ConfirmCommand(workplace));
    commands.put("docket", () -> new DocketCommand(workplace));
    commands.put("check", () -> new CheckCommand(workplace));
    commands.put("chart", () -> new ChartCommand(workplace));
    commands.put(KioskCommand.NAME, () -> new KioskCommand(workplace));
    commands.put("studio", () -> new StudioCommand(workplace.terminal(), studio));
    commands.put("check-up", () -> new CheckUpCommand(workplace));
    commands.put("listen", () -> new ListenCommand(workplace));
    commands.put("witness", () -> new WitnessCommand(workplace));
    commands.put("verify", () -> new VerifyCommand(workplace));
    commands.put("seal-key", () -> new SealKeyCommand(workplace));
    commands.put("report", () -> new ReportCommand(workplace));
    commands.put("export", () -> new ExportCommand(workplace));
    commands.put("import", () -> new ImportCommand(workplace));
    commands.put("slip", () -> new SlipCommand(workplace));
    commands.put("demo", () -> new DemoCommand(workplace));
  }

  /** What can be typed behind the program's name. */
  Set<String> names() {
    return Collections.unmodifiableSet(commands.keySet());
  }

  /** The whole command line, as its help shows it. */
  CommandLine whole() {
    return of(commands.keySet());
  }

  /**
   * What reads these arguments. Where they name a command it is that one alone: to learn what all
   * the others take would cost a third of a start.
   */
  CommandLine reading(String... arguments) {
    return arguments.length > 0 && commands.containsKey(arguments[0])
        ? of(List.of(arguments[0]))
        : whole();
  }

  private CommandLine of(Collection<String> names) {
    CommandLine program = new CommandLine(new Lanewarden());
    program.getCommandSpec().versionProvider(() -> new String[] {workplace.here().program()});
    commands.forEach(
        (name, command) -> {
          if (names.contains(name)) {
            program.addSubcommand(name, read(command.get()));
          }
        });
    program.setOut(workplace.terminal().results());
    program.setErr(workplace.terminal().talk());
    program.setUsageHelpWidth(HELP_WIDTH);
    program.setParameterExceptionHandler(misused);
    program.setExecutionExceptionHandler(failed);
    return program;
  }

  private static CommandLine read(Callable<Integer> command) {
    CommandLine line = new CommandLine(command);
    if (command instanceof LineCommand) {
      line.getCommandSpec().usageMessage().footer("", "Words at the line:", LineWord.list());
    } else if (command instanceof SetUpsCommand) {
      line.getCommandSpec().usageMessage().footer("", "Words there:", PracticeWord.list());
    }
    return line;
  }
}
