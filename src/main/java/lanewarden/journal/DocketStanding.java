package lanewarden.journal;

import java.time.Instant;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.LongFunction;
import lanewarden.ledger.Enrolled;
import lanewarden.ledger.Entry;
import lanewarden.ledger.Suspension;
import lanewarden.rules.Rule;
import org.jspecify.annotations.Nullable;

/**
 * Protests, rulings and corrections while they are folded, and what speaks against those to come.
 *
 * <p>Owned by the standing's thread.
 */
final class DocketStanding {
  private final LongFunction<Check> checks;
  private final Function<Check, Optional<Rule>> rules;
  private final Map<Long, Protest> protests = new LinkedHashMap<>();
  private final Map<Long, Correction> corrections = new LinkedHashMap<>();
  private final Map<Long, Set<String>> signers = new HashMap<>();
  private final Map<Long, Long> standing = new HashMap<>();
  private final Set<String> judges = new HashSet<>();
  private final KeyHolders holders = new KeyHolders();
  private @Nullable String organizer;

  /**
   * @param checks by their number; throws IllegalArgumentException where there is none
   * @param rules that judge a check, where they are known
   */
  DocketStanding(LongFunction<Check> checks, Function<Check, Optional<Rule>> rules) {
    this.checks = checks;
    this.rules = rules;
  }

  /**
   * Takes an entry that holds no fact: an enrolment says whose a key is, and whether it is a
   * judge's from then on; a suspension ends that.
   */
  void note(Entry entry) {
    if (entry.sequence() == 1) {
      organizer = entry.signer();
      holders.organizer(organizer);
    }
    if (!entry.signer().equals(organizer)) {
      return;
    }
    Suspension.of(entry).ifPresent(judges::remove);
    Enrolled.of(entry)
        .ifPresent(
            enrolled -> {
              holders.note(enrolled);
              if (enrolled.isJudge()) {
                judges.add(enrolled.thumbprint());
              } else {
                judges.remove(enrolled.thumbprint());
              }
            });
  }

  /**
   * Notes who signed something of a check: that person does not rule on it. Whoever takes down what
   * somebody else disputes, or ruled on it before, has measured and changed nothing of it.
   */
  void note(String signer, Fact fact, Set<Long> checks) {
    boolean disputes =
        fact instanceof ProtestFact.ProtestFiled || fact instanceof ProtestFact.ProtestRuled;
    if (!disputes) {
      checks.forEach(check -> signers.computeIfAbsent(check, c -> new HashSet<>()).add(signer));
    }
  }

  /** A check was opened: it may be a recheck under a protest. */
  void opened(long number, Fact.CheckOpened opening) {
    if (opening.protest() != null) {
      protests.computeIfPresent(opening.protest(), (p, protest) -> protest.recheck(number));
    }
  }

  /**
   * Takes a fact.
   *
   * @return the check that is to be put in the place of the one of its number, or counted anew
   */
  Optional<Check> fold(long sequence, Instant at, String signer, ProtestFact fact) {
    if (fact instanceof ProtestFact.ProtestFiled filed) {
      Check disputed = checks.apply(filed.check());
      protests.put(
          sequence,
          new Protest(sequence, at, signer, filed, against(disputed), List.of(), List.of()));
      return Optional.of(disputed);
    } else if (fact instanceof ProtestFact.ProtestRuled ruled) {
      return rule(new Protest.Given(sequence, at, signer, ruled, objection(ruled, signer)));
    } else if (fact instanceof ProtestFact.CorrectionMade made) {
      make(sequence, at, signer, made);
      return Optional.empty();
    }
    ProtestFact.CorrectionConfirmed confirmed = (ProtestFact.CorrectionConfirmed) fact;
    return confirm(
        confirmed.correction(),
        new Correction.Confirmed(sequence, at, signer, objection(confirmed, signer)));
  }

  private Optional<Check> rule(Protest.Given given) {
    Protest protest = protest(given.fact().protest()).rule(given);
    protests.put(protest.number(), protest);
    if (given.objection().isEmpty()) {
      standing.put(protest.fact().check(), given.fact().stands());
    }
    return Optional.of(checks.apply(protest.fact().check()));
  }

