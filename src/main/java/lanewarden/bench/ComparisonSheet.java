package lanewarden.bench;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.DoubleSummaryStatistics;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import lanewarden.metrology.Interval;
import lanewarden.quantity.EnergyUnit;
import lanewarden.quantity.Mass;
import lanewarden.quantity.MassUnit;
import lanewarden.quantity.MomentumUnit;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.SpeedUnit;
import lanewarden.rules.Because;

/**
 * A comparison in words and figures for screen, terminal and paper, in one unit of speed: that of
 * the first shot.
 *
 * @param comparison what is told
 * @param unit of all speeds
 */
public record ComparisonSheet(Comparison comparison, SpeedUnit unit) {
  /** What nobody may make of a comparison, in a sentence. */
  public static final String NO_VERDICT =
      "A comparison is no check, and no verdict rests on it: margins are the mean's, even where a"
          + " division counts the highest reading, and an instrument that reads fast or slow moves"
          + " every mean alike.";

  private static final String NONE = "–";

  /** How far from the middle of what was shot a limit is still shown, in widths of that. */
  private static final double NEAR = 0.8;

  /** The least such width, as a share of the speed: two shots may be alike. */
  private static final double ROOM = 0.03;

  /** In the unit of the file's first shot. */
  public ComparisonSheet(Comparison comparison) {
    this(comparison, comparison.practice().series().get(0).unit());
  }

  /**
   * A set-up in a line.
   *
   * @param place with an equals sign where others share it
   * @param arrow its mass
   * @param shots that count, of how many
   * @param mean speed
   * @param reach half of the mean's interval
   * @param deviation of single shots
   * @param energy of the arrow at the mean
   * @param momentum of the arrow at the mean
   */
  public record Line(
      String place,
      String setUp,
      String arrow,
      Sentence shots,
      String mean,
      String reach,
      String deviation,
      String energy,
      String momentum) {

    /** All of it, as a table has it from left to right. */
    public List<String> cells() {
      return List.of(
          place, setUp, arrow, shots.toString(), mean, reach, deviation, energy, momentum);
    }
  }

  /**
   * Two set-ups in a line.
   *
   * @param faster the one with the higher mean
   * @param by how much
   * @param from the low end of its interval
   * @param to the high end
   * @param sense whether it is real
   */
  public record Pair(
      String faster, String slower, String by, String from, String to, String sense) {}

  /**
   * A set-up and a division in a line.
   *
   * @param allowed the fastest speed that passes
   * @param margin from there down to the mean
   * @param from the low end of its interval
   * @param to the high end
   * @param words what it comes to
   */
  public record Margin(
      String setUp,
      String division,
      String allowed,
      String margin,
      String from,
      String to,
      Sentence words) {

    /** All of it, as a table has it from left to right. */
    public List<String> cells() {
      return List.of(setUp, division, allowed, margin, from, to, words.toString());
    }
  }

  /** The set-ups and shots, counted. */
  public Sentence summary() {
    int shots =
        comparison.practice().series().stream().mapToInt(series -> series.shots().size()).sum();
    int setUps = comparison.showings().size();
    return Sentence.of(
        Told.SUMMARY,
        setUps == 1 ? Sentence.of(Told.ONE_SET_UP) : Sentence.of(Told.SET_UPS, setUps),
        shots == 1 ? Sentence.of(Told.ONE_SHOT) : Sentence.of(Told.SHOTS, shots),
        comparison.leftOut());
  }

  /** The set-ups, from the fastest to the slowest. */
  public List<Line> lines() {
    return comparison.showings().stream().map(this::line).toList();
  }

  private Line line(Showing showing) {
    int counted = showing.counted().size();
    int all = showing.series().shots().size();
    return new Line(
        place(showing),
        showing.series().name(),
        showing.series().mass().toString(),
        counted == all ? Sentence.of(Because.SHOWN, all) : Sentence.of(Told.OF, counted, all),
        speed(showing.mean()),
        showing.interval().map(i -> speed(i.width() / 2)).orElse(NONE),
        speed(showing.deviation()),
        showing.energy().map(e -> e.to(energyUnit(), 2).value().toPlainString()).orElse(NONE),
        showing.momentum().map(p -> p.to(momentumUnit(), 3).value().toPlainString()).orElse(NONE));
  }

