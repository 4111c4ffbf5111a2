package lanewarden.command;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import lanewarden.station.CurrentLine;
import lanewarden.station.Surroundings;

/** The program started from a menu, or with a folder dropped on its icon: no command is named. */
final class StartUp {
  private final Terminal terminal;
  private final Surroundings here;
  private final FirstScreen first;

  StartUp(Terminal terminal, Surroundings here, FirstScreen first) {
    this.terminal = terminal;
    this.here = here;
    this.first = first;
  }

  /** Whether the arguments name no command: there are none, or the only one is a folder. */
  static boolean isMeant(String[] arguments, Set<String> commands) {
    return arguments.length == 0
        || (arguments.length == 1 && !commands.contains(arguments[0]) && isFolder(arguments[0]));
  }

  static boolean isFolder(String argument) {
    try {
      return Files.isDirectory(Path.of(argument));
    } catch (InvalidPathException e) {
      return false;
    }
  }

  /** Shows the start screen; where none can be shown, says what can be typed instead. */
  int run(String[] arguments, CommandTable table) throws Exception {
    Optional<Path> event =
        arguments.length == 0 ? Optional.empty() : Optional.of(Path.of(arguments[0]));
    CurrentLine line = new CurrentLine(here);
    return new OrderlyEnd(line::end, terminal).after(() -> run(line, event, table));
  }

  private int run(CurrentLine line, Optional<Path> event, CommandTable table) {
    try {
      first.show(line, event.map(folder -> folder.toAbsolutePath().normalize()));
      return ExitCode.FINE;
    } catch (NoDisplay e) {
      if (event.isEmpty()) {
        table.whole().usage(terminal.talk());
      }
      terminal.say(
          e.inWords()
              + ". Work in the terminal"
              + event.map(folder -> " with: line " + folder).orElse(" with the commands above."));
      return ExitCode.ENVIRONMENT;
    }
  }
}
