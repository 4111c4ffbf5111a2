package lanewarden.command;

import java.util.function.Function;
import lanewarden.quantity.Force;
import lanewarden.quantity.Mass;
import lanewarden.quantity.Percent;
import lanewarden.quantity.QuantityException;
import lanewarden.quantity.Speed;
import lanewarden.station.RuleCurve;
import picocli.CommandLine.Option;

/** What is supposed of archers and instrument, to say what a rule does to them. */
final class Supposing {

  @Option(
      names = "--arrows",
      paramLabel = "SPEED",
      defaultValue = "2 ft/s",
      description =
          "Standard deviation of an archer's arrows, one to the next (default: ${DEFAULT-VALUE}).")
  private String arrows = "";

  @Option(
      names = "--reading",
      paramLabel = "SPEED",
      defaultValue = "0.5 ft/s",
      description =
          "The instrument's standard uncertainty, new with each reading (default:"
              + " ${DEFAULT-VALUE}).")
  private String reading = "";

  @Option(
      names = "--calibration",
      paramLabel = "SPEED",
      defaultValue = "1 ft/s",
      description =
          "The instrument's standard uncertainty that all readings share (default:"
              + " ${DEFAULT-VALUE}).")
  private String calibration = "";

  @Option(
      names = "--void-shots",
      paramLabel = "SHARE",
      defaultValue = "5 %",
      description = "Shots that give no reading that stands (default: ${DEFAULT-VALUE}).")
  private String voids = "";

  @Option(
      names = "--faster",
      paramLabel = "SPEED",
      defaultValue = "5 ft/s",
      description =
          "How far over the limit an archer is who should fail (default:" + " ${DEFAULT-VALUE}).")
  private String excess = "";

  @Option(
      names = "--arrow",
      paramLabel = "MASS",
      defaultValue = "400 gr",
      description = "The arrow, where a clause asks for its mass (default: ${DEFAULT-VALUE}).")
  private String arrow = "";

  @Option(
      names = "--draw-weight",
      paramLabel = "FORCE",
      defaultValue = "50 lbf",
      description =
          "The bow's draw weight, set and certified, where a clause asks for it (default:"
              + " ${DEFAULT-VALUE}).")
  private String draw = "";

  /**
   * @throws CommandRefused if one of them cannot be read
   */
  RuleCurve.Supposed supposed() throws CommandRefused {
    Force force = read("--draw-weight", draw, Force::parse);
    RuleCurve.Supposed supposed =
        new RuleCurve.Supposed(
            read("--arrows", arrows, Speed::parse),
            read("--reading", reading, Speed::parse),
            read("--calibration", calibration, Speed::parse),
            read("--void-shots", voids, Percent::parse),
            read("--faster", excess, Speed::parse),
            read("--arrow", arrow, Mass::parse),
            force,
            force);
    if (supposed.excess().value().signum() == 0 || supposed.voids().fraction().doubleValue() >= 1) {
      throw refused("--faster must be more than zero, and --void-shots less than 100 %.");
    }
    return supposed;
  }

  private static <T> T read(String option, String typed, Function<String, T> parser)
      throws CommandRefused {
    try {
      return parser.apply(typed);
    } catch (QuantityException e) {
      throw refused(option + ": " + e.getMessage() + ".");
    }
  }

  private static CommandRefused refused(String why) {
    return CommandRefused.misstep(
        "SUPPOSED",
        "What is supposed of archers and instrument cannot be read.",
        why,
        "Write a number with its unit in quotes, such as \"2 ft/s\".");
  }

  /** In words, for the line above the figures. */
  String inWords() {
    return "arrows that scatter by "
        + arrows
        + ", an instrument uncertain by "
        + reading
        + " a reading and "
        + calibration
        + " in all, "
        + voids
        + " void shots";
  }
}
