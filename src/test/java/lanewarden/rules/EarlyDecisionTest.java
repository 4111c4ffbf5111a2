package lanewarden.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lanewarden.quantity.Mass;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The moment of decision, tried out in full and under every clause that has a say in it: every row
 * of readings from a small set of speeds, against every completion from a set with a very slow and
 * a very fast one in it, judged by an arithmetic of the test's own that knows complete rows only.
 */
class EarlyDecisionTest {

  private static final SetUp TEN_GRAMS = new SetUp(Mass.parse("10 g"), null, null);

  /**
   * A clause, and speeds on both sides of all that it distinguishes.
   *
   * @param taken readings of the rows
   * @param still readings of the completions
   */
  private record Clause(
      String name, String lines, CompleteRow arithmetic, int most, String taken, String still) {
    @Override
    public String toString() {
      return name;
    }
  }

  private static final String FEET = "limit = \"300 ft/s\"\ntolerance = \"none\"\n";
  private static final CompleteRow TO_300 = CompleteRow.upTo("300");

  private static final List<Clause> CLAUSES =
      List.of(
          new Clause("at most", FEET, TO_300, 5, "298 300 300.1 306", "0.1 300 300.1 5000"),
          new Clause(
              "below",
              FEET + "bound = \"below\"\n",
              TO_300.exclusive(),
              4,
              "299.9 300 300.1",
              "0.1 299.9 300 5000"),
          // 10 g at 40 m/s, which is 131.2335… ft/s, are 8 J: half of 0.01 kg times 1600
          new Clause(
              "energy",
              "limit = \"none\"\nenergy = \"8 J\"\n",
              CompleteRow.upTo("40"),
              4,
              "39.9 40 40.1",
              "0.1 40 40.1 5000"),
          new Clause(
              "rounded",
              FEET + "round-reading = \"nearest 0.5 ft/s\"\n",
              TO_300.roundedTo("0.5"),
              4,
              "299.75 300.24 300.25",
              "0.1 300.2 300.3 5000"),
          new Clause(
              "spread",
              FEET + "spread = \"2 ft/s\"\n",
              TO_300.apart("2"),
              4,
              "298 300 301 302",
              "0.1 299 301 5000"),
          new Clause(
              "bands",
              FEET + "bands = [\"up to 1 %: re-check\", \"up to 9 ft/s: judge\"]\n",
              TO_300.banded("303", "309"),
              5,
              "300 302 305 310",
              "0.1 303 309 5000"),
          new Clause(
              "bands below",
              FEET + "bound = \"below\"\nbands = [\"up to 1 ft/s: barred\"]\n",
              TO_300.exclusive().banded("301"),
              4,
              "299 300 301 301.1",
              "0.1 300 301 5000"));

  /** A clause, a decision in the writing of the test cases, and how many readings count. */
  record Deciding(Clause clause, String decide, int counted) {
    Rule rule() {
      String word = decide.startsWith("k of n") ? "k of n" : decide;
      String within =
          word.equals(decide) ? "" : "within = " + decide.substring("k of n ".length()) + "\n";
      return Cases.division(
              clause.lines()
                  + within
                  + "decide = \"%s\"\ncounted = %d\nshots = %d\nvoids = 0\nrechecks = 1\n"
                      .formatted(word, counted, counted))
          .rule();
    }

    Verdict judge(Rule rule, List<String> readings) {
      String unit = clause.name().equals("energy") ? "m/s" : "";
      return rule.judge(
          TEN_GRAMS,
          Set.of(),
          Cases.shots(readings.stream().map(r -> r + unit).collect(Collectors.joining(" "))));
    }

    /** Every row of that many readings. */
    void rows(int taken, Consumer<List<String>> each) {
      EarlyDecisionTest.rows(clause.taken(), taken, List.of(), each);
    }

    List<List<String>> completions(List<String> prefix, int more) {
      List<List<String>> rows = new ArrayList<>();
      EarlyDecisionTest.rows(clause.still(), more, prefix, rows::add);
      return rows;
    }
  }

