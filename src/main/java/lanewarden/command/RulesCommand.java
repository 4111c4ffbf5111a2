package lanewarden.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import lanewarden.quantity.Sentence;
import lanewarden.rules.Division;
import lanewarden.rules.Screening;
import lanewarden.rules.WorkedCase;
import lanewarden.station.Difference;
import lanewarden.station.Effect;
import lanewarden.station.Packed;
import lanewarden.station.RuleCurve;
import lanewarden.station.Supposed;
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

  @Option(
      names = "--curve",
      description =
          "Also the chances to end within, over and not decided, for archers of every true speed.")
  private boolean curve;

  @Option(
      names = "--beside",
      paramLabel = "FILE-OR-CODE",
      description =
          "Another rule book, whose division of the same code is told beside each, or the code of"
              + " another division of this one; and what differs.")
  private Optional<String> beside = Optional.empty();

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
    BesideRules others =
        beside.isPresent() ? BesideRules.of(beside.get(), rules) : BesideRules.none();
    List<Told> told = told(wanted, others);
    Terminal terminal = workplace.terminal();
    if (json) {
      terminal.result(JsonLine.of(members(rules, told)));
    } else {
      terminal.result(Notice.of("event", rules.event() + ", edition " + rules.edition()).line());
      told.forEach(this::tell);
      if (told.stream().anyMatch(one -> one.effect().curve().isPresent())) {
        terminal.result("");
        terminal.result("In every division: " + Screening.EVERYWHERE);
      }
    }
    return ExitCode.FINE;
  }

  /**
   * A rule with what it does, and the rule beside it with what that does.
   *
   * @param otherEffect empty where nothing stands beside it
   */
  private record Told(
      Division division,
      Effect effect,
      Optional<BesideRules.Other> other,
      Optional<Effect> otherEffect) {}

  /** The curves of rules that stand beside each other are over the same speeds. */
  private List<Told> told(List<Division> wanted, BesideRules others) throws CommandRefused {
    List<Told> told = new ArrayList<>();
    Supposed under = supposing.supposed();
    List<Effect> alone = beside.isPresent() ? List.of() : Effect.together(wanted, under);
    for (int i = 0; i < wanted.size(); i++) {
      Division division = wanted.get(i);
      if (beside.isEmpty()) {
        told.add(new Told(division, alone.get(i), Optional.empty(), Optional.empty()));
        continue;
      }
      Optional<BesideRules.Other> other = others.beside(division);
      List<Division> both = new ArrayList<>(List.of(division));
      other.map(BesideRules.Other::division).ifPresent(both::add);
      List<Effect> effects = Effect.together(both, under);
      told.add(new Told(division, effects.get(0), other, effects.stream().skip(1).findFirst()));
    }
    return told;
  }

  private void tell(Told told) {
    Division division = told.division();
    tell(division.code() + "  " + division.name(), division, told.effect());
    if (beside.isPresent()) {
      told.other().ifPresentOrElse(other -> tell(told, other), this::tellNothingBeside);
    }
  }

  private void tellNothingBeside() {
    workplace.terminal().result("  Beside it stands no other division.");
  }

  private void tell(Told told, BesideRules.Other other) {
    Terminal terminal = workplace.terminal();
    tell(
        "beside it: " + other.name() + "  " + other.division().name(),
        other.division(),
        told.otherEffect().orElseThrow());
    Difference difference = Difference.between(told.division(), other.division());
    terminal.result("");
    terminal.result("what differs between " + told.division().code() + " and " + other.name());
    difference.onlyFirst().forEach(sentence -> terminal.result("  only the first:  " + sentence));
    difference.onlySecond().forEach(sentence -> terminal.result("  only the second: " + sentence));
    if (difference.isNone()) {
      terminal.result("  Nothing: both demand the same.");
    }
  }

  private void tell(String heading, Division division, Effect effect) {
    Terminal terminal = workplace.terminal();
    terminal.result("");
    terminal.result(heading);
    division.told().forEach(sentence -> terminal.result("  " + sentence));
    effect.cases().forEach(worked -> terminal.result("    " + worked.inWords()));
    if (effect.curve().isEmpty()) {
      terminal.result("  " + Sentence.joined(effect.inWords()));
      return;
    }
    RuleCurve shown = effect.curve().get();
    terminal.result("  Supposing " + supposing.inWords() + " (" + shown.how() + "):");
    terminal.result("    " + Sentence.joined(effect.inWords()));
    terminal.result("    " + caught(shown.caught()));
    if (curve) {
      new CurveTable(shown).lines().forEach(line -> terminal.result("    " + line));
    }
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

  private Map<String, Object> members(WrittenRules rules, List<Told> told) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("event", rules.event());
    members.put("edition", rules.edition());
    members.put("sha256", rules.sha256());
    members.put("divisions", told.stream().map(this::members).toList());
    return members;
  }

  private Map<String, Object> members(Told told) {
    Map<String, Object> members = members(told.division(), told.effect());
    told.other()
        .ifPresent(
            other -> {
              Map<String, Object> second =
                  members(other.division(), told.otherEffect().orElseThrow());
              second.put("named", other.name());
              Difference difference = Difference.between(told.division(), other.division());
              second.put("onlyFirst", strings(difference.onlyFirst().stream()));
              second.put("onlySecond", strings(difference.onlySecond().stream()));
              members.put("beside", second);
            });
    return members;
  }

  private Map<String, Object> members(Division division, Effect effect) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("code", division.code());
    members.put("name", division.name());
    members.put("demands", strings(division.sentences().stream()));
    division.remark().ifPresent(remark -> members.put("remark", remark.toString()));
    members.put("cases", strings(effect.cases().stream().map(WorkedCase::inWords)));
    members.put("effect", members(effect));
    return members;
  }

  private static List<String> strings(Stream<Sentence> sentences) {
    return sentences.map(Sentence::toString).toList();
  }

  private Map<String, Object> members(Effect effect) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("words", Sentence.joined(effect.inWords()));
    effect
        .curve()
        .ifPresent(
            shown -> {
              members.put("failedAtLimit", shown.risks().honestFailed());
              members.put("passedOver", shown.risks().excessPassed());
              members.put("caughtOver", shown.caught());
              members.put("simulatedArchers", shown.drawn());
              if (curve) {
                members.put("curve", new CurveTable(shown).members());
              }
            });
    return members;
  }
}
