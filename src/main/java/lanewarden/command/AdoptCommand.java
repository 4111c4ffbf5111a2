package lanewarden.command;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import lanewarden.station.EventFolder;
import lanewarden.station.EventOffice;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Puts a changed rule book in force. */
@Command(
    description = {
      "Put the rule book that now lies in the event's folder in force; the organizer signs it.",
      "The reason is signed with it and stands in the report. Verdicts that were given keep their"
          + " rule, and so does a check at the line. No station may have the event open: at an open"
          + " line, type adopt REASON."
    })
final class AdoptCommand implements Callable<Integer> {
  private final Workplace workplace;

  @Parameters(paramLabel = "FOLDER", description = "The event's folder.")
  private Path folder = Path.of("");

  @Option(
      names = "--reason",
      paramLabel = "TEXT",
      required = true,
      description = "Why the rule book is changed.")
  private String reason = "";

  @Mixin private OrganizerOptions organizer = new OrganizerOptions();

  @Option(names = "--json", description = "Answer with one JSON object.")
  private boolean json;

  AdoptCommand(Workplace workplace) {
    this.workplace = workplace;
  }

  @Override
  public Integer call() throws Exception {
    Terminal terminal = workplace.terminal();
    EventFolder event = new EventFolder(folder);
    char[] passphrase = organizer.passphrase(event, terminal);
    EventOffice.Adopted adopted =
        new EventOffice(event, workplace.here()).adoptRuleBook(organizer.key(), passphrase, reason);
    if (json) {
      Map<String, Object> members = new LinkedHashMap<>();
      members.put("folder", folder.toString());
      members.put("ruleBook", adopted.ruleBook());
      members.put("reason", reason.strip());
      adopted.remark().ifPresent(remark -> members.put("remark", remark.code()));
      terminal.result(JsonLine.of(members));
    } else {
      terminal.result(Notice.of("in force", adopted.ruleBook()).line());
    }
    adopted.remark().ifPresent(remark -> terminal.say(remark.toString()));
    return ExitCode.FINE;
  }
}
