package lanewarden.command;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import lanewarden.station.RuleDraft;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Opens the rule studio on a rule book. */
@Command(
    description = {
      "Open the rule studio: write a rule book and see what each rule does to archers.",
      "No event is needed. Where no display can be opened, exit code 4."
    },
    footer = {
      "",
      "Saving keeps the file before beside it. While something is wrong, a draft is saved beside"
          + " the rule book (*.draft.toml) and the rule book stays as it is."
    })
final class StudioCommand implements Callable<Integer> {
  private final Terminal terminal;
  private final StudioScreen studio;

  @Parameters(paramLabel = "RULE-BOOK", description = "The rule book, or a draft of one.")
  private Path ruleBook = Path.of("");

  StudioCommand(Terminal terminal, StudioScreen studio) {
    this.terminal = terminal;
    this.studio = studio;
  }

  @Override
  public Integer call() throws Exception {
    RuleDraft draft = RuleDraft.open(ruleBook);
    try {
      studio.show(draft);
      return ExitCode.FINE;
    } catch (NoDisplay e) {
      terminal.say(
          e.inWords()
              + ". The rule book is a text file, "
              + ruleBook
              + ": change it with any editor.");
      return ExitCode.ENVIRONMENT;
    }
  }
}
