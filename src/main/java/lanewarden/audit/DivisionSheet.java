package lanewarden.audit;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import lanewarden.audit.press.Ink;
import lanewarden.audit.press.Typeface;
import lanewarden.audit.wording.Wording;
import lanewarden.journal.Check;
import lanewarden.journal.Outcome;
import lanewarden.journal.TakenShot;
import lanewarden.metrology.Spread;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;
import lanewarden.rules.Division;

/**
 * What came out in one division, as long as its rule stayed as it was.
 *
 * @param book which rule books, where the ledger holds several; else nothing
 * @param inQuestion how many checks a hold of the line puts in question; neither their outcomes nor
 *     their readings are in the other figures
 * @param readings how many count: of checks that count, and with nothing open against them
 * @param mean of the readings that count, in the unit of the limit; a dash where there is none
 * @param deviation their sample standard deviation; a dash where there are fewer than two
 * @param svg the picture, a column a check; empty where there is no check
 * @param distribution how the readings that count are spread; empty where there is none
 */
record DivisionSheet(
    String code,
    String name,
    String book,
    String limit,
    int checks,
    int competitors,
    int within,
    int over,
    int undecided,
    int notAdmitted,
    int withoutVerdict,
    int inQuestion,
    int readings,
    String mean,
    String deviation,
    String svg,
    String distribution) {

  private static final int DECIMALS = 2;
  private static final String NONE = "–";

  static DivisionSheet of(
      Division division, String book, List<Check> checks, Typeface face, Ink ink)
      throws IOException {
    Map<Outcome, Integer> outcomes = Figures.outcomes(checks);
    List<Speed> counted =
        Figures.counting(checks).stream()
            .flatMap(c -> c.shots().stream())
            .filter(TakenShot::isSettled)
            .map(s -> s.reading().speed())
            .toList();
    SpeedUnit unit = division.rule().unit();
    return new DivisionSheet(
        division.code(),
        division.name(),
        book,
        Wording.limit(division),
        checks.size(),
        Figures.competitors(checks),
        outcomes.getOrDefault(Outcome.WITHIN, 0),
        outcomes.getOrDefault(Outcome.OVER, 0),
        outcomes.getOrDefault(Outcome.NOT_DECIDED, 0),
        outcomes.getOrDefault(Outcome.NOT_ADMITTED, 0),
        Figures.withoutVerdict(checks),
        Figures.inQuestion(checks),
        counted.size(),
        counted.isEmpty() ? NONE : shown(Spread.of(counted).mean(), unit),
        counted.size() < 2 ? NONE : shown(Spread.of(counted).deviation(), unit),
        checks.isEmpty()
            ? ""
            : new ReadingsPicture(division, checks, face)
                .svg(ink.escape(alternative(division, checks, counted))),
        counted.isEmpty()
            ? ""
            : new DistributionPicture(division, Figures.counting(checks), face)
                .svg(ink.escape("Distribution: " + alternative(division, checks, counted))));
  }

  /** The same without the picture that shows the readings of every bib. */
  DivisionSheet published() {
    return new DivisionSheet(
        code,
        name,
        book,
        limit,
        checks,
        competitors,
        within,
        over,
        undecided,
        notAdmitted,
        withoutVerdict,
        inQuestion,
        readings,
        mean,
        deviation,
        "",
        distribution);
  }

  private static String shown(double si, SpeedUnit unit) {
    return Speed.ofSi(si, SpeedUnit.METRES_PER_SECOND).to(unit, DECIMALS).toString();
  }

  private static String alternative(Division division, List<Check> checks, List<Speed> counted) {
    long above =
        Figures.counting(checks).stream()
            .flatMap(
                c ->
                    c.shots().stream()
                        .filter(TakenShot::isSettled)
                        .filter(s -> division.rule().exceeds(s.reading().speed(), c.setUp())))
            .count();
    return "Arrow speeds in the division "
        + division.name()
        + " against the limit of "
        + Wording.limit(division)
        + ": "
        + Wording.count(counted.size(), "reading")
        + " that count, "
        + above
        + " of them over it.";
  }
}
