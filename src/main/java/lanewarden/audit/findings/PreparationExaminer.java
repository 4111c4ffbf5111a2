package lanewarden.audit.findings;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lanewarden.audit.findings.Finding.Kind;
import lanewarden.audit.wording.Wording;
import lanewarden.journal.Check;
import lanewarden.journal.Fact;
import lanewarden.quantity.Quantity;
import lanewarden.rules.Division;
import lanewarden.rules.SetUp;
import org.jspecify.annotations.Nullable;

/**
 * Looks at what was stated of bow and arrow, and at the conditions that were ticked.
 *
 * <p>Owned by one thread.
 */
final class PreparationExaminer {
  private final List<Finding> findings;
  private final Map<Long, SetUp> known = new HashMap<>();

  PreparationExaminer(List<Finding> findings) {
    this.findings = findings;
  }

  /** A check was opened with what the roster declares. */
  void opened(long check, Fact.CheckOpened opened) {
    known.put(check, opened.setUp());
  }

  /** A figure that was there before and reads otherwise now must be seen. */
  void stated(long entry, Check check) {
    SetUp now = check.setUp();
    SetUp before = known.put(check.number(), now);
    if (before == null) {
      return;
    }
    changed(entry, check, SetUp.ARROW_MASS, before.arrowMass(), now.arrowMass());
    changed(entry, check, SetUp.DRAW_WEIGHT, before.drawWeight(), now.drawWeight());
    changed(
        entry,
        check,
        SetUp.CERTIFIED_DRAW_WEIGHT,
        before.certifiedDrawWeight(),
        now.certifiedDrawWeight());
    changed(entry, check, SetUp.DRAW_LENGTH, before.drawLength(), now.drawLength());
    changed(entry, check, SetUp.BRACE_HEIGHT, before.braceHeight(), now.braceHeight());
  }

  private void changed(
      long entry,
      Check check,
      String name,
      @Nullable Quantity<?, ?> before,
      @Nullable Quantity<?, ?> now) {
    if (before != null && !before.equals(now)) {
      findings.add(
          Finding.of(
              Kind.SET_UP,
              Wording.check(check)
                  + ": "
                  + name
                  + " "
                  + before
                  + ", then "
                  + (now == null ? "not stated" : now)
                  + ", after "
                  + Wording.count(check.shots().size(), "shot")
                  + ".",
              entry));
    }
  }

  /** What the rule does not name cannot be ticked. */
  void ticked(long entry, String condition, Check check, Optional<Division> division) {
    if (division.filter(d -> !d.rule().conditions().contains(condition)).isPresent()) {
      findings.add(
          Finding.of(
              Kind.ORDER,
              Wording.check(check)
                  + ": "
                  + Wording.quoted(condition)
                  + " was ticked, which the rule does not name.",
              entry));
    }
  }
}
