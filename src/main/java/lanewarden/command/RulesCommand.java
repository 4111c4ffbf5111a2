package lanewarden.command;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import lanewarden.rules.Division;
import lanewarden.station.WrittenRules;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says what a rule book demands. */
@Command(
    description = {
      "Say in plain sentences what a rule book demands of each division, made from the rules"
          + " themselves.",
      "A faulty rule book is answered with every fault, its line and column, and the mend."
    })
final class RulesCommand implements Callable<Integer> {
  private final Workplace workplace;

  @Parameters(
      paramLabel = "FILE",
      description = "The rule book, or an event's folder with one in it.")
  private Path file = Path.of("");

  @Option(
      names = "--division",
      paramLabel = "CODE",
      description = "Only the division with this code.")
  private Optional<String> code = Optional.empty();

  @Option(names = "--json", description = "Answer with one JSON object.")
  private boolean json;

  RulesCommand(Workplace workplace) {
    this.workplace = workplace;
  }

  @Override
  public Integer call() throws Exception {
    WrittenRules rules = WrittenRules.read(file);
    List<Division> wanted =
        code.isPresent() ? List.of(rules.division(code.get())) : rules.divisions();
    Terminal terminal = workplace.terminal();
    if (json) {
      terminal.result(JsonLine.of(members(rules, wanted)));
    } else {
      terminal.result(Notice.of("event", rules.event() + ", edition " + rules.edition()).line());
      wanted.forEach(this::tell);
    }
    return ExitCode.FINE;
  }

  private void tell(Division division) {
    Terminal terminal = workplace.terminal();
    terminal.result("");
    terminal.result(division.code() + "  " + division.name());
    division.sentences().forEach(sentence -> terminal.result("  " + sentence));
  }

  private static Map<String, Object> members(WrittenRules rules, List<Division> wanted) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("event", rules.event());
    members.put("edition", rules.edition());
    members.put("sha256", rules.sha256());
    members.put("divisions", wanted.stream().map(RulesCommand::members).toList());
    return members;
  }

  private static Map<String, Object> members(Division division) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("code", division.code());
    members.put("name", division.name());
    members.put("demands", division.sentences());
    return members;
  }
}
