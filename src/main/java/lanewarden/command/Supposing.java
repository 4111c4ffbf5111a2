package lanewarden.command;

import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import lanewarden.station.Supposed;
import lanewarden.station.Supposition;
import picocli.CommandLine.Option;

/** What is supposed of archers and instrument, to say what a rule does to them. */
final class Supposing {

  @Option(
      names = "--arrows",
      paramLabel = "SPEED",
      defaultValue = Supposition.Usual.ARROWS,
      description =
          "Standard deviation of an archer's arrows, one to the next (default: ${DEFAULT-VALUE}).")
  private String arrows = "";

  @Option(
      names = "--reading",
      paramLabel = "SPEED",
      defaultValue = Supposition.Usual.READING,
      description =
          "The instrument's standard uncertainty, new with each reading (default:"
              + " ${DEFAULT-VALUE}).")
  private String reading = "";

  @Option(
      names = "--calibration",
      paramLabel = "SPEED",
      defaultValue = Supposition.Usual.CALIBRATION,
      description =
          "The instrument's standard uncertainty that all readings share (default:"
              + " ${DEFAULT-VALUE}).")
  private String calibration = "";

  @Option(
      names = "--void-shots",
      paramLabel = "SHARE",
      defaultValue = Supposition.Usual.VOIDS,
      description = "Shots that give no reading that stands (default: ${DEFAULT-VALUE}).")
  private String voids = "";

  @Option(
      names = "--faster",
      paramLabel = "SPEED",
      defaultValue = Supposition.Usual.EXCESS,
      description =
          "How far over the limit an archer is who should fail (default: ${DEFAULT-VALUE}).")
  private String excess = "";

  @Option(
      names = "--arrow",
      paramLabel = "MASS",
      description =
          "The arrow, where a clause asks for its mass (default: "
              + Supposition.Usual.ARROW
              + ", or one so light that the limit applies to it).")
  private String arrow = "";

  @Option(
      names = "--draw-weight",
      paramLabel = "FORCE",
      defaultValue = Supposition.Usual.DRAW,
      description =
          "The bow's draw weight as it is set, where a clause asks for it (default:"
              + " ${DEFAULT-VALUE}).")
  private String draw = "";

  @Option(
      names = "--certified",
      paramLabel = "FORCE",
      description =
          "Draw weight as the bow's certificate states it, where a clause asks for it (default: as"
              + " --draw-weight).")
  private Optional<String> certified = Optional.empty();

  /**
   * @throws CommandRefused if any of them cannot be read, with every fault
   */
  Supposed supposed() throws CommandRefused {
    Supposed.Typed read = Supposed.read(this::typed);
    if (read.supposed().isPresent()) {
      return read.supposed().get();
    }
    Set<String> faults = new LinkedHashSet<>();
    // One option may stand for both draw weights: its fault is told once
    read.faults().forEach((one, fault) -> faults.add(option(one) + " " + fault.getMessage()));
    throw CommandRefused.misstep(
        "SUPPOSED",
        "What is supposed of archers and instrument cannot be read.",
        String.join("\n       ", faults),
        "Correct what is named; a number with its unit stands in quotes, such as \"2 ft/s\".");
  }

  private String typed(Supposition one) {
    return switch (one) {
      case ARROWS -> arrows;
      case READING -> reading;
      case CALIBRATION -> calibration;
      case VOIDS -> voids;
      case EXCESS -> excess;
      case ARROW -> arrow;
      case DRAW -> draw;
      case CERTIFIED -> certified.orElse(draw);
    };
  }

  private String option(Supposition one) {
    return switch (one) {
      case ARROWS -> "--arrows";
      case READING -> "--reading";
      case CALIBRATION -> "--calibration";
      case VOIDS -> "--void-shots";
      case EXCESS -> "--faster";
      case ARROW -> "--arrow";
      case DRAW -> "--draw-weight";
      case CERTIFIED -> certified.isPresent() ? "--certified" : "--draw-weight";
    };
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
