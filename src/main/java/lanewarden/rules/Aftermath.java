package lanewarden.rules;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What comes after a verdict.
 *
 * @param rechecks new checks allowed after a fail, zero or more
 * @param fails what follows a fail in each phase; every phase is there
 * @param bands how far over with which consequence, the narrowest first; empty where it does not
 *     matter
 * @param lapses what makes a pass lapse
 */
public record Aftermath(
    int rechecks, Map<Phase, Consequence> fails, List<Band> bands, Set<Lapse> lapses) {

  /**
   * @throws IllegalArgumentException if the parts contradict each other
   */
  public Aftermath {
    if (rechecks < 0) {
      throw new IllegalArgumentException("there cannot be " + rechecks + " re-checks");
    }
    if (fails.size() != Phase.values().length) {
      throw new IllegalArgumentException("a fail has a consequence in every phase");
    }
    fails = Map.copyOf(fails);
    bands = List.copyOf(bands);
    lapses = Set.copyOf(lapses);
  }

  /** Re-checks before the event, a judge afterwards; no bands, and a pass that does not lapse. */
  public static Aftermath plain(int rechecks) {
    return new Aftermath(rechecks, usual(rechecks), List.of(), Set.of());
  }

  /** What follows a fail where the rule does not say. */
  static Map<Phase, Consequence> usual(int rechecks) {
    Map<Phase, Consequence> usual = new EnumMap<>(Phase.class);
    usual.put(Phase.BEFORE, rechecks > 0 ? Consequence.RECHECK : Consequence.JUDGE);
    usual.put(Phase.DURING, Consequence.JUDGE);
    usual.put(Phase.AFTER, Consequence.JUDGE);
    return usual;
  }

  /**
   * What follows a verdict in a phase; empty where nothing follows, because the check was passed or
   * not decided.
   *
   * <p>Who is not admitted was not over a limit: unless the phase bars or strikes, the archer may
   * be checked again with another bow or arrow, in whatever phase.
   */
  public Optional<Consequence> follows(Verdict verdict, Phase phase) {
    Consequence usual = onFail(phase);
    if (verdict instanceof Verdict.Over over) {
      return Optional.of(over.band().map(Band::consequence).orElse(usual));
    }
    if (verdict instanceof Verdict.NotAdmitted) {
      return Optional.of(usual == Consequence.JUDGE ? Consequence.RECHECK : usual);
    }
    return Optional.empty();
  }

  /** What follows a fail in a phase, bands aside. */
  public Consequence onFail(Phase phase) {
    return fails.getOrDefault(phase, Consequence.JUDGE);
  }

  /** Whether every fail in a phase, however far over, brings a re-check while one is left. */
  boolean everyFailIsChecked(Phase phase) {
    return onFail(phase) == Consequence.RECHECK
        && bands.stream().allMatch(band -> band.consequence() == Consequence.RECHECK);
  }

  /** Sentences for screens and reports. */
  List<String> sentences() {
    List<String> sentences = new ArrayList<>();
    boolean usual = fails.equals(usual(rechecks)) && bands.isEmpty();
    sentences.add(recheckSentence(usual));
    for (Band band : bands) {
      sentences.add("Over by up to " + band.reach() + ": " + band.consequence().phrase() + ".");
    }
    if (!usual) {
      String fail = bands.isEmpty() ? "A fail " : "Any other fail ";
      for (Phase phase : Phase.values()) {
        sentences.add(fail + phase.phrase() + ": " + onFail(phase).phrase() + ".");
      }
    }
    if (!lapses.isEmpty()) {
      sentences.add(
          "A pass lapses with "
              + Wording.anyOf(lapses.stream().sorted().map(Lapse::word).toList())
              + ".");
    }
    return sentences;
  }

  private String recheckSentence(boolean usual) {
    boolean someFailBringsOne =
        fails.containsValue(Consequence.RECHECK)
            || bands.stream().anyMatch(band -> band.consequence() == Consequence.RECHECK);
    if (rechecks == 0 || !someFailBringsOne) {
      return "No re-check after a fail.";
    }
    String allowed = Wording.count(rechecks, "re-check") + (rechecks == 1 ? " is" : " are");
    return usual
        ? "After a fail before the event, "
            + allowed
            + " allowed; during and after it, a judge rules."
        : "Where a fail brings a re-check, " + allowed + " allowed.";
  }
}
