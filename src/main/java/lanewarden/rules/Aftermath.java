package lanewarden.rules;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lanewarden.quantity.Sentence;

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
  List<Sentence> sentences() {
    List<Sentence> sentences = new ArrayList<>();
    boolean usual = fails.equals(usual(rechecks)) && bands.isEmpty();
    sentences.add(recheckSentence(usual));
    for (Band band : bands) {
      sentences.add(
          Sentence.of(Afterwards.OVER_BY, band.reached(), Sentence.of(band.consequence())));
    }
    if (!usual) {
      for (Phase phase : Phase.values()) {
        sentences.add(Sentence.of(fail(phase), Sentence.of(onFail(phase))));
      }
    }
    lapse().ifPresent(sentences::add);
    return sentences;
  }

  private Afterwards fail(Phase phase) {
    boolean other = !bands.isEmpty();
    return switch (phase) {
      case BEFORE -> other ? Afterwards.OTHER_BEFORE : Afterwards.FAIL_BEFORE;
      case DURING -> other ? Afterwards.OTHER_DURING : Afterwards.FAIL_DURING;
      case AFTER -> other ? Afterwards.OTHER_AFTER : Afterwards.FAIL_AFTER;
    };
  }

  private Optional<Sentence> lapse() {
    Object[] with = lapses.stream().sorted().map(Sentence::of).toArray();
    return switch (with.length) {
      case 0 -> Optional.empty();
      case 1 -> Optional.of(Sentence.of(Afterwards.LAPSES_WITH, with));
      case 2 -> Optional.of(Sentence.of(Afterwards.LAPSES_WITH_TWO, with));
      default -> Optional.of(Sentence.of(Afterwards.LAPSES_WITH_THREE, with));
    };
  }

  private Sentence recheckSentence(boolean usual) {
    boolean someFailBringsOne =
        fails.containsValue(Consequence.RECHECK)
            || bands.stream().anyMatch(band -> band.consequence() == Consequence.RECHECK);
    if (rechecks == 0 || !someFailBringsOne) {
      return Sentence.of(Afterwards.NO_RECHECK);
    }
    if (rechecks == 1) {
      return Sentence.of(usual ? Afterwards.ONE_BEFORE : Afterwards.ONE_WHERE_BROUGHT);
    }
    return Sentence.of(usual ? Afterwards.SOME_BEFORE : Afterwards.SOME_WHERE_BROUGHT, rechecks);
  }
}
