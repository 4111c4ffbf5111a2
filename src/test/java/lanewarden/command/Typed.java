package lanewarden.command;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import lanewarden.station.PracticeEvent;
import lanewarden.station.ProgramLog;

/** One run of the program with everything it said. */
final class Typed {
  private final ByteArrayOutputStream results = new ByteArrayOutputStream();
  private final ByteArrayOutputStream talk = new ByteArrayOutputStream();
  private final Deque<String> secrets = new ArrayDeque<>();
  private InputStream in = new ByteArrayInputStream(new byte[0]);
  private Screens screens =
      (opening, hint, full) -> {
        throw new NoDisplay("there is none in a test", new IllegalStateException());
      };
  private StudioScreen studio =
      draft -> {
        throw new NoDisplay("there is none in a test", new IllegalStateException());
      };
  private FirstScreen first =
      (line, event) -> {
        throw new NoDisplay("there is none in a test", new IllegalStateException());
      };
  private ProgramLog log = ProgramLog.none();
  private int code = -1;

  /** What is typed, line by line. */
  Typed typing(String... lines) {
    in = new ByteArrayInputStream((String.join("\n", lines) + "\n").getBytes(UTF_8));
    return this;
  }

  /** What is typed unseen. */
  Typed secretly(String... typed) {
    secrets.addAll(List.of(typed));
    return this;
  }

  Typed showing(Screens shown) {
    screens = shown;
    return this;
  }

  Typed showingStudio(StudioScreen shown) {
    studio = shown;
    return this;
  }

  Typed showingFirst(FirstScreen shown) {
    first = shown;
    return this;
  }

  Typed logging(ProgramLog opened) {
    log = opened;
    return this;
  }

  /** What can be typed, with all that belongs to it. */
  CommandTable table() {
    return new CommandTable(
        new Workplace(terminal(), PracticeEvent.here().with(log), screens),
        studio,
        (misused, arguments) -> ExitCode.USAGE,
        (failed, command, parsed) -> ExitCode.BUG);
  }

  private Terminal terminal() {
    return new Terminal(in, results, talk, UTF_8, keyboard());
  }

  Typed run(String... arguments) {
    Terminal terminal = terminal();
    code =
        new Program(terminal, PracticeEvent.here().with(log), screens, studio, first)
            .run(arguments);
    return this;
  }

  /** There is one only where something is typed unseen; else a script types. */
  private Optional<HiddenEntry> keyboard() {
    return secrets.isEmpty()
        ? Optional.empty()
        : Optional.of(prompt -> Optional.ofNullable(secrets.poll()).map(String::toCharArray));
  }

  int code() {
    return code;
  }

  String results() {
    return results.toString(UTF_8);
  }

  String talk() {
    return talk.toString(UTF_8);
  }

  List<String> lines() {
    return results().lines().toList();
  }

  @Override
  public String toString() {
    return "exit code " + code + "\n" + results() + "---\n" + talk();
  }
}
