package lanewarden.audit.findings;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lanewarden.audit.findings.Finding.Kind;
import lanewarden.audit.wording.ReadingMark;
import lanewarden.audit.wording.Wording;
import lanewarden.journal.Fact;
import lanewarden.journal.FrameFact;
import lanewarden.journal.Standing;
import lanewarden.ledger.Enrolled;
import lanewarden.ledger.Entry;
import lanewarden.ledger.Suspension;
import lanewarden.rules.Phase;
import lanewarden.rules.RuleBook;
import org.jspecify.annotations.Nullable;

/**
 * Looks at what happened around the checks: the link, the papers, the sign-ins.
 *
 * <p>Owned by one thread.
 */
final class StationExaminer {
  /** Kinds that the ledger writes itself. */
  private static final Set<String> OF_THE_LEDGER =
      Set.of("ledger-opened", "official-enrolled", "official-suspended");

  private static final String LOST = "lost";

  private final Standing standing;
  private final List<Finding> findings;
  private final Map<String, List<Long>> notMeasured = new LinkedHashMap<>();
  private final Map<Long, SignIn> signIns = new LinkedHashMap<>();
  private final Map<Long, String> ruleBookSigners = new LinkedHashMap<>();
  private final Map<String, Edition> editions = new HashMap<>();
  private Phase phase = Phase.BEFORE;
  private @Nullable Long opening;

  private record SignIn(String signer, String name) {}

  /** The rule book that was the last in force under an edition. */
  private record Edition(long number, String hash) {}

  StationExaminer(Standing standing, List<Finding> findings) {
    this.standing = standing;
    this.findings = findings;
  }

  /** Looks at an entry that holds no fact of the journal. */
  void examineOther(Entry entry) {
    if (!OF_THE_LEDGER.contains(entry.kind())) {
      add(
          Kind.STRANGE,
          "The kind " + Wording.quoted(entry.kind()) + " is none that this program knows.",
          entry.sequence());
    }
  }

  /**
   * Looks at a fact.
   *
   * @param program the first entry since the program began
   */
  void examine(Entry entry, Fact fact, long program) {
    long number = entry.sequence();
    if (fact instanceof Fact.LinkChanged link && link.state().equals(LOST)) {
      add(Kind.LINK_LOST, Wording.time(link.at()) + ": " + link.words(), number);
    } else if (fact instanceof Fact.StationOpened) {
      opened(number, program);
    } else if (fact instanceof Fact.ReadingTaken reading) {
      measured(number, reading.source());
    } else if (fact instanceof Fact.VerificationShot shot) {
      measured(number, shot.source());
    } else if (fact instanceof Fact.OfficialSignedIn in) {
      signIns.put(number, new SignIn(entry.signer(), in.name()));
    } else if (fact instanceof FrameFact.OfficialSignedOut out && out.reason() != null) {
      add(Kind.SIGNED_OUT, Wording.quoted(out.name()) + " was signed out: " + out.reason(), number);
    } else if (fact instanceof Fact.PhaseBegan began) {
      began(number, began);
    } else if (fact instanceof Fact.RuleBookAdopted adopted) {
      adopted(number, entry.signer(), adopted);
    }
  }

  private void measured(long number, String source) {
    if (!ReadingMark.isMeasured(source)) {
      notMeasured.computeIfAbsent(source, s -> new ArrayList<>()).add(number);
    }
  }

  private void began(long number, Fact.PhaseBegan began) {
    boolean back = began.phase().compareTo(phase) < 0;
    String reason =
        began.reason() == null
            ? back ? " No reason was signed." : ""
            : " The reason: " + Wording.quoted(began.reason()) + ".";
    add(
        back ? Kind.PHASE_BACK : Kind.PHASE,
        "From here on it is "
            + began.phase().phrase()
            + (back ? " again; it was " + phase.phrase() + "." : ".")
            + reason,
        number);
    phase = began.phase();
  }

  private void adopted(long number, String signer, Fact.RuleBookAdopted adopted) {
    if (!ruleBookSigners.isEmpty()) {
      String reason =
          adopted.reason() == null
              ? " No reason was signed."
              : " The reason: " + Wording.quoted(adopted.reason()) + ".";
      add(
          Kind.EXCHANGED,
          "From here on another rule book is in force: "
              + Wording.quoted(adopted.file())
              + ", "
              + Wording.shortHash(adopted.sha256())
              + "."
              + reason,
          number);
    }
    ruleBookSigners.put(number, signer);
    standing.ruleBook().ifPresent(book -> edition(number, book));
  }

  private void edition(long number, RuleBook book) {
    Edition before = editions.put(book.edition(), new Edition(number, book.sha256()));
    if (before != null && !before.hash().equals(book.sha256())) {
      add(
          Kind.EDITION,
          "The rule book "
              + Wording.shortHash(book.sha256())
              + " was put in force as edition "
              + Wording.quoted(book.edition())
              + ", which another, "
              + Wording.shortHash(before.hash())
              + ", had been before it.",
          before.number(),
          number);
    }
  }

  /** Papers are read when the program begins, so only then can there be others for a check. */
  private void opened(long number, long program) {
    Long before = opening;
    if (before != null && program <= before) {
      standing
          .current()
          .ifPresent(
              check ->
                  add(
                      Kind.ORDER,
                      "The line was opened again while check "
                          + check.number()
                          + " was at the line, although the program had not begun anew since entry "
                          + before
                          + " opened it.",
                      before,
                      check.number(),
                      number));
    }
    opening = number;
  }

  /**
   * Looks at what can be told only when the last entry is folded and all keys are known.
   *
   * @param organizer thumbprint of the organizer's key, if it is known
   */
  void finish(List<Enrolled> officials, Optional<String> organizer, List<Suspension> suspensions) {
    for (Suspension suspension : suspensions) {
      add(
          Kind.SUSPENDED,
          "From here on nothing may be signed with the key of "
              + Wording.quoted(suspension.official().name())
              + ". The reason: "
              + Wording.quoted(suspension.reason())
              + ".",
          suspension.sequence());
    }
    ruleBookSigners.forEach(
        (number, signer) -> {
          if (!organizer.equals(Optional.of(signer))) {
            add(
                Kind.RULE,
                "A rule book was put in force by another key than the organizer's.",
                number);
          }
        });
    notMeasured.forEach(
        (source, entries) ->
            findings.add(
                new Finding(
                    Kind.NOT_MEASURED,
                    entries,
                    Wording.count(entries.size(), "reading")
                        + " came from the source "
                        + Wording.quoted(source)
                        + ", which is neither an instrument at a port nor an official's typing.")));
    Map<String, String> names = new LinkedHashMap<>();
    officials.forEach(o -> names.put(o.thumbprint(), o.name()));
    signIns.forEach(
        (number, in) -> {
          String enrolled = names.get(in.signer());
          if (!in.name().equals(enrolled)) {
            add(
                Kind.NAME,
                Wording.quoted(in.name())
                    + " signed in with a key "
                    + (enrolled == null
                        ? "that no sound enrolment names."
                        : "that was enrolled for " + Wording.quoted(enrolled) + "."),
                number);
          }
        });
  }

  private void add(Kind kind, String words, Long... entries) {
    findings.add(Finding.of(kind, words, entries));
  }
}
