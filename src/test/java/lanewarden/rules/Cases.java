package lanewarden.rules;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;
import lanewarden.written.WrittenRefused;

/** Rules and shots in the short writing of the tests; every rule goes through the rule book. */
final class Cases {

  private Cases() {}

  /**
   * A rule with one re-check.
   *
   * @param decide as in a rule book, with the number behind {@code k of n}
   */
  static Rule rule(
      String limit, String tolerance, String decide, int counted, int shots, int voids) {
    String decision =
        decide.startsWith("k of n ")
            ? "decide = \"k of n\"\nwithin = " + decide.substring("k of n ".length())
            : "decide = \"" + decide + "\"";
    return division(
            """
            limit = "%s"
            tolerance = "%s"
            %s
            counted = %d
            shots = %d
            voids = %d
            rechecks = 1
            """
                .formatted(limit, tolerance, decision, counted, shots, voids))
        .rule();
  }

  /** A division of these lines, which must be right. */
  static Division division(String lines) {
    try {
      return readDivision(lines);
    } catch (WrittenRefused e) {
      throw new IllegalArgumentException(lines, e);
    }
  }

  /**
   * A division of these lines.
   *
   * @throws WrittenRefused if they are wrong
   */
  static Division readDivision(String lines) throws WrittenRefused {
    String toml =
        """
        format = 1
        [event]
        name = "Test"
        edition = "1"
        [[division]]
        code = "T"
        name = "Test"
        """
            + lines;
    return RuleBook.read("test", toml.getBytes(StandardCharsets.UTF_8)).divisions().get(0);
  }

  /** A rule of a speed limit alone. */
  static Rule rule(
      Speed limit, Tolerance tolerance, ShotPlan plan, Decision decision, int rechecks) {
    return new Rule(
        Optional.of(
            new SpeedLimit(
                limit,
                Side.AT_MOST,
                tolerance,
                new Rounding.None(),
                Guard.none(),
                Optional.empty())),
        Optional.empty(),
        EquipmentRule.none(),
        Optional.of(
            new Shooting(plan, decision, Treatment.none(), Optional.empty(), Screening.plain())),
        Aftermath.plain(rechecks),
        List.of());
  }

  /** The verdict where nothing is known of the set-up, and nothing has to be ticked. */
  static Verdict judge(Rule rule, List<Shot> shots) {
    return rule.judge(SetUp.unknown(), Set.of(), shots);
  }

  static ShotPlan plan(Rule rule) {
    return rule.shooting().orElseThrow().plan();
  }

  static SpeedLimit limit(Rule rule) {
    return rule.speed().orElseThrow();
  }

  /**
   * Readings in ft/s unless they say otherwise, {@code =kept} behind those that an official let
   * count, and {@code void}, separated by spaces.
   */
  static List<Shot> shots(String written) {
    return Arrays.stream(written.strip().split("\\s+", -1))
        .filter(word -> !word.isEmpty())
        .map(Cases::shot)
        .toList();
  }

  private static Shot shot(String word) {
    boolean kept = word.endsWith("=kept");
    String speed = kept ? word.substring(0, word.indexOf('=')) : word;
    return word.equals("void")
        ? new Shot.Voided()
        : new Shot.Read(Speed.parse(speed, SpeedUnit.FEET_PER_SECOND), kept);
  }
}
