package lanewarden.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lanewarden.quantity.Sentence;
import lanewarden.written.WrittenRefused;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The cases of {@code rule-cases.txt}, each with its source there, and whether they are enough. */
class RuleCasesTest {

  /** Keys of which every way to use them has a case of its own. */
  private static final List<String> WAYS =
      List.of(
          "limit speed, limit none",
          "bound at most, bound below",
          "tolerance none, tolerance percent, tolerance absolute, tolerance instrument accuracy",
          "round-limit none, round-limit down, round-limit nearest",
          "round-reading none, round-reading down, round-reading nearest",
          "energy J, energy ft·lbf",
          "energy-bound at most, energy-bound below",
          "acceptance simple, acceptance guarded acceptance, acceptance guarded rejection",
          "outlier Grubbs, outlier Dixon",
          "draw-weight as set, draw-weight certified, draw-weight greater",
          "decide mean, decide highest, decide median, decide k of n, decide first within",
          "who everyone, who random share, who on request, who named by a judge, who not measured");

  static List<RuleCase> judged() throws IOException {
    return RuleCase.all().stream().filter(c -> c.line("outcome").isPresent()).toList();
  }

  static List<RuleCase> said() throws IOException {
    return RuleCase.all().stream().filter(c -> c.line("says").isPresent()).toList();
  }

  static List<RuleCase> refused() throws IOException {
    return RuleCase.all().stream().filter(c -> c.line("refused").isPresent()).toList();
  }

  @ParameterizedTest
  @MethodSource("judged")
  void givesTheOutcomeItsReasonAndWhatFollows(RuleCase given) {
    Rule rule = Cases.division(given.toml()).rule();
    Verdict verdict = rule.judge(given.setUp(), given.ticks(), given.shots());
    assertEquals(
        given.line("outcome").orElseThrow() + ": " + given.line("reason").orElseThrow(),
        verdict.word() + ": " + verdict.reason());
    given
        .line("follows")
        .ifPresent(follows -> assertEquals(follows, follows(rule.aftermath(), verdict)));
  }

  private static String follows(Aftermath aftermath, Verdict verdict) {
    String follows =
        Stream.of(Phase.values())
            .flatMap(
                phase ->
                    aftermath
                        .follows(verdict, phase)
                        .map(consequence -> phase.word() + " " + consequence.word())
                        .stream())
            .collect(Collectors.joining(", "));
    return follows.isEmpty() ? "nothing" : follows;
  }

  @ParameterizedTest
  @MethodSource("said")
  void saysWhatItDemands(RuleCase given) {
    List<String> sentences =
        Cases.division(given.toml()).sentences().stream().map(Sentence::toString).toList();
    assertTrue(sentences.contains(given.line("says").orElseThrow()), sentences::toString);
  }

  @ParameterizedTest
  @MethodSource("refused")
  void wronglyWrittenClauseIsRefused(RuleCase given) {
    WrittenRefused refused =
        assertThrows(WrittenRefused.class, () -> Cases.readDivision(given.toml()));
    assertEquals(
        List.of(given.line("refused").orElseThrow()),
        refused.faults().stream()
            .map(fault -> fault.place() + " to be " + fault.expected())
            .toList());
  }

  @Test
  void everyPatternHasACaseThatPassesAndOneThatFails() throws IOException {
    Set<String> shown =
        RuleCase.all().stream().flatMap(c -> c.shows().stream()).collect(Collectors.toSet());
    Set<String> lacking = new TreeSet<>();
    Set<String> patterns = patterns();
    for (String pattern : patterns) {
      Stream.of("+ " + pattern, "- " + pattern)
          .filter(sign -> !shown.contains(sign))
          .forEach(lacking::add);
    }
    assertEquals(Set.of(), lacking);
    shown.removeIf(sign -> patterns.contains(sign.substring(2)));
    assertEquals(Set.of(), shown, "a case shows something that is no pattern");
  }

  private static Set<String> patterns() throws IOException {
    Set<String> patterns = ExampleBooksTest.keysToCopy();
    patterns.removeAll(Set.of("code", "name"));
    for (String ways : WAYS) {
      patterns.remove(ways.split(" ", 2)[0]);
      patterns.addAll(List.of(ways.split(", ", -1)));
    }
    return patterns;
  }

  @Test
  void aCasePassesOrFailsAsItSaysWithTheKeyThatItShows() throws IOException {
    for (RuleCase one : RuleCase.all()) {
      boolean within = one.line("outcome").equals(Optional.of("within"));
      boolean saysOnly = one.line("outcome").or(() -> one.line("refused")).isEmpty();
      for (String sign : one.shows()) {
        assertEquals(sign.startsWith("+ "), within || saysOnly, one + " shows " + sign);
        String key = sign.substring(2).split(" ", 2)[0];
        assertTrue(one.keys().contains(key), one + " does not write " + key);
      }
    }
  }

  @Test
  void everyCaseHasAnIdOfItsOwnASourceAndAStatus() throws IOException {
    Set<String> ids = new HashSet<>();
    for (RuleCase one : RuleCase.all()) {
      assertTrue(ids.add(one.id()), one + " stands twice");
      assertTrue(one.line("source").isPresent(), one + " has no source");
      String status = one.line("status").orElse("no status");
      assertTrue(Set.of("seen", "memory", "own", "practice").contains(status), one + ": " + status);
      assertTrue(
          Stream.of("outcome", "says", "refused").anyMatch(w -> one.line(w).isPresent()),
          one + " expects nothing");
    }
  }

  @Test
  void everyConsequenceFollowsInEveryPhaseInSomeCase() throws IOException {
    Set<String> followed = new TreeSet<>();
    for (RuleCase one : RuleCase.all()) {
      one.line("follows").ifPresent(f -> followed.addAll(List.of(f.split(", ", -1))));
    }
    Set<String> all = new TreeSet<>(Set.of("nothing"));
    for (Phase phase : Phase.values()) {
      Stream.of(Consequence.values()).map(c -> phase.word() + " " + c.word()).forEach(all::add);
    }
    assertEquals(all, followed);
  }
}
