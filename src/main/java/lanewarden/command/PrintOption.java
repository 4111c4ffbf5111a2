package lanewarden.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import lanewarden.audit.printing.PrintRefused;
import lanewarden.audit.printing.Printers;
import lanewarden.station.Trouble;
import picocli.CommandLine.Option;

/** Whether and where what was made is printed. */
final class PrintOption {
  /** No printer is called so. */
  private static final String USUAL = "";

  @Option(
      names = "--print",
      arity = "0..1",
      fallbackValue = USUAL,
      paramLabel = "PRINTER",
      description = "Print it too, without asking (default: on the system's usual printer).")
  private Optional<String> printer = Optional.empty();

  /**
   * Prints the file, if that is wanted.
   *
   * @return the name of the printer that took it
   */
  Optional<String> print(Path pdf) throws CommandRefused, IOException {
    if (printer.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          Printers.ofSystem().print(pdf, printer.filter(name -> !name.equals(USUAL))));
    } catch (PrintRefused e) {
      throw new CommandRefused(
          new Trouble(e.what(), e.why(), e.remedy(), e.code(), Trouble.Kind.ENVIRONMENT));
    }
  }
}