  static Stream<Deciding> decisions() {
    return CLAUSES.stream()
        .flatMap(
            clause ->
                IntStream.rangeClosed(clause.lines().contains("spread") ? 2 : 1, clause.most())
                    .boxed()
                    .flatMap(
                        counted ->
                            Stream.concat(
                                Stream.of("mean", "highest", "median", "first within")
                                    .map(decide -> new Deciding(clause, decide, counted)),
                                IntStream.rangeClosed(1, counted)
                                    .mapToObj(k -> new Deciding(clause, "k of n " + k, counted)))));
  }

  @ParameterizedTest
  @MethodSource("decisions")
  void decidesExactlyWhenEveryCompletionHasTheSameOutcomeAndBand(Deciding deciding) {
    Rule rule = deciding.rule();
    for (int taken = 0; taken <= deciding.counted(); taken++) {
      int open = deciding.counted() - taken;
      deciding.rows(
          taken,
          prefix -> {
            Set<String> outcomes =
                deciding.completions(prefix, open).stream()
                    .map(row -> deciding.clause().arithmetic().outcome(deciding.decide(), row))
                    .collect(Collectors.toSet());
            Verdict verdict = deciding.judge(rule, prefix);
            assertEquals(
                outcomes.size() == 1 ? outcomes : Set.of("not decided"),
                Set.of(outcome(verdict, rule)),
                prefix::toString);
            assertEquals(outcomes.size() == 1, verdict.ends(), prefix::toString);
          });
    }
  }

  private static String outcome(Verdict verdict, Rule rule) {
    if (verdict instanceof Verdict.Over over && over.band().isPresent()) {
      return "over in band " + (rule.aftermath().bands().indexOf(over.band().get()) + 1);
    }
    boolean tooWide =
        verdict instanceof Verdict.NotDecided open
            && open.missing() instanceof Missing.SpreadTooWide;
    return tooWide ? "too wide" : verdict.word();
  }

  @ParameterizedTest
  @MethodSource("decisions")
  void saysTheFewestFurtherReadingsThatCanDecide(Deciding deciding) {
    Rule rule = deciding.rule();
    for (int taken = 0; taken < deciding.counted(); taken++) {
      int open = deciding.counted() - taken;
      deciding.rows(
          taken,
          prefix -> {
            if (deciding.judge(rule, prefix) instanceof Verdict.NotDecided undecided
                && undecided.takesShots()) {
              assertEquals(
                  new Missing.MoreReadings(fewest(deciding, rule, prefix, open)),
                  undecided.missing(),
                  prefix::toString);
            }
          });
    }
  }

  /** Not counting readings that end the check without an outcome, as too wide a spread does. */
  private static int fewest(Deciding deciding, Rule rule, List<String> prefix, int open) {
    for (int more = 1; more <= open; more++) {
      if (deciding.completions(prefix, more).stream()
          .map(row -> deciding.judge(rule, row))
          .anyMatch(verdict -> verdict.ends() && !(verdict instanceof Verdict.NotDecided))) {
        return more;
      }
    }
    return open;
  }

  @ParameterizedTest
  @MethodSource("decisions")
  void orderOfAllCountedReadingsDoesNotMatter(Deciding deciding) {
    Rule rule = deciding.rule();
    deciding.rows(
        deciding.counted(),
        row ->
            assertEquals(
                outcome(deciding.judge(rule, row.stream().sorted().toList()), rule),
                outcome(deciding.judge(rule, row), rule),
                row::toString));
  }

  @ParameterizedTest
  @MethodSource("decisions")
  void shotsAfterTheDecidingOneChangeNothing(Deciding deciding) {
    Rule rule = deciding.rule();
    for (int taken = 1; taken <= deciding.counted(); taken++) {
      deciding.rows(
          taken,
          prefix -> {
            Verdict verdict = deciding.judge(rule, prefix);
            if (verdict.ends()) {
              for (String further : List.of("0.1", "5000")) {
                List<String> longer = new ArrayList<>(prefix);
                longer.add(further);
                assertEquals(verdict, deciding.judge(rule, longer), longer::toString);
              }
            }
          });
    }
  }

  private static void rows(
      String speeds, int more, List<String> prefix, Consumer<List<String>> each) {
    if (more == 0) {
      each.accept(prefix);
      return;
    }
    for (String speed : speeds.split(" ", -1)) {
      List<String> longer = new ArrayList<>(prefix);
      longer.add(speed);
      rows(speeds, more - 1, longer, each);
    }
  }
}
