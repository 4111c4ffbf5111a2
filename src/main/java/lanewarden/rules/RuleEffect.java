package lanewarden.rules;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import lanewarden.metrology.CheckModel;
import lanewarden.metrology.CurvePoint;
import lanewarden.metrology.Dispersion;
import lanewarden.metrology.OperatingCharacteristic;
import lanewarden.metrology.ReadingRounding;
import lanewarden.metrology.ShotAllowance;
import lanewarden.metrology.Threshold;
import lanewarden.quantity.Percent;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;

/**
 * What a rule does to archers: how likely each outcome is for every true speed, calculated where it
 * can be and simulated elsewhere.
 *
 * <p>Bands and conditions never turn one outcome into another. Re-checks are counted where every
 * fail before the event brings one; where a band does not, no fail is taken to.
 */
public final class RuleEffect {

  /** Archers drawn for each speed where nothing can be calculated. */
  private static final int DRAWN = 4_000;

  /** The same for everybody who draws the same curve. */
  private static final long SEED = 20_26L;

  private static final double REACH = 5;

  /**
   * What is supposed of archers and instrument.
   *
   * @param arrows standard deviation of an archer's arrows from one to the next
   * @param reading standard uncertainty of the instrument that is new with each reading
   * @param calibration standard uncertainty of the instrument that all readings share
   * @param voids the share of shots that give no reading that stands, less than 100 %
   */
  public record Supposed(Speed arrows, Speed reading, Speed calibration, Percent voids) {}

  private final OperatingCharacteristic characteristic;
  private final Speed limit;
  private final Speed fastest;
  private final double width;
  private final double raised;

  private RuleEffect(CheckModel model, Speed limit, Speed fastest, double raised) {
    this.characteristic = new OperatingCharacteristic(model, DRAWN, SEED);
    this.limit = limit;
    this.fastest = fastest;
    this.raised = raised;
    double scatter = Math.hypot(model.dispersion().each(), model.dispersion().calibration());
    this.width = Math.max(REACH * scatter, fastest.siDouble() / 100);
  }

  /**
   * The effect of a rule on archers with this set-up.
   *
   * @return empty where no shot is measured: no limit applies, or a figure of the set-up is missing
   */
  public static Optional<RuleEffect> of(Rule rule, SetUp setUp, Supposed supposed) {
    Optional<Speed> fastest = rule.fastest(setUp);
    if (fastest.isEmpty() || rule.shooting().isEmpty()) {
      return Optional.empty();
    }
    Shooting how = rule.shooting().get();
    double allowed = fastest.get().siDouble();
    boolean speedGoverns = rule.speed().filter(s -> s.allowed().equals(fastest.get())).isPresent();
    Side side =
        speedGoverns
            ? rule.speed().orElseThrow().side()
            : rule.energy().map(EnergyLimit::side).orElse(Side.AT_MOST);
    Speed limit = speedGoverns ? rule.speed().orElseThrow().limit() : fastest.get();
    CheckModel model =
        new CheckModel(
            how.deciding(),
            new Threshold(allowed, side == Side.AT_MOST),
            how.spread().map(s -> OptionalDouble.of(s.siDouble())).orElse(OptionalDouble.empty()),
            new ShotAllowance(
                how.plan().allowed(),
                how.plan().voids(),
                supposed.voids().fraction().doubleValue()),
            rounding(how.treatment().rounding()),
            dispersion(supposed, how.treatment()),
            rule.aftermath().everyFailIsChecked(Phase.BEFORE)
                ? Math.min(rule.aftermath().rechecks(), CheckModel.MOST_RECHECKS)
                : 0);
    return Optional.of(new RuleEffect(model, limit, fastest.get(), raised(how.treatment())));
  }

  /** Speeds are those that are compared: raised to the bow, readings scatter so much more. */
  private static Dispersion dispersion(Supposed supposed, Treatment treatment) {
    double raised = raised(treatment);
    return new Dispersion(
        raised * supposed.arrows().siDouble(),
        raised * supposed.reading().siDouble(),
        raised * supposed.calibration().siDouble());
  }

  private static double raised(Treatment treatment) {
    return 1 + treatment.toBow().map(c -> c.fraction().doubleValue()).orElse(0.0);
  }

  private static ReadingRounding rounding(Rounding rounding) {
    return rounding
        .step()
        .map(
            step ->
                new ReadingRounding(
                    rounding instanceof Rounding.Stepped to && to.way() == Rounding.Way.NEAREST
                        ? ReadingRounding.Way.NEAREST
                        : ReadingRounding.Way.DOWN,
                    step.siDouble()))
        .orElse(ReadingRounding.NONE);
  }

  /** Whether the chances are calculated, not simulated. */
  public boolean isCalculated() {
    return characteristic.isCalculated();
  }

  /** How many archers are drawn for each speed where the chances are simulated. */
  public int drawn() {
    return DRAWN;
  }

  /** The unit of the limit, in which the speeds are to be shown. */
  public SpeedUnit unit() {
    return fastest.unit();
  }

  /** The limit as the rule writes it; where an energy governs, the fastest speed for the arrow. */
  public Speed limit() {
    return limit;
  }

  /** The fastest speed that keeps the rule. */
  public Speed fastest() {
    return fastest;
  }

  /** The slowest speed at which anything happens, m/s. */
  public double from() {
    double slower = Math.min(limit.siDouble(), fastest.siDouble());
    return Math.max(slower / 100, slower - width);
  }

  /** The fastest speed at which anything happens, m/s. */
  public double to() {
    return Math.max(limit.siDouble(), fastest.siDouble()) + width;
  }

  /**
   * The chances of each outcome for an archer.
   *
   * @param speed of the archer's arrows on average, as the instrument reads them: where the rule
   *     raises readings to the bow, so is this; m/s
   */
  public CurvePoint at(double speed) {
    return characteristic.at(raised * speed);
  }

  /**
   * The chances of each outcome over evenly spaced true speeds.
   *
   * @param from m/s, more than zero
   * @param to m/s, more than {@code from}
   * @param points two or more
   */
  public List<CurvePoint> curve(double from, double to, int points) {
    return characteristic.curve(from, to, points);
  }

  /**
   * The two numbers that sum the rule up, each after the re-checks it allows.
   *
   * @param excess how far over the limit an archer is who should fail, more than zero
   */
  public OperatingCharacteristic.Risks risks(Speed excess) {
    return characteristic.risks(limit.siDouble(), excess.siDouble());
  }

  /**
   * The probability that an archer who should fail does end over, after the re-checks allowed; one
   * who neither passes nor fails is not caught.
   *
   * @param excess how far over the limit that archer is, more than zero
   */
  public double caught(Speed excess) {
    return characteristic.at(limit.siDouble() + excess.siDouble()).ending().over();
  }

  /** The two numbers in words. */
  public Sentence inWords(Speed excess) {
    OperatingCharacteristic.Risks risks = risks(excess);
    return Sentence.of(
        Odds.RISKS, limit, often(risks.honestFailed()), excess, often(risks.excessPassed()));
  }

  /** A probability for people. */
  public static Sentence often(double probability) {
    if (probability < 0.000_5) {
      return Sentence.of(Odds.SELDOM);
    }
    if (probability > 0.999_5) {
      return Sentence.of(Odds.NEARLY_ALWAYS);
    }
    return Sentence.of(
        Odds.OFTEN, new BigDecimal(String.format(Locale.ROOT, "%.1f", 100 * probability)));
  }
}