  private String place(Showing showing) {
    Optional<Integer> place = comparison.place(showing);
    long sharing =
        comparison.showings().stream()
            .filter(other -> place.isPresent() && comparison.place(other).equals(place))
            .count();
    return place.map(p -> p + (sharing > 1 ? "=" : "")).orElse(NONE);
  }

  /** The pairs, the widest apart first. */
  public List<Pair> pairs() {
    return comparison.pairs().stream()
        .map(
            pair ->
                new Pair(
                    pair.one().series().name(),
                    pair.other().series().name(),
                    speed(pair.difference()),
                    low(pair.interval()),
                    high(pair.interval()),
                    pair.sense().inWords()))
        .toList();
  }

  /** The margins to the divisions of the rule book. */
  public List<Margin> margins() {
    return comparison.margins().stream()
        .map(
            margin ->
                new Margin(
                    margin.showing().series().name(),
                    margin.division().code(),
                    margin.allowed().map(a -> speed(a.siDouble())).orElse(NONE),
                    margin.margin().map(this::speed).orElse(NONE),
                    low(margin.interval()),
                    high(margin.interval()),
                    margin.words()))
        .toList();
  }

  /** The readings that were left out, a sentence each. */
  public List<Sentence> leftOut() {
    return comparison.showings().stream()
        .flatMap(showing -> showing.leftOut().stream().map(out -> of(showing, out.inWords())))
        .toList();
  }

  private static Sentence of(Showing showing, Sentence said) {
    return Sentence.of(Told.OF_SET_UP, showing.series().name(), said);
  }

  /** How the set-ups compare with what their bows' ratings make one expect, a sentence each. */
  public List<Sentence> expectations() {
    return comparison.showings().stream()
        .flatMap(
            showing ->
                showing.expected().stream()
                    .flatMap(
                        expected ->
                            showing.mean().stream()
                                .mapToObj(mean -> of(showing, expected.inWords(mean)))))
        .toList();
  }

  /** What a bow's rating makes one expect of a set-up that was shot, in the sheet's unit. */
  public Optional<Interval> expected(Showing showing) {
    return showing
        .expected()
        .filter(range -> showing.hasMean())
        .map(Rating.Expected::range)
        .map(range -> new Interval(in(range.low()), in(range.high())));
  }

  /** What is believed of the bows' virtual masses, a sentence each. */
  public List<Sentence> masses() {
    return comparison.masses().stream().map(ComparisonSheet::mass).toList();
  }

  private static Sentence mass(BowMass mass) {
    String bow = mass.bow().label();
    String fitted = grains(mass.fitted().value());
    Mass least = mass.supposed().least();
    Mass most = mass.supposed().most();
    return mass.noise()
        ? Sentence.of(Told.MASS_IS_NOISE, bow, fitted, least, most)
        : Sentence.of(
            Told.MASS,
            bow,
            fitted,
            least,
            most,
            grains(mass.interval().low()),
            grains(mass.interval().high()));
  }

  private static String grains(double kilograms) {
    return String.format(
        Locale.ROOT, "%.0f", kilograms / MassUnit.GRAIN.inSi().doubleValue() + 0.0);
  }

  /** How everything is to be read, a sentence or two each. */
  public List<String> notes() {
    return Stream.concat(readings().stream().map(Sentence::toString), cautions().stream()).toList();
  }

  /** How the figures came about, a sentence or two each. */
  public List<Sentence> readings() {
    return Stream.of(
            Optional.of(Told.SIFTED),
            Optional.of(Told.DIFFERENCES).filter(any -> !comparison.pairs().isEmpty()),
            Optional.of(Told.THUMBS).filter(any -> !expectations().isEmpty()))
        .flatMap(Optional::stream)
        .map(Sentence::of)
        .toList();
  }

  /** What nobody may make of them, and what is minded by whoever changes a set-up. */
  public List<String> cautions() {
    return List.of(NO_VERDICT, Caution.paragraph());
  }

