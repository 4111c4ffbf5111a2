package lanewarden.command;

import java.nio.file.Path;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import lanewarden.station.CheckUp;
import lanewarden.station.EventFolder;
import lanewarden.station.SelfCheck;
import lanewarden.station.SupportBundle;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Looks a station over. */
@Command(
    description = {
      "Look a station over before a day begins: clock, disk, log, port, ledger, keys, rule book,"
          + " roster, instrument; what is not as it should be comes with its remedy.",
      "Works beside an open line. Exit code 0 if nothing is wrong, 3 if something is."
    })
final class CheckUpCommand implements Callable<Integer> {
  private static final String INDENT = " ".repeat(10);

  private final Workplace workplace;

  @Parameters(paramLabel = "FOLDER", description = "The event's folder.")
  private Path folder = Path.of("");

  @Option(
      names = "--bundle",
      paramLabel = "ZIP",
      description = {
        "Also write what whoever keeps the program needs to help: a ZIP of plain texts without"
            + " names, bibs, readings and keys. Each text is told before it is written."
      })
  private @Nullable Path bundle;

  @Option(names = "--json", description = "Answer with one JSON object.")
  private boolean json;

  CheckUpCommand(Workplace workplace) {
    this.workplace = workplace;
  }

  @Override
  public Integer call() throws Exception {
    EventFolder event = new EventFolder(folder);
    CheckUp checkUp = new CheckUp(workplace.here(), ZoneId.systemDefault());
    SelfCheck found = checkUp.of(event, Optional.empty());
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("worst", found.worst().word());
    members.put("points", found.points().stream().map(CheckUpCommand::members).toList());
    if (!json) {
      tell(found);
    }
    if (bundle != null) {
      SupportBundle made = checkUp.bundle(event, found);
      members.put("bundle", written(made, bundle));
    }
    if (json) {
      workplace.terminal().result(JsonLine.of(members));
    }
    return found.worst() == SelfCheck.State.WRONG ? ExitCode.PROOF : ExitCode.FINE;
  }

  private void tell(SelfCheck found) {
    for (SelfCheck.Point point : found.points()) {
      say(point.state().word(), point.subject().word() + ": " + point.found());
      point.details().lines().forEach(this::more);
      point.remedy().lines().map(remedy -> "what to do: " + remedy).forEach(this::more);
    }
    say(
        "found",
        found.count(SelfCheck.State.WRONG)
            + " wrong, "
            + found.count(SelfCheck.State.ATTENTION)
            + " to look at, "
            + found.count(SelfCheck.State.GOOD)
            + " good");
  }

  private void more(String words) {
    workplace.terminal().result(INDENT + words);
  }

  private void say(String kind, String words) {
    String word = kind + " ".repeat(Math.max(1, INDENT.length() - kind.length()));
    workplace.terminal().result(word + words);
  }

  private Map<String, Object> written(SupportBundle made, Path file) throws Exception {
    List<Map<String, Object>> parts = new ArrayList<>();
    for (SupportBundle.Part part : made.parts()) {
      parts.add(Map.of("name", part.name(), "holds", part.holds(), "bytes", part.bytes()));
      if (!json) {
        say("part", part.name() + ", " + part.bytes() + " bytes: " + part.holds());
      }
    }
    made.write(file);
    if (!json) {
      say("bundle", file.toString());
    }
    return Map.of("file", file.toString(), "parts", parts);
  }

  private static Map<String, Object> members(SelfCheck.Point point) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("subject", point.subject().word());
    members.put("state", point.state().word());
    members.put("found", point.found());
    members.put("details", point.details());
    members.put("remedy", point.remedy());
    return members;
  }
}
