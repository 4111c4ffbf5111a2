package lanewarden.audit.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lanewarden.audit.findings.Finding.Kind;
import lanewarden.audit.wording.Wording;
import lanewarden.journal.Fact;
import lanewarden.journal.ProtestFact;
import lanewarden.journal.Standing;
import lanewarden.journal.StartList;
import lanewarden.ledger.Entry;

/**
 * Looks whether everybody who was checked stood so on the roster in force, and what each further
 * roster changed.
 *
 * <p>A late entry comes by another roster, which an official signs; there is no other lawful way to
 * the line. Owned by one thread.
 */
final class RosterExaminer {
  private final Standing standing;
  private final List<Finding> findings;
  private final List<Exchange> exchanges = new ArrayList<>();
  private Optional<StartList> list = Optional.empty();

  /** Another roster took over. */
  private record Exchange(Entry entry, Fact.RosterAdopted fact, Optional<String> what) {}

  RosterExaminer(Standing standing, List<Finding> findings) {
    this.standing = standing;
    this.findings = findings;
  }

  /** Looks at a fact that was just folded into the standing. */
  void examine(Entry entry, Fact fact) {
    if (fact instanceof Fact.RosterAdopted adopted) {
      adopted(entry, adopted);
    } else if (fact instanceof Fact.CheckOpened opened && opened.protest() == null) {
      tell(entry.sequence(), list.map(now -> now.against(opened)));
    } else if (fact instanceof ProtestFact.CorrectionMade made) {
      String bib = made.bib();
      String name = made.name();
      if (bib != null && name != null) {
        tell(entry.sequence(), list.map(now -> now.against(bib, name)));
      }
    }
  }

  private void adopted(Entry entry, Fact.RosterAdopted fact) {
    StartList now = StartList.of(fact);
    now.fault()
        .ifPresent(
            why ->
                add(
                    "This roster cannot be read, so nothing shows who could be called after it: "
                        + why,
                    entry.sequence()));
    list.ifPresent(was -> exchanges.add(new Exchange(entry, fact, was.changedBy(now))));
    list = Optional.of(now);
  }

  private void tell(long entry, Optional<List<String>> against) {
    List<String> words = against.orElse(List.of("no roster was in force"));
    if (!words.isEmpty()) {
      String who = standing.find(entry).map(Wording::check).orElse("Correction " + entry);
      add(who + ": " + String.join("; ", words) + ".", entry);
    }
  }

  /**
   * Tells of every further roster, when all keys are known.
   *
   * @param names who signs with which key, by thumbprint
   */
  void finish(Map<String, String> names) {
    for (Exchange exchange : exchanges) {
      findings.add(
          Finding.of(
              Kind.EXCHANGED,
              "From here on another roster is in force: "
                  + Wording.quoted(exchange.fact().file())
                  + ", "
                  + Wording.shortHash(exchange.fact().sha256())
                  + ". Signed by "
                  + names.getOrDefault(exchange.entry().signer(), "a key that nobody enrolled")
                  + ". "
                  + exchange
                      .what()
                      .map(RosterExaminer::changes)
                      .orElse("What it changes cannot be told."),
              exchange.entry().sequence()));
    }
  }

  private static String changes(String what) {
    return what.isEmpty() ? "It holds the same competitors with the same figures." : what + ".";
  }

  private void add(String words, long entry) {
    findings.add(Finding.of(Kind.ROSTER, words, entry));
  }
}
