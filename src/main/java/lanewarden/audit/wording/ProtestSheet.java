package lanewarden.audit.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import lanewarden.journal.Check;
import lanewarden.journal.Correction;
import lanewarden.journal.Protest;
import lanewarden.journal.Standing;
import lanewarden.journal.TakenShot;

/**
 * Protests with the check in dispute and its rechecks side by side, and corrections, as tables of
 * the report.
 *
 * @param any whether there is anything to print
 */
public record ProtestSheet(boolean any, List<Disputed> protests, List<Corrected> corrections) {
  private static final String NONE = "–";

  /**
   * A protest.
   *
   * @param checks the one in dispute first, then its rechecks
   * @param ruling by whom and when, and what counts; or that there is none
   */
  record Disputed(
      String entry,
      String time,
      String occasion,
      String by,
      String ground,
      List<Side> checks,
      String ruling,
      String consequence,
      String official) {}

  /**
   * A check beside the others of its protest.
   *
   * @param title which of them it is
   * @param counts whether its outcome counts by a ruling
   */
  record Side(
      String title,
      String who,
      String time,
      String readings,
      String setUp,
      OutcomeMark outcome,
      String reason,
      String official,
      boolean counts) {}

  /** A correction with both who signed it. */
  record Corrected(
      String entry,
      String time,
      String check,
      String what,
      String before,
      String after,
      String reason,
      String official,
      String second) {}

  /**
   * All protests and corrections of a ledger.
   *
   * @param names of those who sign, by thumbprint
   */
  public static ProtestSheet of(Standing standing, Map<String, String> names) {
    List<Disputed> protests =
        standing.docket().protests().stream()
            .map(protest -> disputed(protest, standing, names))
            .toList();
    List<Corrected> corrections =
        standing.docket().corrections().stream().map(one -> corrected(one, names)).toList();
    return new ProtestSheet(!protests.isEmpty() || !corrections.isEmpty(), protests, corrections);
  }

  private static Disputed disputed(Protest protest, Standing standing, Map<String, String> names) {
    List<Side> sides = new ArrayList<>();
    long stands = protest.ruling().map(given -> given.fact().stands()).orElse(0L);
    long original = protest.fact().check();
    standing
        .find(original)
        .ifPresent(c -> sides.add(side("Check " + original, c, stands == original, names)));
    for (long number : protest.rechecks()) {
      standing
          .find(number)
          .ifPresent(c -> sides.add(side("Recheck " + number, c, stands == number, names)));
    }
    return new Disputed(
        String.valueOf(protest.number()),
        Wording.time(protest.at()),
        Wording.capital(protest.fact().occasion().word()),
        protest.fact().by(),
        protest.fact().ground(),
        sides,
        protest
            .ruling()
            .map(
                given ->
                    given.fact().ruling().word()
                        + " by "
                        + official(given.signer(), names)
                        + ", "
                        + Wording.time(given.at())
                        + ", entry "
                        + given.sequence()
                        + ": "
                        + given.fact().reason())
            .orElse(unruled(protest)),
        protest.ruling().map(given -> given.fact().consequence()).orElse(""),
        official(protest.signer(), names));
  }

  private static String unruled(Protest protest) {
    return protest.withoutEffect().map(why -> "no effect: " + why).orElse("no ruling");
  }

  private static Side side(String title, Check check, boolean counts, Map<String, String> names) {
    return new Side(
        title,
        check.opened().bib() + " " + check.opened().name() + ", " + check.opened().division(),
        Wording.time(check.at()),
        check.shots().isEmpty()
            ? "no reading"
            : check.shots().stream().map(ProtestSheet::reading).collect(Collectors.joining("; ")),
        check.setUp().arrowMass() == null ? "not weighed" : check.setUp().arrowMass().toString(),
        OutcomeMark.of(check),
        CheckRow.reason(check),
        official(check.verdict().map(Check.GivenVerdict::signer).orElse(check.signer()), names),
        counts);
  }

