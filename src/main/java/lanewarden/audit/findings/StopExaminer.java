package lanewarden.audit.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanewarden.audit.findings.Finding.Kind;
import lanewarden.audit.wording.Wording;
import lanewarden.journal.Fact;
import lanewarden.journal.LineStop;
import lanewarden.journal.Standing;

/**
 * Looks at the stops of the line for safety: how long each was, and what was done while one stood.
 *
 * <p>Owned by one thread.
 */
final class StopExaminer {
  private final Standing standing;
  private final List<Finding> findings;
  private Optional<LineStop> stop = Optional.empty();

  StopExaminer(Standing standing, List<Finding> findings) {
    this.standing = standing;
    this.findings = findings;
  }

  /** Notes how things stand before the next fact is folded. */
  void before() {
    stop = standing.stop();
  }

  /** Looks at a fact that was just folded into the standing. */
  void examine(long entry, Fact fact) {
    what(fact)
        .ifPresent(
            what ->
                stop.ifPresent(
                    on ->
                        findings.add(
                            Finding.of(
                                Kind.NOT_CLEAR,
                                what
                                    + " although the line was not clear since entry "
                                    + on.number()
                                    + ".",
                                on.number(),
                                entry))));
  }

  private static Optional<String> what(Fact fact) {
    if (fact instanceof Fact.CheckOpened) {
      return Optional.of("A check was opened");
    } else if (fact instanceof Fact.ReadingTaken) {
      return Optional.of("A reading was taken");
    } else if (fact instanceof Fact.VerdictGiven) {
      return Optional.of("A verdict was given");
    } else if (fact instanceof Fact.VerificationShot) {
      return Optional.of("A shot of a verification was taken");
    }
    return Optional.empty();
  }

  /** Lists the stops when the last entry is folded. */
  void finish() {
    standing.stops().forEach(this::tell);
  }

  private void tell(LineStop one) {
    List<Long> entries = new ArrayList<>(List.of(one.number()));
    one.cleared().ifPresent(end -> entries.add(end.sequence()));
    findings.add(
        new Finding(
            Kind.LINE_STOPPED,
            entries,
            "The line was stopped for safety at "
                + Wording.time(one.at())
                + ", "
                + one.reason().map(Wording::quoted).orElse("without a reason")
                + ". "
                + one.lasted()
                    .map(time -> "It was clear again after " + Wording.lasted(time) + ".")
                    .orElse("It was not clear again at the ledger’s last entry.")));
  }
}
