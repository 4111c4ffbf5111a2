package lanewarden.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import lanewarden.rules.Division;
import lanewarden.rules.Screening;
import lanewarden.rules.WorkedCase;
import lanewarden.station.Effect;
import lanewarden.station.Packed;
import lanewarden.station.RuleCurve;
import lanewarden.station.WrittenRules;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says what a rule book demands, and what it does to archers. */
@Command(
    description = {
      "Say in plain sentences what a rule book demands of each division, with worked cases, made"
          + " from the rules themselves; and how often it would fail an archer at the limit and"
          + " pass one over it.",
      "A faulty rule book is answered with every fault, its line and column, and the mend."
    })
final class RulesCommand implements Callable<Integer> {
  private final Workplace workplace;

  @Parameters(
      paramLabel = "FILE",
      description = "The rule book, or an event's folder with one in it.")
  private Path file = Path.of("");

  @Option(
      names = "--division",
      paramLabel = "CODE",
      description = "Only the division with this code.")
  private Optional<String> code = Optional.empty();

  @Option(
      names = "--example",
      description = "Write the example of a rule book to FILE first, which must not be there yet.")
  private boolean example;

  @Option(names = "--json", description = "Answer with one JSON object.")
  private boolean json;

  @Mixin private Supposing supposing = new Supposing();

  RulesCommand(Workplace workplace) {
    this.workplace = workplace;
  }

  @Override
  public Integer call() throws Exception {
    if (example) {
      Packed.copyRuleBook(file);
    }
    WrittenRules rules = WrittenRules.read(file);
    List<Division> wanted =
        code.isPresent() ? List.of(rules.division(code.get())) : rules.divisions();
    List<Effect> effects = Effect.together(wanted, supposing.supposed());
    Terminal terminal = workplace.terminal();
    if (json) {
      terminal.result(JsonLine.of(members(rules, wanted, effects)));
    } else {
      terminal.result(Notice.of("event", rules.event() + ", edition " + rules.edition()).line());
      for (int i = 0; i < wanted.size(); i++) {
        tell(wanted.get(i), effects.get(i));
      }
      if (effects.stream().anyMatch(effect -> effect.curve().isPresent())) {
        terminal.result("");
        terminal.result("In every division: " + Screening.EVERYWHERE);
      }
    }
    return ExitCode.FINE;
  }

  private void tell(Division division, Effect effect) {
    Terminal terminal = workplace.terminal();
    terminal.result("");
    terminal.result(division.code() + "  " + division.name());
    division.told().forEach(sentence -> terminal.result("  " + sentence));
    effect.cases().forEach(worked -> terminal.result("    " + worked.inWords()));
    if (effect.curve().isEmpty()) {
      terminal.result("  " + effect.inWords());
      return;
    }
    RuleCurve curve = effect.curve().get();
    terminal.result("  Supposing " + supposing.inWords() + " (" + curve.how() + "):");
    terminal.result("    " + effect.inWords());
    terminal.result("    " + caught(curve.caught()));
  }

  private static String caught(double chance) {
    String share = String.format(Locale.ROOT, "%.1f", 100 * chance);
    return Double.parseDouble(share) == 0
        ? "A check practically never finds the faster archer."
        : "A check finds the faster archer "
            + share
            + " times in 100; for plan: --caught \""
            + share
            + " %\"";
  }

  private static Map<String, Object> members(
      WrittenRules rules, List<Division> wanted, List<Effect> effects) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("event", rules.event());
    members.put("edition", rules.edition());
    members.put("sha256", rules.sha256());
    List<Map<String, Object>> divisions = new ArrayList<>();
    for (int i = 0; i < wanted.size(); i++) {
      divisions.add(members(wanted.get(i), effects.get(i)));
    }
    members.put("divisions", divisions);
    return members;
  }

  private static Map<String, Object> members(Division division, Effect effect) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("code", division.code());
    members.put("name", division.name());
    members.put("demands", division.sentences());
    division.remark().ifPresent(remark -> members.put("remark", remark));
    members.put("cases", effect.cases().stream().map(WorkedCase::inWords).toList());
    members.put("effect", members(effect));
    return members;
  }

  private static Map<String, Object> members(Effect effect) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("words", effect.inWords());
    effect
        .curve()
        .ifPresent(
            curve -> {
              members.put("failedAtLimit", curve.risks().honestFailed());
              members.put("passedOver", curve.risks().excessPassed());
              members.put("caughtOver", curve.caught());
              members.put("simulatedArchers", curve.drawn());
            });
    return members;
  }
}
