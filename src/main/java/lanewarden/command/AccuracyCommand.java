package lanewarden.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.concurrent.Callable;
import lanewarden.station.Budget;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Prints what makes a station's readings uncertain, and by how much. */
@Command(
    description = {
      "Work out how far to believe a reading: what makes it uncertain and by how much, after the"
          + " GUM, from the section [accuracy] of a station's settings.",
      "See config/station.toml for what can be stated there."
    })
final class AccuracyCommand implements Callable<Integer> {
  private static final String GAP = "  ";

  private final Workplace workplace;

  @Parameters(paramLabel = "SETTINGS", description = "A station.toml, or the event's folder.")
  private Path settings = Path.of("");

  @Option(
      names = "--speed",
      paramLabel = "SPEED",
      defaultValue = "300 ft/s",
      description = "Of the reading, with its unit (default: ${DEFAULT-VALUE}).")
  private String speed = "";

  @Option(names = "--json", description = "Answer with one JSON object.")
  private boolean json;

  AccuracyCommand(Workplace workplace) {
    this.workplace = workplace;
  }

  @Override
  public Integer call() throws Exception {
    Budget budget = Budget.of(settings, Budget.speed(speed));
    Terminal terminal = workplace.terminal();
    if (json) {
      terminal.result(JsonLine.of(members(budget)));
    } else {
      table(budget).forEach(terminal::result);
      terminal.result(budget.total());
    }
    return ExitCode.FINE;
  }

  private static List<String> table(Budget budget) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("influence", "standard", "degrees", "from"));
    budget
        .influences()
        .forEach(
            i ->
                rows.add(
                    List.of(
                        i.name(),
                        i.standard().toString(),
                        Budget.inWords(i.degrees()),
                        i.words())));
    return rows.stream()
        .map(
            row ->
                padded(rows, row, 0)
                    + GAP
                    + padded(rows, row, 1)
                    + GAP
                    + padded(rows, row, 2)
                    + GAP
                    + row.get(3))
        .toList();
  }

  private static String padded(List<List<String>> rows, List<String> row, int column) {
    int width = rows.stream().mapToInt(r -> r.get(column).length()).max().orElse(0);
    return row.get(column) + " ".repeat(width - row.get(column).length());
  }

  private static Map<String, Object> members(Budget budget) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("speed", budget.at().toString());
    members.put("influences", budget.influences().stream().map(AccuracyCommand::members).toList());
    members.put("standard", budget.standard().toString());
    degrees(members, budget.degrees());
    members.put("level", Budget.LEVEL);
    members.put("factor", budget.factor());
    members.put("expanded", budget.expanded().toString());
    return members;
  }

  private static Map<String, Object> members(Budget.Influence influence) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("name", influence.name());
    members.put("standard", influence.standard().toString());
    degrees(members, influence.degrees());
    members.put("words", influence.words());
    return members;
  }

  /** Left out where there are infinitely many: JSON has no number for that. */
  private static void degrees(Map<String, Object> members, OptionalLong degrees) {
    degrees.ifPresent(count -> members.put("degrees", count));
  }
}
