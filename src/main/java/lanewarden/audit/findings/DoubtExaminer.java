package lanewarden.audit.findings;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lanewarden.audit.findings.Finding.Kind;
import lanewarden.audit.wording.Wording;
import lanewarden.journal.Check;
import lanewarden.journal.Fact;
import lanewarden.journal.SetUpStated;
import lanewarden.journal.TakenShot;
import lanewarden.rules.Division;
import lanewarden.rules.Doubt;
import org.jspecify.annotations.Nullable;

/**
 * Looks at what was found to speak against readings, and at what officials said to it.
 *
 * <p>Owned by one thread.
 */
final class DoubtExaminer {
  private final List<Finding> findings;
  private final Map<Long, List<Flag>> flagsByCheck = new LinkedHashMap<>();

  /** A flag, and what became of it as far as the ledger was read. */
  private static final class Flag {
    private final long entry;
    private final Fact.ReadingFlagged fact;
    private final String check;
    private Doubt.@Nullable Kind doubt;
    private Optional<Turn> turn = Optional.empty();

    Flag(long entry, Fact.ReadingFlagged fact, String check, Doubt.@Nullable Kind doubt) {
      this.entry = entry;
      this.fact = fact;
      this.check = check;
      this.doubt = doubt;
    }
  }

  /** Why a flag holds no more, and the entry that made it so. */
  private record Turn(String words, long entry) {}

  DoubtExaminer(List<Finding> findings) {
    this.findings = findings;
  }

  /** A reading was flagged, as the rule must find too. */
  void flagged(long entry, Fact.ReadingFlagged flag, Check check, Optional<Division> division) {
    Doubt.@Nullable Kind doubt = shot(check, flag.reading()).doubt();
    flagsByCheck
        .computeIfAbsent(check.number(), number -> new ArrayList<>())
        .add(new Flag(entry, flag, Wording.check(check), doubt));
    if (division.isPresent() && !isOf(flag, doubt)) {
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

  private static boolean isOf(Fact.ReadingFlagged flag, Doubt.@Nullable Kind doubt) {
    return doubt != null && doubt.word().equals(flag.kind());
  }

  private static TakenShot shot(Check check, long reading) {
    return check.shots().stream()
        .filter(shot -> shot.sequence() == reading)
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("reading " + reading + " was not folded"));
  }

  /** Something was folded into a check: flags of its readings may hold no more, or again. */
  void turned(long entry, Fact fact, Check check) {
    flagsByCheck
        .getOrDefault(check.number(), List.of())
        .forEach(flag -> turned(flag, entry, fact, shot(check, flag.fact.reading())));
  }

  private static void turned(Flag flag, long entry, Fact fact, TakenShot shot) {
    boolean same = flag.doubt == shot.doubt();
    flag.doubt = shot.doubt();
    if (isOf(flag.fact, flag.doubt)) {
      flag.turn = Optional.empty();
    } else if (fact instanceof Fact.ReadingVoided voided && voided.reading() == shot.sequence()) {
      flag.turn = Optional.of(new Turn("It was declared void", entry));
    } else if (fact instanceof Fact.ReadingKept kept && kept.reading() == shot.sequence()) {
      flag.turn = Optional.of(new Turn("It was let count", entry));
    } else if (!same) {
      String now =
          shot.doubt() == null ? "It counts" : shot.counts() ? "It is in doubt" : "It is void";
      flag.turn = Optional.of(new Turn(now + " since " + happened(fact), entry));
    }
  }

  private static String happened(Fact fact) {
    if (fact instanceof Fact.ReadingVoided) {
      return "another reading was declared void";
    }
    if (fact instanceof Fact.ReadingKept) {
      return "another reading was let count";
    }
    return fact instanceof SetUpStated
        ? "bow and arrow were stated anew"
        : "a further shot was taken";
  }

  /** Tells every flag, when the last entry is folded and it is known what became of it. */
  void finish() {
    flagsByCheck.values().forEach(flags -> flags.forEach(this::tell));
  }

  private void tell(Flag flag) {
    boolean impossible = flag.fact.kind().equals(Doubt.Kind.IMPOSSIBLE.word());
    List<Long> entries = new ArrayList<>(List.of(flag.fact.reading(), flag.entry));
    flag.turn.ifPresent(turn -> entries.add(turn.entry()));
    String became =
        flag.turn.map(turn -> " " + turn.words() + " (entry " + turn.entry() + ").").orElse("");
    findings.add(
        new Finding(
            impossible ? Kind.IMPOSSIBLE : Kind.DOUBT,
            entries,
            flag.check + ", " + flag.fact.words() + "." + became));
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