  /** The means in one sentence: what a picture of them shows. */
  public String means() {
    return String.join(
        "; ",
        lines().stream()
            .map(
                line ->
                    line.setUp()
                        + ", "
                        + line.arrow()
                        + ", mean "
                        + line.mean()
                        + " ± "
                        + line.reach()
                        + " "
                        + unit.symbol())
            .toList());
  }

  /**
   * From the least to the most of what a picture of the means shows: limits and what is expected
   * included.
   */
  public Interval extent() {
    return around(
        Stream.of(
                DoubleStream.of(shot().low(), shot().high()),
                limits().values().stream().mapToDouble(Double::doubleValue),
                comparison.showings().stream()
                    .flatMap(showing -> expected(showing).stream())
                    .flatMapToDouble(i -> DoubleStream.of(i.low(), i.high())))
            .flatMapToDouble(values -> values));
  }

  /** From the slowest to the fastest of the shots that count and of the means' intervals. */
  private Interval shot() {
    return around(
        comparison.showings().stream()
            .flatMapToDouble(
                showing ->
                    DoubleStream.concat(
                        showing.counted().stream().mapToDouble(shot -> shot.speed().siDouble()),
                        showing.interval().stream()
                            .flatMapToDouble(i -> DoubleStream.of(i.low(), i.high()))))
            .map(this::in));
  }

  private static Interval around(DoubleStream values) {
    DoubleSummaryStatistics held = values.summaryStatistics();
    return held.getCount() == 0 ? new Interval(0, 1) : new Interval(held.getMin(), held.getMax());
  }

  /** What divisions allow by their codes, where it is not far from what was shot. */
  public Map<String, Double> limits() {
    Interval shot = shot();
    double middle = (shot.low() + shot.high()) / 2;
    double reach = NEAR * Math.max(shot.width(), ROOM * middle);
    Map<String, Double> limits = new LinkedHashMap<>();
    for (LimitMargin margin : comparison.margins()) {
      margin
          .allowed()
          .map(allowed -> in(allowed.siDouble()))
          .filter(allowed -> Math.abs(allowed - middle) < reach)
          .ifPresent(allowed -> limits.putIfAbsent(margin.division().code(), allowed));
    }
    return limits;
  }

  /** The unit of the energies. */
  public EnergyUnit energyUnit() {
    return unit == SpeedUnit.FEET_PER_SECOND ? EnergyUnit.FOOT_POUND : EnergyUnit.JOULE;
  }

  /** The unit of the momenta. */
  public MomentumUnit momentumUnit() {
    return unit == SpeedUnit.FEET_PER_SECOND
        ? MomentumUnit.SLUG_FOOT_PER_SECOND
        : MomentumUnit.KILOGRAM_METRE_PER_SECOND;
  }

  /** A speed in m/s as a number in the sheet's unit. */
  public double in(double metresPerSecond) {
    return metresPerSecond / unit.inSi().doubleValue();
  }

  private String low(Optional<Interval> interval) {
    return interval.map(i -> speed(i.low())).orElse(NONE);
  }

  private String high(Optional<Interval> interval) {
    return interval.map(i -> speed(i.high())).orElse(NONE);
  }

  private String speed(OptionalDouble metresPerSecond) {
    return metresPerSecond.isEmpty() ? NONE : speed(metresPerSecond.getAsDouble());
  }

  private String speed(double metresPerSecond) {
    // adding nothing turns a rounded −0.0 into 0.0
    return String.format(Locale.ROOT, "%.1f", Math.rint(in(metresPerSecond) * 10) / 10 + 0.0);
  }

  /**
   * A limit as it is written beside a picture: to a thousandth, and never more than it is.
   *
   * @param allowed one of {@link #limits}
   */
  public static String written(double allowed) {
    // What the change of units left in the last digits is no part of the limit
    return BigDecimal.valueOf(allowed)
        .setScale(6, RoundingMode.HALF_EVEN)
        .setScale(3, RoundingMode.FLOOR)
        .stripTrailingZeros()
        .toPlainString();
  }
}
