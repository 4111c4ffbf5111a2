package lanewarden.command;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import lanewarden.station.EventFolder;
import lanewarden.station.Listening;
import lanewarden.station.Overheard;
import lanewarden.station.WireView;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Listens to an instrument and shows everything it says. */
@Command(
    description = {
      "Listen to an instrument, or to a capture, and show every byte and what it became: a reading,"
          + " or a refusal with its reason. Needs no event and signs nothing.",
      "Goes on until Ctrl-C, the end of the capture, or as long as said."
    })
final class ListenCommand implements Callable<Integer> {
  private static final int LONG_WORD = 12;

  private final Workplace workplace;

  /** What to listen to: one of the four. */
  static final class To {
    @Option(
        names = "--port",
        required = true,
        paramLabel = "PORT",
        description = "A serial port, such as /dev/ttyUSB0 or COM3.")
    private Optional<String> port = Optional.empty();

    @Option(
        names = "--capture",
        required = true,
        paramLabel = "FILE",
        description = "A capture, played back.")
    private Optional<Path> capture = Optional.empty();

    @Option(
        names = "--event",
        required = true,
        paramLabel = "FOLDER",
        description = "The instrument of an event, or both where two stand in series.")
    private Optional<Path> event = Optional.empty();

    @Option(names = "--ports", required = true, description = "Only list the serial ports here.")
    private boolean ports;
  }

  @ArgGroup(multiplicity = "1")
  private To to = new To();

  @Option(
      names = "--profile",
      paramLabel = "FILE",
      description =
          "How the instrument speaks (TOML), or the name of one that the program carries; see"
              + " config/profiles.")
  private Optional<Path> profile = Optional.empty();

  @Option(
      names = "--pace",
      paramLabel = "NUMBER",
      defaultValue = "0",
      description = "Of a capture: 1 waits as long as it did (default: ${DEFAULT-VALUE}).")
  private double pace;

  @Option(names = "--seconds", paramLabel = "NUMBER", description = "Stop after so many seconds.")
  private Optional<Long> seconds = Optional.empty();

  @Option(
      names = "--trial",
      description = "At the end say what does not fit between profile and instrument.")
  private boolean trial;

  @Option(names = "--json", description = "Tell everything as JSON, an object a line.")
  private boolean json;

  ListenCommand(Workplace workplace) {
    this.workplace = workplace;
  }

  @Override
  public Integer call() throws Exception {
    if (to.ports) {
      Listening.ports().forEach(this::port);
      return ExitCode.FINE;
    }
    if (to.event.isPresent()) {
      return listen(Listening.toEvent(new EventFolder(to.event.get()), workplace.here()));
    }
    Path speaks =
        profile.orElseThrow(
            () ->
                CommandRefused.misstep(
                    "NO-PROFILE",
                    "Nothing was listened to.",
                    "It is not said how the instrument speaks.",
                    "Name a sentence profile with --profile FILE."));
    Listening listening =
        to.capture.isPresent()
            ? Listening.toCapture(to.capture.get(), speaks, pace, workplace.here())
            : Listening.toPort(to.port.orElseThrow(), speaks, workplace.here());
    return listen(listening);
  }

  private int listen(Listening listening) throws Exception {
    CountDownLatch ended = new CountDownLatch(1);
    return new OrderlyEnd(listening::close, workplace.terminal())
        .after(
            () -> {
              listening.start(heard -> tell(heard, listening, ended));
              wait(ended);
              return ExitCode.FINE;
            });
  }

  private void tell(Overheard heard, Listening listening, CountDownLatch ended) {
    workplace.terminal().result(json ? json(heard) : line(heard));
    if (heard.kind() == Overheard.Kind.LINK_CLOSED) {
      if (trial) {
        tellMisfits(listening);
      }
      ended.countDown();
    }
  }

  /** Once the link is closed, however that came: nothing more will be heard. */
  private void tellMisfits(Listening listening) {
    WireView wire = listening.wire();
    wire.misfits().forEach(misfit -> tellTrial(misfit.key(), misfit.words()));
    if (wire.misfits().isEmpty()) {
      tellTrial("", WireNarration.fits(wire));
    }
  }

  private void tellTrial(String key, String words) {
    workplace
        .terminal()
        .result(
            json
                ? JsonLine.of(Map.of("kind", "trial", "key", key, "words", words))
                : padded("trial") + (key.isEmpty() ? "" : key + "  ") + words);
  }

  private static String padded(String word) {
    return word + " ".repeat(LONG_WORD - word.length());
  }

  private void wait(CountDownLatch ended) throws InterruptedException {
    if (seconds.isEmpty()) {
      ended.await();
    } else if (!ended.await(seconds.get(), TimeUnit.SECONDS)) {
      workplace.terminal().say("The time is over.");
    }
  }

  private void port(String path) {
    workplace.terminal().result(json ? JsonLine.of(Map.of("port", path)) : path);
  }

  private static String line(Overheard heard) {
    return (padded(heard.kind().word())
            + (heard.raw().isEmpty() ? "" : heard.raw() + "  ")
            + heard.speed().map(speed -> speed + "  ").orElse("")
            + heard.words())
        .stripTrailing();
  }

  private static String json(Overheard heard) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("at", heard.at().toString());
    members.put("kind", heard.kind().word());
    members.put("raw", heard.raw());
    heard.speed().ifPresent(speed -> members.put("speed", speed.toString()));
    members.put("words", heard.words());
    return JsonLine.of(members);
  }
}
