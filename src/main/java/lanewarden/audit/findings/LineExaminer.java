package lanewarden.audit.findings;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lanewarden.audit.findings.Finding.Kind;
import lanewarden.audit.wording.ReadingMark;
import lanewarden.audit.wording.Wording;
import lanewarden.journal.Fact;
import lanewarden.journal.Flood;
import org.jspecify.annotations.Nullable;

/**
 * Looks at the numbers by which an instrument counts its own lines: whether a reading repeats one
 * that was taken before, and whether a number is missing.
 *
 * <p>An instrument that was switched off may count from its first number again, and then a line may
 * come again by chance; two one after the other do not. A number counts as known where a refused
 * line or a shot of a verification may have had it. Over the end of the program and its next start
 * a gap is told as well, but numbers that began anew are not: there an instrument is mostly
 * switched off. Owned by one thread.
 */
final class LineExaminer {
  private static final String DIGITS = "[0-9]{1,18}";

  private final List<Finding> findings;
  private final Map<String, Numbered> byBytes = new HashMap<>();
  private final List<List<Copy>> copies = new ArrayList<>();
  private @Nullable Numbered last;
  private long place;
  private long others;

  /**
   * A reading whose line had a number.
   *
   * @param place which of them it is
   * @param opening the first entry since the ledger was opened for writing before it
   */
  private record Numbered(long entry, Fact.ReadingTaken fact, long place, long opening) {
    boolean isMeasured() {
      return ReadingMark.isMeasured(fact.source());
    }

    /** Whether one instrument may count on over an opening: a simulated one begins anew. */
    boolean mayGoOnFrom(Numbered before) {
      return before.isHeardAtPort()
          && isHeardAtPort()
          && before.fact.instrument().equals(fact.instrument());
    }

    private boolean isHeardAtPort() {
      return isMeasured() && ReadingMark.isHeard(fact.source());
    }

    String line() {
      return String.valueOf(fact.line());
    }

    Optional<Long> number() {
      return Optional.of(line()).filter(l -> l.matches(DIGITS)).map(Long::valueOf);
    }

    @Override
    public String toString() {
      return "number " + line() + " (entry " + entry + ")";
    }
  }

  /** A reading with the bytes of one before. */
  private record Copy(Numbered is, Numbered was) {
    boolean inOneOpening() {
      return is.opening == was.opening;
    }

    boolean follows(Copy before) {
      return is.place == before.is.place + 1
          && was.place == before.was.place + 1
          && inOneOpening() == before.inOneOpening();
    }
  }

  LineExaminer(List<Finding> findings) {
    this.findings = findings;
  }

  /**
   * Looks at a fact.
   *
   * @param opening the first entry since the ledger was opened for writing
   */
  void examine(long entry, Fact fact, long opening) {
    if (fact instanceof Fact.LineRefused refused && ReadingMark.isHeard(refused.source())) {
      others += Flood.lines(refused);
    } else if (fact instanceof Fact.VerificationShot shot && ReadingMark.isHeard(shot.source())) {
      others++;
    } else if (fact instanceof Fact.ReadingTaken taken && taken.line() != null) {
      Numbered now = new Numbered(entry, taken, place++, opening);
      repeated(now);
      counted(now);
      last = now;
      others = 0;
    }
  }

  private void repeated(Numbered is) {
    Numbered was = byBytes.put(is.fact().raw(), is);
    if (was == null) {
      return;
    }
    Copy copy = new Copy(is, was);
    if (is.fact().check() == was.fact().check()) {
      add(copy, " in one check, where the station refuses it.");
    } else if (is.fact().at().equals(was.fact().at())) {
      add(copy, ", to the same fraction of a second.");
    } else if (copy.inOneOpening() || is.isMeasured()) {
      List<Copy> run = copies.isEmpty() ? List.of() : copies.get(copies.size() - 1);
      if (!run.isEmpty() && copy.follows(run.get(run.size() - 1))) {
        run.add(copy);
      } else {
        copies.add(new ArrayList<>(List.of(copy)));
      }
    }
  }

  private void add(Copy copy, String words) {
    findings.add(
        Finding.of(
            Kind.REPEATED,
            "The bytes with " + copy.is() + " are those of " + copy.was() + words,
            copy.was().entry(),
            copy.is().entry()));
  }

  private void counted(Numbered now) {
    Numbered before = last;
    if (before == null || before.number().isEmpty() || now.number().isEmpty()) {
      return;
    }
    boolean inOneOpening = before.opening() == now.opening();
    long step = now.number().get() - before.number().get();
    if (!inOneOpening && !now.mayGoOnFrom(before)) {
      return;
    }
    if (step <= 0 && inOneOpening) {
      findings.add(
          Finding.of(
              Kind.NUMBERS,
              "After "
                  + before
                  + " came "
                  + now
                  + ": the instrument began to count anew, as when it is switched on, or these"
                  + " lines are of another time.",
              before.entry(),
              now.entry()));
    } else if (step - 1 > others) {
      long missing = step - 1 - others;
      findings.add(
          new Finding(
              Kind.NUMBERS,
              List.of(before.entry(), now.entry()),
              "After "
                  + before
                  + " came "
                  + now
                  + ": the instrument counted "
                  + Wording.count(missing, "shot")
                  + " between them of which no entry tells. Shots of a practice stand in none"
                  + (inOneOpening
                      ? "."
                      : ", nor do those while the station did not run; and an instrument that was"
                          + " switched off may have begun anew."),
              missing));
    }
  }

  /** Tells of lines that came again, when the last entry is folded. */
  void finish() {
    for (List<Copy> run : copies) {
      List<Long> entries = new ArrayList<>();
      run.forEach(copy -> entries.add(copy.was().entry()));
      run.forEach(copy -> entries.add(copy.is().entry()));
      boolean certain = run.size() > 1 && run.get(0).inOneOpening();
      findings.add(
          new Finding(
              certain ? Kind.REPEATED : Kind.REPEATED_ONCE,
              entries,
              Wording.count(run.size(), "reading")
                  + (run.size() == 1 ? " has" : " one after the other have")
                  + " the very bytes, numbers among them, of "
                  + (run.size() == 1 ? "an earlier one" : "earlier ones in the same order")
                  + ": "
                  + run.get(0).is()
                  + " and "
                  + run.get(0).was()
                  + (run.size() == 1 ? "." : ", and those that follow.")
                  + (certain
                      ? ""
                      : " By chance that may be where the instrument began to count anew; look at"
                          + " both checks.")));
    }
  }
}
