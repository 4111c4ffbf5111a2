package lanewarden.audit.findings;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import lanewarden.audit.findings.Finding.Kind;
import lanewarden.audit.wording.Wording;
import lanewarden.journal.Fact;
import lanewarden.journal.Interpreter;
import lanewarden.journal.Interpreter.Interpretation;
import lanewarden.quantity.Speed;

/**
 * Looks whether every reading follows from its raw bytes, by the sentence profiles and settings
 * that the opening before it signed; and whether the opening itself follows from them.
 *
 * <p>Owned by one thread.
 */
final class BytesExaminer {
  private final Interpreter interpreter;
  private final List<Finding> findings;
  private final Map<Long, Unread> unread = new LinkedHashMap<>();
  private final List<Long> unopened = new ArrayList<>();
  private Optional<Interpretation> papers = Optional.empty();
  private long opening;

  /** What could not be read anew by the papers of one opening. */
  private record Unread(String why, List<Long> entries) {}

  BytesExaminer(Interpreter interpreter, List<Finding> findings) {
    this.interpreter = interpreter;
    this.findings = findings;
  }

  /** Looks at a fact that was just folded into the standing. */
  void examine(long entry, Fact fact) {
    if (fact instanceof Fact.StationOpened opened) {
      opened(entry, interpreter.of(opened));
    } else if (fact instanceof Fact.ReadingTaken taken && isReadable(entry)) {
      tell(
          entry,
          "Check " + taken.check() + ", shot " + taken.shot(),
          taken.speed(),
          papers.orElseThrow().against(taken));
    } else if (fact instanceof Fact.VerificationShot shot && isReadable(entry)) {
      tell(
          entry,
          "Verification " + shot.verification() + ", shot " + shot.shot(),
          shot.speed(),
          papers.orElseThrow().against(shot));
    }
  }

  /** The papers of the last opening, if there was one. */
  Optional<Interpretation> papers() {
    return papers;
  }

  private void opened(long entry, Interpretation now) {
    papers = Optional.of(now);
    opening = entry;
    List<String> against = now.against();
    if (!against.isEmpty()) {
      findings.add(
          Finding.of(
              Kind.OPENING,
              "The line was opened, and for its instrument " + String.join("; and ", against) + ".",
              entry));
    }
    now.fault()
        .map(why -> why.lines().collect(Collectors.joining("; ")))
        .ifPresent(why -> unread.put(entry, new Unread(why, new ArrayList<>())));
  }

  /** Whether there are papers to read it by; what is not read anew is told at the end. */
  private boolean isReadable(long entry) {
    if (papers.isEmpty()) {
      unopened.add(entry);
      return false;
    }
    Unread left = unread.get(opening);
    if (left != null) {
      left.entries().add(entry);
    }
    return left == null;
  }

  private void tell(long entry, String where, Speed signed, List<String> against) {
    if (!against.isEmpty()) {
      findings.add(
          Finding.of(
              Kind.BYTES,
              where + " was signed as " + signed + ", but " + String.join("; ", against) + ".",
              entry));
    }
  }

  /** Tells what could not be read anew, when the last entry is folded. */
  void finish() {
    unread.forEach(
        (entry, left) -> {
          List<Long> entries = new ArrayList<>(List.of(entry));
          entries.addAll(left.entries());
          findings.add(
              new Finding(
                  Kind.BYTES,
                  entries,
                  "The papers of the instrument that were signed with this opening cannot be read,"
                      + " so nothing shows that "
                      + Wording.count(left.entries().size(), "reading")
                      + " after it "
                      + (left.entries().size() == 1 ? "follows" : "follow")
                      + " from what the instrument sent: "
                      + left.why()));
        });
    if (!unopened.isEmpty()) {
      findings.add(
          new Finding(
              Kind.BYTES,
              unopened,
              Wording.count(unopened.size(), "reading")
                  + " stood before any opening of the line, so nothing says how the instrument"
                  + " speaks."));
    }
  }
}