  private static String reading(TakenShot shot) {
    return shot.reading().speed()
        + (shot.counts() ? "" : shot.stands() ? " (impossible)" : " (void)")
        + (shot.reading().source().equals(ReadingMark.TYPED) ? " (typed)" : "");
  }

  private static Corrected corrected(Correction correction, Map<String, String> names) {
    return new Corrected(
        String.valueOf(correction.number()),
        Wording.time(correction.at()),
        String.valueOf(correction.fact().check()),
        correction.fact().what().word(),
        correction.before(),
        correction.after(),
        correction.fact().reason(),
        official(correction.signer(), names),
        correction
            .confirmation()
            .map(
                given ->
                    official(given.signer(), names)
                        + ", "
                        + Wording.time(given.at())
                        + ", entry "
                        + given.sequence())
            .orElse(NONE + " nobody: no effect"));
  }

  /** What of protests touches a check: without a name or a word that somebody typed. */
  public static List<String> disputes(Standing standing, Check check) {
    List<String> notes = new ArrayList<>();
    if (check.opened().protest() != null) {
      notes.add("Recheck under protest " + check.opened().protest());
    }
    for (Protest protest : standing.docket().protestsOf(check.number())) {
      String ruled =
          protest
              .ruling()
              .map(
                  given ->
                      given.fact().ruling().word() + ", check " + given.fact().stands() + " counts")
              .orElse(protest.isOpen() ? "no ruling" : "no effect");
      if (protest.fact().check() == check.number()) {
        notes.add("Disputed by protest " + protest.number() + ": " + ruled);
      }
    }
    return notes;
  }

  /**
   * What a slip says of the protests that its check has a part in: the ruling, the outcome of the
   * check in dispute and of every recheck, and which of them counts. Without a name or a word that
   * somebody typed: slips hang on bows.
   */
  public static List<String> onSlip(Standing standing, Check check) {
    return standing.docket().protestsOf(check.number()).stream()
        .filter(protest -> protest.objection().isEmpty())
        .map(protest -> onSlip(standing, protest))
        .toList();
  }

  private static String onSlip(Standing standing, Protest protest) {
    StringBuilder words =
        new StringBuilder(Wording.capital(protest.fact().occasion().word()))
            .append(' ')
            .append(protest.number())
            .append(": ")
            .append(protest.ruling().map(given -> given.fact().ruling().word()).orElse("no ruling"))
            .append('.');
    Optional<Check> original = standing.find(protest.fact().check());
    original.ifPresent(c -> words.append(outcome(" Check ", c)));
    for (long number : protest.rechecks()) {
      standing.find(number).ifPresent(c -> words.append(outcome(" Recheck ", c)));
    }
    original.ifPresent(
        c ->
            words
                .append(protest.isOpen() ? " What counts until a ruling: " : " What counts: ")
                .append(standing.counting(c).equals(c) ? "check " : "recheck ")
                .append(standing.counting(c).number())
                .append('.'));
    return words.toString();
  }

  private static String outcome(String title, Check check) {
    OutcomeMark mark = OutcomeMark.of(check);
    return title + check.number() + ": " + mark.shape() + "\u00a0" + mark.word() + ".";
  }

  /** What the row of a check must say of protests and corrections. */
  public static List<String> notes(Standing standing, Check check) {
    List<String> notes = disputes(standing, check);
    for (Correction correction : standing.docket().correctionsOf(check.number())) {
      notes.add(
          (correction.isOpen() ? "Correction not confirmed, " : "Corrected, ")
              + correction.fact().what().word()
              + ": "
              + correction.after()
              + (correction.isOpen() ? " instead of " : ", was ")
              + correction.before());
    }
    return notes;
  }

  private static String official(String signer, Map<String, String> names) {
    return names.getOrDefault(signer, "unknown key " + Wording.shortHash(signer));
  }
}
