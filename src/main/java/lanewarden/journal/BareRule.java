package lanewarden.journal;

import java.util.List;
import lanewarden.rules.Aftermath;
import lanewarden.rules.Rule;
import lanewarden.rules.Shot;

/** A rule without what only makes a verdict wait: ticks, bands, and readings in doubt. */
final class BareRule {

  private BareRule() {}

  /** The rule with no condition and no band. */
  static Rule of(Rule rule) {
    Aftermath after = rule.aftermath();
    return new Rule(
        rule.speed(),
        rule.energy(),
        rule.equipment(),
        rule.shooting(),
        new Aftermath(after.rechecks(), after.fails(), List.of(), after.lapses()),
        List.of());
  }

  /** The shots with every reading let count. */
  static List<Shot> letCount(List<Shot> shots) {
    return shots.stream()
        .map(shot -> shot instanceof Shot.Read read ? new Shot.Read(read.speed(), true) : shot)
        .toList();
  }
}
