package lanewarden.rules;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import lanewarden.quantity.Force;
import lanewarden.quantity.Mass;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;

/**
 * A division with any of the clauses there are, as an organizer could write it, and set-ups and
 * shots that come close to its limits.
 */
final class RandomRule {
  private final Random random;
  private final Map<String, String> lines = new LinkedHashMap<>();

  RandomRule(Random random) {
    this.random = random;
    boolean speed = random.nextInt(5) > 0;
    boolean energy = !speed || random.nextInt(4) == 0;
    put("limit", speed ? tenths(2950, 3050) + " ft/s" : "none");
    if (speed) {
      speedClauses();
    }
    if (speed && !energy) {
      guard();
    }
    if (energy) {
      put("energy", tenths(700, 900) + " ft·lbf");
      maybe("energy-bound", "at most", "below");
    }
    equipment(speed);
    shooting();
    put("rechecks", 1 + random.nextInt(2));
    if (speed && !energy && random.nextInt(3) == 0) {
      lines.put("bands", "[\"up to 0.5 %: re-check\", \"up to 4 ft/s: barred\"]");
    }
    if (random.nextInt(4) == 0) {
      lines.put("conditions", "[\"full draw\", \"seal unbroken\"]");
    }
  }

  private void speedClauses() {
    maybe("bound", "at most", "below");
    switch (random.nextInt(4)) {
      case 0 -> put("tolerance", "none");
      case 1 -> put("tolerance", tenths(0, 30) + " %");
      case 2 -> put("tolerance", tenths(0, 60) + " ft/s");
      default -> {
        put("tolerance", "instrument accuracy");
        put("accuracy", random.nextBoolean() ? "0.5 %" : "1.2 ft/s");
        put("factor", 1 + random.nextInt(3));
      }
    }
    maybe("round-limit", "none", "down to 1 ft/s", "nearest 1 ft/s", "down to 0.7 ft/s");
    maybe("only-below", "5 gr/lb", "6.5 gr/lb");
  }

  private void guard() {
    if (random.nextInt(4) == 0) {
      maybe("acceptance", "guarded acceptance", "guarded rejection", "simple");
      if (has("acceptance") && !lines.get("acceptance").contains("simple")) {
        put("guard", random.nextBoolean() ? "0.5 ft/s" : "0.3 %");
      }
    }
  }

  private void equipment(boolean speed) {
    maybe("least-arrow", "3 gr/lb", "4 gr/lb");
    maybe("least-draw-weight", "40 lbf");
    maybe("most-draw-weight", "60 lbf");
    boolean asked =
        lines.keySet().stream().anyMatch(key -> key.startsWith("least-") || key.startsWith("most"))
            || (speed && lines.containsKey("only-below"));
    if (asked) {
      maybe("draw-weight", "as set", "certified", "greater");
    }
  }

  private void shooting() {
    int counted = 1 + random.nextInt(5);
    String decide =
        List.of("mean", "highest", "median", "first within", "k of n").get(random.nextInt(5));
    put("decide", decide);
    if (decide.equals("k of n")) {
      put("within", 1 + random.nextInt(counted));
    }
    put("counted", counted);
    int spare = random.nextInt(3);
    put("shots", counted + spare);
    put("voids", random.nextInt(spare + 1));
    maybe("round-reading", "nearest 1 ft/s", "down to 0.5 ft/s", "nearest 0.3 m/s");
    maybe("bow-correction", "0.5 %");
    if (random.nextInt(4) == 0 && counted > 2) {
      maybe("jump", "5 ft/s", "2 m/s");
      maybe("outlier", "Grubbs at 5 %", "Dixon at 5 %");
      if (has("outlier")) {
        put("outlier-least", "1.5 ft/s");
      }
    }
    if (counted > 1 && random.nextInt(5) == 0) {
      put("spread", random.nextBoolean() ? "8 ft/s" : "4 m/s");
    }
  }

  /** Which stands under the key, or is left out with an even chance. */
  private void maybe(String key, String... words) {
    if (random.nextInt(3) == 0) {
      put(key, words[random.nextInt(words.length)]);
    }
  }

  private void put(String key, Object value) {
    lines.put(key, value instanceof String ? "\"" + value + "\"" : value.toString());
  }

  boolean has(String key) {
    return lines.containsKey(key);
  }

  /** The division's lines. */
  String toml() {
    return lines.entrySet().stream()
        .map(line -> line.getKey() + " = " + line.getValue() + "\n")
        .collect(Collectors.joining());
  }

  Rule rule() {
    return Cases.division(toml()).rule();
  }

  /** The same division without these keys. */
  Rule without(String... keys) {
    return Cases.division(toml().replaceAll("(?m)^(" + String.join("|", keys) + ") = .*\n", ""))
        .rule();
  }

  /** The same division with another tolerance. */
  Rule withTolerance(String tolerance) {
    String written =
        toml()
            .replaceAll("(?m)^(accuracy|factor) = .*\n", "")
            .replaceFirst("(?m)^tolerance = .*$", "tolerance = \"" + tolerance + "\"");
    return has("tolerance") ? Cases.division(written).rule() : rule();
  }

  /** With a figure missing now and then. */
  SetUp setUp() {
    return new SetUp(
        random.nextInt(12) == 0 ? null : Mass.parse(tenths(2000, 4500) + " gr"),
        random.nextInt(12) == 0 ? null : Force.parse(tenths(380, 650) + " lbf"),
        random.nextInt(12) == 0 ? null : Force.parse(tenths(380, 650) + " lbf"));
  }

  /** All conditions, or only some now and then. */
  Set<String> ticks(Rule rule) {
    int ticked = random.nextInt(4) == 0 ? 1 : rule.conditions().size();
    return rule.conditions().stream().limit(ticked).collect(Collectors.toSet());
  }

  /** As many as the rule allows, some of them void. */
  List<Shot> shots(Rule rule) {
    List<Shot> shots = new ArrayList<>();
    for (int i = 0; i < Cases.plan(rule).allowed(); i++) {
      shots.add(random.nextInt(6) == 0 ? new Shot.Voided() : new Shot.Read(speed(2920, 3140)));
    }
    return shots;
  }

  /** In ft/s, from and to in tenths. */
  Speed speed(int least, int most) {
    return Speed.of(new BigDecimal(tenths(least, most)), SpeedUnit.FEET_PER_SECOND);
  }

  private String tenths(int least, int most) {
    return BigDecimal.valueOf(least + random.nextInt(most - least + 1), 1).toPlainString();
  }

  @Override
  public String toString() {
    return toml();
  }
}
