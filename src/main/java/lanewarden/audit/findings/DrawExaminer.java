package lanewarden.audit.findings;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lanewarden.audit.findings.Finding.Kind;
import lanewarden.audit.wording.Wording;
import lanewarden.journal.Fact;
import lanewarden.journal.Standing;
import lanewarden.metrology.PublicDraw;
import lanewarden.quantity.Percent;
import lanewarden.rules.Coverage;
import lanewarden.rules.Division;
import org.jspecify.annotations.Nullable;

/**
 * Draws again, by the published recipe, from the seed and the roster in force.
 *
 * <p>Owned by one thread.
 */
final class DrawExaminer {
  private final Standing standing;
  private final List<Finding> findings;
  private final Map<String, Standing.Draw> last = new HashMap<>();

  DrawExaminer(Standing standing, List<Finding> findings) {
    this.standing = standing;
    this.findings = findings;
  }

  /** Looks at a draw that was just folded. */
  void examine(long entry, Fact.DrawMade draw) {
    String division = "The draw of division " + draw.division();
    share(draw).ifPresent(words -> contradicts(entry, division + words));
    if (!standing.pool(draw.division()).equals(Optional.of(draw.pool()))) {
      contradicts(
          entry,
          division
              + " was made from "
              + String.join(", ", draw.pool())
              + "; the roster in force has "
              + standing.pool(draw.division()).map(pool -> String.join(", ", pool)).orElse("nobody")
              + ".");
    }
    recompute(draw).ifPresent(words -> contradicts(entry, division + words));
    again(entry, draw);
  }

  /** What is wrong with the share, if anything is. */
  private Optional<String> share(Fact.DrawMade draw) {
    @Nullable Percent asked =
        standing
            .ruleBook()
            .flatMap(book -> book.division(draw.division()))
            .map(Division::coverage)
            .map(Coverage::share)
            .orElse(null);
    if (asked == null) {
      return Optional.of(" was made, but the rule book in force draws nobody there.");
    }
    return draw.share().equals(asked.toString())
        ? Optional.empty()
        : Optional.of(" was made for " + draw.share() + ", but the rule has " + asked + ".");
  }

  private static Optional<String> recompute(Fact.DrawMade draw) {
    try {
      List<String> drawn =
          PublicDraw.of(draw.seed(), Percent.parse(draw.share()), draw.pool()).drawn();
      return drawn.equals(draw.drawn())
          ? Optional.empty()
          : Optional.of(
              " was signed with "
                  + String.join(", ", draw.drawn())
                  + "; from its seed are drawn "
                  + String.join(", ", drawn)
                  + ".");
    } catch (IllegalArgumentException e) {
      return Optional.of(" cannot be repeated: " + e.getMessage() + ".");
    }
  }

  /** A division is drawn once under a rule book; under another one a new draw is to be seen. */
  private void again(long entry, Fact.DrawMade draw) {
    Standing.Draw now = standing.draw(draw.division()).orElseThrow();
    Standing.Draw before = last.put(draw.division(), now);
    if (before == null) {
      return;
    }
    boolean sameRules = before.ruleBook().equals(now.ruleBook());
    findings.add(
        Finding.of(
            sameRules ? Kind.DRAW : Kind.DRAWN_ANEW,
            "Division "
                + draw.division()
                + " was drawn again, with the seed "
                + Wording.quoted(draw.seed())
                + (sameRules ? ", under the same rule book." : ", under another rule book."),
            before.sequence(),
            entry));
  }

  private void contradicts(long entry, String words) {
    findings.add(Finding.of(Kind.DRAW, words, entry));
  }
}