  private void make(long sequence, Instant at, String signer, ProtestFact.CorrectionMade made) {
    if (!made.isWhole()) {
      throw new IllegalArgumentException(
          "a correction of the " + made.what().word() + " has other members");
    }
    String before =
        Correction.before(made, checks.apply(made.check()))
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        "check " + made.check() + " has no reading " + made.reading()));
    corrections.put(sequence, new Correction(sequence, at, signer, made, before, List.of()));
  }

  private Optional<Check> confirm(long number, Correction.Confirmed given) {
    Correction made = correction(number);
    Check check = checks.apply(made.fact().check());
    boolean effective = given.objection().isEmpty();
    String before = effective ? Correction.before(made.fact(), check).orElseThrow() : made.before();
    corrections.put(number, made.confirm(given, before));
    return effective ? Optional.of(made.appliedTo(check, rules)) : Optional.empty();
  }

  /** What speaks against anything of a dispute or correction, signed with this key now. */
  Optional<Objection> objection(ProtestFact fact, String signer) {
    if (fact instanceof ProtestFact.ProtestFiled filed) {
      return against(checks.apply(filed.check()));
    }
    if (fact instanceof ProtestFact.ProtestRuled ruled) {
      return objection(protest(ruled.protest()), ruled, signer);
    }
    if (fact instanceof ProtestFact.CorrectionMade made) {
      return against(made);
    }
    return fact instanceof ProtestFact.CorrectionConfirmed confirmed
        ? objection(correction(confirmed.correction()), signer)
        : Optional.empty();
  }

  /** What speaks against a protest about a check. */
  private static Optional<Objection> against(Check disputed) {
    if (disputed.opened().protest() != null) {
      return Optional.of(Objection.IS_RECHECK);
    }
    return goesOn(disputed) ? Optional.of(Objection.CHECK_RUNS) : Optional.empty();
  }

  private static boolean goesOn(Check check) {
    return check.outcome().isEmpty() && !check.isClosed();
  }

  private Optional<Objection> objection(
      Protest protest, ProtestFact.ProtestRuled ruled, String signer) {
    List<Long> all = protest.all();
    boolean original = ruled.stands() == protest.fact().check();
    if (!judges.contains(signer)) {
      return Optional.of(Objection.NO_JUDGE);
    }
    if (all.stream().anyMatch(check -> hasSignedFor(check, signer))) {
      return Optional.of(Objection.OWN_CHECK);
    }
    if (protest.objection().isPresent()) {
      return Optional.of(Objection.NO_PROTEST);
    }
    if (!protest.isOpen()) {
      return Optional.of(Objection.RULED_ALREADY);
    }
    if (goesOn(checks.apply(protest.fact().check()))) {
      return Optional.of(Objection.CHECK_RUNS);
    }
    if (protest.rechecks().stream().anyMatch(c -> !checks.apply(c).isClosed())) {
      return Optional.of(Objection.RECHECK_RUNS);
    }
    if (!all.contains(ruled.stands())) {
      return Optional.of(Objection.OTHER_CHECK);
    }
    if (!original && !isOfTheSame(ruled.stands(), protest.fact().check())) {
      return Optional.of(Objection.OTHER_ARCHER);
    }
    if (!original && !Protest.settles(checks.apply(ruled.stands()))) {
      return Optional.of(Objection.NO_OUTCOME);
    }
    return !original && ruled.ruling() == ProtestFact.Answer.DISMISSED
        ? Optional.of(Objection.DISMISSED)
        : Optional.empty();
  }

  /** Whose both are counts as corrected by then: a misread bib or division is put right first. */
  private boolean isOfTheSame(long recheck, long original) {
    return isOfTheSame(checks.apply(recheck).opened(), checks.apply(original).opened());
  }

  private static boolean isOfTheSame(Fact.CheckOpened recheck, Fact.CheckOpened original) {
    return recheck.bib().equals(original.bib()) && recheck.division().equals(original.division());
  }

  /** With this key or another one. */
  private boolean hasSignedFor(long check, String signer) {
    return signers.getOrDefault(check, Set.of()).stream()
        .anyMatch(key -> holders.mayBeOne(key, signer));
  }

  private Optional<Objection> objection(Correction correction, String signer) {
    if (holders.mayBeOne(correction.signer(), signer)) {
      return Optional.of(Objection.SAME_PERSON);
    }
    return correction.isOpen()
        ? against(correction.fact())
        : Optional.of(Objection.CONFIRMED_ALREADY);
  }

  private Optional<Objection> against(ProtestFact.CorrectionMade made) {
    return made.what() != ProtestFact.Part.READING && bearsRuling(made.check())
        ? Optional.of(Objection.RULED_ON)
        : Correction.against(made, checks.apply(made.check()), rules);
  }

  /** Whether a ruling lets a recheck count for another check, and this is one of the two. */
  private boolean bearsRuling(long check) {
    return standing.entrySet().stream()
        .filter(ruled -> !ruled.getKey().equals(ruled.getValue()))
        .anyMatch(ruled -> ruled.getKey() == check || ruled.getValue() == check);
  }

  private Protest protest(long number) {
    Protest protest = protests.get(number);
    if (protest == null) {
      throw new IllegalArgumentException("there is no protest " + number);
    }
    return protest;
  }

  private Correction correction(long number) {
    Correction correction = corrections.get(number);
    if (correction == null) {
      throw new IllegalArgumentException("there is no correction " + number);
    }
    return correction;
  }

  /** The check whose outcome counts for one that is no recheck: itself, unless a judge ruled. */
  Check counting(Check check) {
    Long stands = standing.get(check.number());
    return stands == null ? check : checks.apply(stands);
  }

  Docket docket() {
    return new Docket(List.copyOf(protests.values()), List.copyOf(corrections.values()));
  }
}
