package lanewarden.rules;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
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
  static SpeedRule rule(
      String limit, String tolerance, String decide, int counted, int shots, int voids) {
    String decision =
        decide.startsWith("k of n ")
            ? "decide = \"k of n\"\nwithin = " + decide.substring("k of n ".length())
            : "decide = \"" + decide + "\"";
    String toml =
        """
        format = 1
        [event]
        name = "Test"
        edition = "1"
        [[division]]
        code = "T"
        name = "Test"
        limit = "%s"
        tolerance = "%s"
        %s
        counted = %d
        shots = %d
        voids = %d
        rechecks = 1
        """
            .formatted(limit, tolerance, decision, counted, shots, voids);
    try {
      return RuleBook.read("test", toml.getBytes(StandardCharsets.UTF_8)).divisions().get(0).rule();
    } catch (WrittenRefused e) {
      throw new IllegalArgumentException(e);
    }
  }

  /** Readings in ft/s unless they say otherwise, and {@code void}, separated by spaces. */
  static List<Shot> shots(String written) {
    return Arrays.stream(written.strip().split("\\s+", -1))
        .filter(word -> !word.isEmpty())
        .map(Cases::shot)
        .toList();
  }

  private static Shot shot(String word) {
    return word.equals("void")
        ? new Shot.Voided()
        : new Shot.Read(Speed.parse(word, SpeedUnit.FEET_PER_SECOND));
  }
}
