package lanewarden.audit;

import java.util.List;
import java.util.Optional;
import lanewarden.audit.Finding.Kind;
import lanewarden.journal.Check;
import lanewarden.journal.Fact;
import lanewarden.rules.Division;
import lanewarden.rules.Doubt;

/**
 * Looks at what was found to speak against readings, and at what officials said to it.
 *
 * <p>Owned by one thread.
 */
final class DoubtExaminer {
  private final List<Finding> findings;

  DoubtExaminer(List<Finding> findings) {
    this.findings = findings;
  }

  /** A reading was flagged, as the rule must find too. */
  void flagged(long entry, Fact.ReadingFlagged flag, Check check, Optional<Division> division) {
    boolean impossible = flag.kind().equals(Doubt.Kind.IMPOSSIBLE.word());
    add(
        impossible ? Kind.IMPOSSIBLE : Kind.DOUBT,
        Wording.check(check) + ", " + flag.words() + ".",
        flag.reading(),
        entry);
    boolean found =
        division.isEmpty()
            || check.doubts(division.get().rule()).stream()
                .anyMatch(doubt -> isOf(doubt, flag, check));
    if (!found) {
      add(
          Kind.ORDER,
          Wording.check(check)
              + ": the reading of entry "
              + flag.reading()
              + " was flagged as "
              + Wording.quoted(flag.kind())
              + ", but by the rule nothing of that kind speaks against it.",
          flag.reading(),
          entry);
    }
  }

  private static boolean isOf(Doubt doubt, Fact.ReadingFlagged flag, Check check) {
    return doubt.kind().word().equals(flag.kind())
        && check.shots().get(doubt.shot()).sequence() == flag.reading();
  }

  /** An official let a reading count. */
  void kept(long entry, Fact.ReadingKept kept, Check check) {
    check.shots().stream()
        .filter(shot -> shot.sequence() == kept.reading())
        .forEach(
            shot -> {
              add(
                  Kind.KEPT,
                  Wording.check(check)
                      + ", shot "
                      + shot.reading().shot()
                      + ", "
                      + shot.reading().speed()
                      + ": "
                      + Wording.quoted(kept.reason())
                      + ".",
                  kept.reading(),
                  entry);
              if (shot.flags().isEmpty()) {
                add(
                    Kind.ORDER,
                    Wording.check(check)
                        + ": a reading was let count that nothing had been found against.",
                    kept.reading(),
                    entry);
              }
            });
  }

  /** A verdict fell: everything that by the rule speaks against a reading must be in the ledger. */
  void decided(long entry, Check check, Optional<Division> division) {
    division.map(d -> check.doubts(d.rule())).orElse(List.of()).stream()
        .filter(doubt -> !check.shots().get(doubt.shot()).isFlagged(doubt.kind()))
        .forEach(
            doubt ->
                add(
                    Kind.ORDER,
                    Wording.check(check)
                        + ": nothing was signed about a reading that by the rule is "
                        + doubt.kind().word()
                        + " ("
                        + doubt.words()
                        + ").",
                    check.shots().get(doubt.shot()).sequence(),
                    entry));
  }

  /** Whether readings were in doubt when a check was ended, for the sentence about its end. */
  static String leftOpen(Check check, Optional<Division> division) {
    boolean open =
        division.map(d -> check.doubts(d.rule())).orElse(List.of()).stream()
            .anyMatch(Doubt::isOpen);
    return open ? " Readings were in doubt, and no official had said whether they count." : "";
  }

  private void add(Kind kind, String words, Long... entries) {
    findings.add(Finding.of(kind, words, entries));
  }
}
