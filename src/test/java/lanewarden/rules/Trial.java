package lanewarden.rules;

import java.util.List;
import java.util.Random;
import java.util.Set;
import lanewarden.quantity.Mass;

/** A rule, what is known, what is ticked and what is shot. */
record Trial(RandomRule written, Rule rule, SetUp setUp, Set<String> ticks, List<Shot> shots) {

  static Trial of(Random random) {
    RandomRule written = new RandomRule(random);
    Rule rule = written.rule();
    return new Trial(written, rule, written.setUp(), written.ticks(rule), written.shots(rule));
  }

  Verdict judge() {
    return rule.judge(setUp, ticks, shots);
  }

  Verdict judge(List<Shot> others) {
    return rule.judge(setUp, ticks, others);
  }

  Verdict judge(Rule other) {
    return other.judge(setUp, ticks, shots);
  }

  Verdict judge(Mass arrow) {
    return rule.judge(
        new SetUp(arrow, setUp.drawWeight(), setUp.certifiedDrawWeight()), ticks, shots);
  }
}
