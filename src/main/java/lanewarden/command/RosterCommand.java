package lanewarden.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import lanewarden.roster.RosterSheet;
import lanewarden.station.CompetitorList;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Shows what becomes of a list of competitors. Makes nothing. */
@Command(
    description = {
      "Show what make would take from a list of competitors: which column is which, the roster that"
          + " comes of it, and every fault with its line in the list. Nothing is made.",
      "The list is a table with a header line and commas, semicolons or tabs between its fields. A"
          + " unit in brackets in a heading, such as \"Arrow (gr)\", is that of its bare numbers."
    })
final class RosterCommand implements Callable<Integer> {
  private final Workplace workplace;

  @Parameters(paramLabel = "FILE", description = "The list of competitors (CSV).")
  private Path file = Path.of("");

  @Mixin private ColumnOptions columns = new ColumnOptions();

  @Option(
      names = "--rules",
      paramLabel = "RULE-BOOK",
      description =
          "The rule book, or an event's folder with one, whose divisions the list must keep to.")
  private Optional<Path> rules = Optional.empty();

  @Option(names = "--json", description = "Answer with one JSON object.")
  private boolean json;

  RosterCommand(Workplace workplace) {
    this.workplace = workplace;
  }

  @Override
  public Integer call() throws Exception {
    CompetitorList list = CompetitorList.read(file, columns.said(), rules);
    Terminal terminal = workplace.terminal();
    if (json) {
      terminal.result(JsonLine.of(members(list)));
    } else {
      told(list).forEach(terminal::result);
    }
    list.faults().forEach(fault -> terminal.say(fault.words()));
    return list.faults().isEmpty() ? ExitCode.FINE : ExitCode.USAGE;
  }

  private List<String> told(CompetitorList list) {
    List<String> lines = new ArrayList<>();
    for (CompetitorList.Column column : list.fates()) {
      if (!column.titles().isEmpty()) {
        lines.add(
            Notice.of(
                    "column",
                    column.number()
                        + " \""
                        + column.heading()
                        + "\" is "
                        + String.join(" and ", column.titles()))
                .line());
      }
    }
    ColumnOptions.leftOut(list).forEach(words -> lines.add(Notice.of("left out", words).line()));
    list.mapped()
        .ifPresent(
            mapped -> {
              List<List<String>> rows = new ArrayList<>();
              rows.add(titles(list));
              rows.addAll(mapped.rows());
              lines.add("");
              lines.addAll(Columns.lines(rows, rows.get(0).size()));
            });
    lines.add("");
    lines.add(Notice.of("lines", Integer.toString(list.sheet().size())).line());
    if (rules.isEmpty()) {
      lines.add(Notice.of("note", "The divisions were compared with no rule book.").line());
    }
    int faults = list.faults().size();
    lines.add(Notice.of("faults", faults == 0 ? "none" : Integer.toString(faults)).line());
    return lines;
  }

  private static List<String> titles(CompetitorList list) {
    return RosterSheet.wanted().stream()
        .map(RosterSheet.Wanted::title)
        .filter(list.columns()::containsKey)
        .toList();
  }

  private Map<String, Object> members(CompetitorList list) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("file", list.file());
    members.put("lines", list.sheet().size());
    members.put("columns", list.fates().stream().map(RosterCommand::members).toList());
    members.put("titles", titles(list));
    members.put("rows", list.mapped().map(RosterSheet.Mapped::rows).orElse(List.of()));
    members.put("divisionsCompared", rules.isPresent());
    members.put("faults", list.faults().stream().map(RosterCommand::members).toList());
    return members;
  }

  private static Map<String, Object> members(CompetitorList.Column column) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("number", column.number());
    members.put("heading", column.heading());
    members.put("takenFor", column.titles());
    column.near().ifPresent(near -> members.put("mayBe", near));
    return members;
  }

  private static Map<String, Object> members(CompetitorList.Fault fault) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("line", fault.line());
    members.put("column", fault.column());
    members.put("expected", fault.expected());
    members.put("found", fault.found());
    members.put("mend", fault.mend());
    return members;
  }
}
