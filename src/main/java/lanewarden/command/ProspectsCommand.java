package lanewarden.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import lanewarden.bench.Caution;
import lanewarden.bench.Prospect;
import lanewarden.quantity.Sentence;
import lanewarden.rules.Division;
import lanewarden.station.BroughtText;
import lanewarden.station.Outlook;
import lanewarden.station.SetUpText;
import lanewarden.station.Supposition;
import lanewarden.station.WrittenRules;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says before the event what awaits a set-up. */
@Command(
    description = {
      "Say, before the event, which divisions of a rule book would admit a set-up, and how often"
          + " it would pass the check of each.",
      "The speed is either expected (--speed) or follows from shots (--shots, once for each arrow"
          + " mass: two masses also tell the bow's virtual mass). It is a forecast, not a verdict."
    })
final class ProspectsCommand implements Callable<Integer> {
  private final Workplace workplace;

  @Parameters(
      paramLabel = "FILE",
      description = "The rule book, or an event's folder with one in it.")
  private Path file = Path.of("");

  @Option(
      names = "--arrow",
      required = true,
      paramLabel = "MASS",
      description = "Of the whole arrow, weighed; grains without a unit.")
  private String arrow = "";

  @Option(
      names = "--speed",
      paramLabel = "SPEED",
      description = "Expected of it on average; ft/s without a unit.")
  private String speed = "";

  @Option(
      names = "--uncertainty",
      paramLabel = "SPEED",
      defaultValue = "3 ft/s",
      description = "Standard uncertainty of --speed (default: ${DEFAULT-VALUE}).")
  private String uncertainty = "";

  @Option(
      names = "--shots",
      paramLabel = "SHOTS",
      description = "Readings of an arrow mass, such as \"377.5 gr: 290 291 289 ft/s\"; repeat it.")
  private List<String> shots = List.of();

  @Option(
      names = "--scatter",
      paramLabel = "SPEED",
      defaultValue = Supposition.Usual.ARROWS,
      description =
          "Standard deviation of the archer's arrows, one to the next (default:"
              + " ${DEFAULT-VALUE}).")
  private String scatter = "";

  @Option(
      names = "--draw-weight",
      paramLabel = "FORCE",
      description = "Of the bow as it is set; lbf without a unit.")
  private String drawWeight = "";

  @Option(
      names = "--certified",
      paramLabel = "FORCE",
      description = "Draw weight as the bow's certificate states it.")
  private String certified = "";

  @Option(
      names = "--draw-length",
      paramLabel = "LENGTH",
      description = "Of the archer with this bow; inches without a unit.")
  private String drawLength = "";

  @Option(
      names = "--brace-height",
      paramLabel = "LENGTH",
      description = "Of the bow; inches without a unit.")
  private String braceHeight = "";

  @Option(
      names = "--draw-curve",
      paramLabel = "POINTS",
      description =
          "The force-draw curve where it was measured, such as \"7 in 0 lbf, 9 in 22 lbf, 28 in 60"
              + " lbf\".")
  private String curve = "";

  @Option(
      names = "--division",
      paramLabel = "CODE",
      description = "Only the division with this code.")
  private Optional<String> code = Optional.empty();

  @Option(names = "--json", description = "Answer with one JSON object.")
  private boolean json;

  ProspectsCommand(Workplace workplace) {
    this.workplace = workplace;
  }

  @Override
  public Integer call() throws Exception {
    WrittenRules rules = WrittenRules.read(file);
    Outlook outlook =
        Outlook.of(
            rules.wanted(code.orElse("")),
            new BroughtText(
                new SetUpText(arrow, drawWeight, certified, drawLength, braceHeight),
                speed,
                uncertainty,
                shots,
                curve),
            scatter);
    if (json) {
      workplace.terminal().result(JsonLine.of(members(rules, outlook)));
    } else {
      tell(rules, outlook);
    }
    return ExitCode.FINE;
  }

  private void tell(WrittenRules rules, Outlook outlook) {
    Terminal terminal = workplace.terminal();
    terminal.result(Notice.of("event", rules.event() + ", edition " + rules.edition()).line());
    outlook.sentences().forEach(sentence -> terminal.result(sentence.toString()));
    terminal.result(outlook.supposed().toString());
    terminal.result("");
    for (int i = 0; i < outlook.divisions().size(); i++) {
      Division division = outlook.divisions().get(i);
      terminal.result(division.code() + "  " + division.name());
      terminal.result("  " + outlook.prospects().get(i).inWords());
    }
    terminal.result("");
    terminal.result(Prospect.NO_VERDICT + " " + Caution.paragraph());
  }

  private static Map<String, Object> members(WrittenRules rules, Outlook outlook) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("event", rules.event());
    members.put("edition", rules.edition());
    members.put("sha256", rules.sha256());
    members.put("setUp", outlook.sentences().stream().map(Sentence::toString).toList());
    List<Map<String, Object>> divisions = new ArrayList<>();
    for (int i = 0; i < outlook.divisions().size(); i++) {
      divisions.add(members(outlook.divisions().get(i), outlook.prospects().get(i)));
    }
    members.put("divisions", divisions);
    members.put("supposed", outlook.supposed().toString());
    members.put("noVerdict", Prospect.NO_VERDICT);
    members.put("cautions", Caution.sentences());
    return members;
  }

  private static Map<String, Object> members(Division division, Prospect prospect) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("code", division.code());
    members.put("name", division.name());
    members.put("prospect", prospect.word());
    members.put("words", prospect.inWords().toString());
    if (prospect instanceof Prospect.Measured measured) {
      members.put("fastest", measured.fastest().toString());
      members.put("firstCheckWithin", measured.first().within());
      members.put("within", measured.ending().within());
      members.put("over", measured.ending().over());
    }
    return members;
  }
}
