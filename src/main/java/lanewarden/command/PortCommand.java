package lanewarden.command;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import lanewarden.station.EventFolder;
import lanewarden.station.InstrumentPort;
import lanewarden.station.Listening;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Tells the port of an event's instrument, or writes another one into the event's settings. */
@Command(
    description = {
      "Tell which port the instrument of an event is on, and the serial ports here; with PORT write"
          + " that one into the event's settings, where everything else stays as it is.",
      "Refused while the event's line is open: it counts from the next opening, which takes the"
          + " settings into the ledger. For one opening only, line and kiosk have --port."
    })
final class PortCommand implements Callable<Integer> {
  private final Workplace workplace;

  @Parameters(index = "0", paramLabel = "FOLDER", description = "The event's folder.")
  private Path folder = Path.of("");

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "PORT",
      description = "The port from now on, such as /dev/ttyUSB0 or COM3.")
  private Optional<String> other = Optional.empty();

  @Option(names = "--json", description = "Answer with one JSON object.")
  private boolean json;

  PortCommand(Workplace workplace) {
    this.workplace = workplace;
  }

  @Override
  public Integer call() throws Exception {
    EventFolder event = new EventFolder(folder);
    Optional<String> none = InstrumentPort.none(event);
    if (none.isPresent() && other.isEmpty()) {
      tell(Optional.empty(), "none: " + none.get());
      return ExitCode.FINE;
    }
    InstrumentPort port = InstrumentPort.of(event);
    if (other.isPresent()) {
      port.change(other.get());
    }
    String now = other.orElse(port.now());
    tell(Optional.of(now), now + (other.isPresent() ? ", instead of " + port.now() : ""));
    return ExitCode.FINE;
  }

  private void tell(Optional<String> port, String words) {
    List<String> here = Listening.ports();
    Terminal terminal = workplace.terminal();
    if (json) {
      Map<String, Object> members = new LinkedHashMap<>();
      port.ifPresentOrElse(
          now -> members.put("port", now), () -> members.put("withoutPort", words));
      members.put("changed", other.isPresent());
      members.put("here", here);
      terminal.result(JsonLine.of(members));
      return;
    }
    terminal.result(Notice.of("port", words).line());
    here.forEach(path -> terminal.result(Notice.of("here", path).line()));
    if (here.isEmpty()) {
      terminal.result(Notice.of("here", "no serial port").line());
    }
  }
}
