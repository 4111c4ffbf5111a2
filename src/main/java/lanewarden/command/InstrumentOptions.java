package lanewarden.command;

import java.util.Optional;
import picocli.CommandLine.Option;

/** Where the readings of a line come from: the options of every command that opens one. */
final class InstrumentOptions {
  private static final String AS_ARCHERS_DO = "1";

  @Option(
      names = "--port",
      paramLabel = "PORT",
      description = "A serial port instead of the one in station.toml.")
  private Optional<String> port = Optional.empty();

  @Option(
      names = "--pace",
      paramLabel = "NUMBER",
      defaultValue = AS_ARCHERS_DO,
      description =
          "With the simulator: 1 takes as long as archers do, 0 no time (default: ${DEFAULT-VALUE}).")
  private double pace = Double.parseDouble(AS_ARCHERS_DO);

  /** The port to use instead of the settings'. */
  Optional<String> port() {
    return port;
  }

  /** How much of their time simulated archers take. */
  double pace() {
    return pace;
  }
}
