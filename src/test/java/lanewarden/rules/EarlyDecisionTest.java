package lanewarden.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The moment of decision, tried out in full: every row of readings from a small set of speeds,
 * against every completion from a set with a very slow and a very fast one in it, judged by an
 * arithmetic of the test's own that knows complete rows only.
 */
class EarlyDecisionTest {
  private static final BigDecimal LIMIT = new BigDecimal("300");
  private static final List<String> TAKEN = List.of("298", "300", "300.1", "306");
  private static final List<String> STILL_TO_COME = List.of("0.1", "300", "300.1", "5000");
  private static final int MOST_COUNTED = 5;

  /** A decision in the writing of the test cases, and how many readings count. */
  record Deciding(String decide, int counted) {
    Rule rule() {
      return Cases.rule("300 ft/s", "none", decide, counted, counted, 0);
    }
  }

  static Stream<Deciding> decisions() {
    return IntStream.rangeClosed(1, MOST_COUNTED)
        .boxed()
        .flatMap(
            counted ->
                Stream.concat(
                    Stream.of("mean", "highest", "median", "first within")
                        .map(decide -> new Deciding(decide, counted)),
                    IntStream.rangeClosed(1, counted)
                        .mapToObj(k -> new Deciding("k of n " + k, counted))));
  }

  @ParameterizedTest
  @MethodSource("decisions")
  void decidesExactlyWhenEveryCompletionHasTheSameOutcome(Deciding deciding) {
    Rule rule = deciding.rule();
    for (int taken = 0; taken <= deciding.counted(); taken++) {
      int open = deciding.counted() - taken;
      rows(
          TAKEN,
          taken,
          List.of(),
          prefix -> {
            Set<String> outcomes =
                completions(prefix, open).stream()
                    .map(row -> outcome(deciding, row))
                    .collect(Collectors.toSet());
            Verdict verdict = Cases.judge(rule, shots(prefix));
            assertEquals(
                outcomes.size() == 1 ? outcomes : Set.of("not decided"),
                Set.of(verdict.word()),
                prefix::toString);
            assertEquals(outcomes.size() == 1, verdict.ends(), prefix::toString);
          });
    }
  }

  @ParameterizedTest
  @MethodSource("decisions")
  void saysTheFewestFurtherReadingsThatCanDecide(Deciding deciding) {
    Rule rule = deciding.rule();
    for (int taken = 0; taken < deciding.counted(); taken++) {
      int open = deciding.counted() - taken;
      rows(
          TAKEN,
          taken,
          List.of(),
          prefix -> {
            if (Cases.judge(rule, shots(prefix)) instanceof Verdict.NotDecided undecided) {
              assertEquals(
                  new Missing.MoreReadings(fewest(rule, prefix, open)),
                  undecided.missing(),
                  prefix::toString);
            }
          });
    }
  }

  @ParameterizedTest
  @MethodSource("decisions")
  void orderOfAllCountedReadingsDoesNotMatter(Deciding deciding) {
    Rule rule = deciding.rule();
    rows(
        TAKEN,
        deciding.counted(),
        List.of(),
        row ->
            assertEquals(
                Cases.judge(rule, shots(row.stream().sorted().toList())).word(),
                Cases.judge(rule, shots(row)).word(),
                row::toString));
  }

  @ParameterizedTest
  @MethodSource("decisions")
  void shotsAfterTheDecidingOneChangeNothing(Deciding deciding) {
    Rule rule = deciding.rule();
    for (int taken = 1; taken <= deciding.counted(); taken++) {
      rows(
          TAKEN,
          taken,
          List.of(),
          prefix -> {
            Verdict verdict = Cases.judge(rule, shots(prefix));
            if (verdict.ends()) {
              for (String further : List.of("0.1", "5000", "void")) {
                List<String> longer = new ArrayList<>(prefix);
                longer.add(further);
                assertEquals(verdict, Cases.judge(rule, shots(longer)), longer::toString);
              }
            }
          });
    }
  }

  private static int fewest(Rule rule, List<String> prefix, int open) {
    for (int more = 1; more <= open; more++) {
      if (completions(prefix, more).stream()
          .anyMatch(row -> Cases.judge(rule, shots(row)).ends())) {
        return more;
      }
    }
    throw new AssertionError("nothing ever decides after " + prefix);
  }

  private static List<List<String>> completions(List<String> prefix, int more) {
    List<List<String>> rows = new ArrayList<>();
    rows(STILL_TO_COME, more, prefix, rows::add);
    return rows;
  }

  private static void rows(
      List<String> speeds, int more, List<String> prefix, Consumer<List<String>> each) {
    if (more == 0) {
      each.accept(prefix);
      return;
    }
    for (String speed : speeds) {
      List<String> longer = new ArrayList<>(prefix);
      longer.add(speed);
      rows(speeds, more - 1, longer, each);
    }
  }

  private static List<Shot> shots(List<String> written) {
    return Cases.shots(String.join(" ", written));
  }

  /** The outcome of a complete row, from sums and sorted values. */
  private static String outcome(Deciding deciding, List<String> row) {
    List<BigDecimal> sorted = row.stream().map(BigDecimal::new).sorted().toList();
    int counted = deciding.counted();
    assertTrue(sorted.size() == counted, "the row is complete");
    long within = sorted.stream().filter(speed -> speed.compareTo(LIMIT) <= 0).count();
    boolean passes =
        switch (deciding.decide()) {
          case "mean" -> atMost(sorted, counted);
          case "highest" -> within == counted;
          case "first within" -> within >= 1;
          case "median" ->
              counted % 2 == 1
                  ? atMost(List.of(sorted.get(counted / 2)), 1)
                  : atMost(sorted.subList(counted / 2 - 1, counted / 2 + 1), 2);
          default -> within >= Integer.parseInt(deciding.decide().substring("k of n ".length()));
        };
    return passes ? "within" : "over";
  }

  private static boolean atMost(List<BigDecimal> speeds, int count) {
    BigDecimal sum = speeds.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    return sum.compareTo(LIMIT.multiply(BigDecimal.valueOf(count))) <= 0;
  }
}
