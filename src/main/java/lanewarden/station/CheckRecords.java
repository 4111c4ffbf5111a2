package lanewarden.station;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lanewarden.journal.Check;
import lanewarden.journal.CheckSought;
import lanewarden.journal.Correction;
import lanewarden.journal.Docket;
import lanewarden.journal.Objection;
import lanewarden.journal.Protest;
import lanewarden.journal.ProtestFact;
import lanewarden.journal.Standing;

/**
 * The checks that were made, for whoever looks into one. Only reads.
 *
 * <p>Works under the lock of whoever folds the ledger; any thread may call.
 */
public final class CheckRecords {
  private final Object lock;
  private final Standing standing;
  private final Supplier<Map<String, String>> officials;

  /**
   * @param lock held by whoever changes the standing
   * @param officials every name that was ever enrolled, by the thumbprint of its key
   */
  CheckRecords(Object lock, Standing standing, Supplier<Map<String, String>> officials) {
    this.lock = lock;
    this.standing = standing;
    this.officials = officials;
  }

  /** Those of a station. */
  static CheckRecords at(Station station, Book book) {
    return new CheckRecords(station, book.standing(), book.people()::names);
  }

  /**
   * The numbers of the checks that are meant, the newest first; of a recheck, that of the check in
   * dispute.
   *
   * @param typed as {@link CheckSought} takes it
   */
  public List<Long> meant(String typed) {
    synchronized (lock) {
      return newestFirst(new CheckSought(typed).among(standing))
          .map(check -> original(check).number())
          .distinct()
          .toList();
    }
  }

  /**
   * The competitors, bib and name each, where a name was typed that is not enough to say who.
   *
   * @param typed as {@link CheckSought} takes it
   */
  public List<String> several(String typed) {
    synchronized (lock) {
      return new CheckSought(typed).several(standing);
    }
  }

  /**
   * The number of the check that is meant to be signed about: of a bib or name the last one.
   *
   * @param typed as {@link CheckSought} takes it
   * @throws StationException if there is no such check, or what was typed is in several names
   */
  public long last(String typed) throws StationException {
    synchronized (lock) {
      CheckSought sought = new CheckSought(typed);
      List<String> several = sought.several(standing);
      if (!several.isEmpty()) {
        throw which("Nothing was signed.", typed, several);
      }
      return newestFirst(sought.among(standing))
          .findFirst()
          .map(Check::number)
          .orElseThrow(() -> none("Nothing was signed.", typed));
    }
  }

  /** What was typed is in several names. */
  static StationException which(String what, String typed, List<String> several) {
    return StationException.misstep(
        "WHICH-CHECK",
        what,
        "\"" + typed.strip() + "\" is in several names: " + String.join(", ", several) + ".",
        "Write the bib of the one that is meant.");
  }

  /** There is no such check. */
  static StationException none(String what, String typed) {
    return StationException.misstep(
        "NO-SUCH-CHECK",
        what,
        "The ledger has no check of a bib or name " + typed.strip() + ", and none numbered so.",
        "Write the bib as it was called, or the number of the check as the report prints it.");
  }

  /**
   * Whether the rule of the check and of its rechecks is known: without it, nothing can be told.
   */
  public boolean hasRule(long check) {
    synchronized (lock) {
      return standing.find(check).stream()
          .flatMap(one -> Stream.concat(Stream.of(one), rechecks(one).stream()))
          .allMatch(one -> CheckView.division(standing, one).isPresent());
    }
  }

  /**
   * The checks that what was typed may mean, the newest first: those of the bib, the one with the
   * number, those of competitors whose name holds the words.
   *
   * @param most how many at most
   */
  public List<CheckView> search(String typed, int most) {
    String sought = typed.strip();
    if (sought.isEmpty()) {
      return List.of();
    }
    synchronized (lock) {
      List<Check> all = standing.checks();
      return Stream.concat(
              newestFirst(all).filter(check -> isNamed(check, sought)),
              newestFirst(all).filter(check -> holds(check, sought)))
          .distinct()
          .limit(most)
          .map(this::view)
          .toList();
    }
  }

  private static boolean isNamed(Check check, String sought) {
    return check.opened().bib().equalsIgnoreCase(sought)
        || String.valueOf(check.number()).equals(sought);
  }

  private static boolean holds(Check check, String sought) {
    return check.opened().name().toLowerCase(Locale.ROOT).contains(sought.toLowerCase(Locale.ROOT));
  }

  /**
   * Everything about a check; of a recheck, that of the check in dispute. Empty if there is none.
   */
  public Optional<Dossier> of(long check) {
    synchronized (lock) {
      return standing.find(check).map(this::original).map(this::dossier);
    }
  }

  /** The checks with a protest or a correction, what waits first, then the newest first. */
  public List<Dossier> docket() {
    synchronized (lock) {
      Docket docket = standing.docket();
      Set<Long> numbers = new LinkedHashSet<>();
      newestFirst(docket.protests()).forEach(protest -> numbers.add(protest.fact().check()));
      newestFirst(docket.corrections())
          .flatMap(correction -> standing.find(correction.fact().check()).stream())
          .forEach(check -> numbers.add(original(check).number()));
      List<Dossier> all =
          numbers.stream().flatMap(n -> standing.find(n).stream()).map(this::dossier).toList();
      return Stream.concat(
              all.stream().filter(Dossier::isOpen), all.stream().filter(one -> !one.isOpen()))
          .toList();
    }
  }

  private static <T> Stream<T> newestFirst(List<T> all) {
    return Stream.iterate(all.size() - 1, at -> at >= 0, at -> at - 1).map(all::get);
  }

  /** The check in dispute, if this one is a recheck of it. */
  private Check original(Check check) {
    return Optional.ofNullable(check.opened().protest())
        .flatMap(number -> standing.docket().protest(number))
        .flatMap(protest -> standing.find(protest.fact().check()))
        .orElse(check);
  }

  private Dossier dossier(Check check) {
    Docket docket = standing.docket();
    List<Check> rechecks = rechecks(check);
    List<Correction> corrections = new ArrayList<>(docket.correctionsOf(check.number()));
    rechecks.forEach(beside -> corrections.addAll(docket.correctionsOf(beside.number())));
    Map<String, String> names = officials.get();
    return new Dossier(
        view(check),
        rechecks.stream().map(this::view).toList(),
        protests(check),
        corrections,
        standing.counting(check).number(),
        corrections.stream()
            .collect(Collectors.toMap(Correction::number, one -> ownKeys(one, names.keySet()))),
        names);
  }

  private List<Protest> protests(Check check) {
    return standing.docket().protests().stream()
        .filter(protest -> protest.fact().check() == check.number())
        .toList();
  }

  private List<Check> rechecks(Check check) {
    return protests(check).stream()
        .flatMap(protest -> protest.rechecks().stream())
        .flatMap(number -> standing.find(number).stream())
        .toList();
  }

  /** Every key that cannot confirm a correction, since whoever made it holds it. */
  private Set<String> ownKeys(Correction correction, Set<String> keys) {
    ProtestFact confirmation = new ProtestFact.CorrectionConfirmed(correction.number());
    return keys.stream()
        .filter(
            key -> standing.objection(confirmation, key).equals(Optional.of(Objection.SAME_PERSON)))
        .collect(Collectors.toSet());
  }

  private CheckView view(Check check) {
    return CheckView.of(standing, check).seenFrom(standing.place(check.number()));
  }
}
