package lanewarden.metrology;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import lanewarden.quantity.Measure;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;

/**
 * Shots through the station's instrument and a reference together: how far the station is off, and
 * how evenly. Figures for display are doubles in m/s; the outcome is exact.
 *
 * @param pairs at least one
 */
public record ReferenceComparison(List<ReferenceComparison.Pair> pairs) {

  /** One shot. */
  public record Pair(Speed station, Speed reference) {
    /** Station minus reference, m/s, exact. */
    BigDecimal difference() {
      return station.si().subtract(reference.si());
    }
  }

  /** How a comparison ends. */
  public enum Outcome {
    /** Bias and spread are no more than their limits. */
    IN_LIMITS,
    /** Bias or spread is more than its limit. */
    OUT,
    /** One shot shows no spread, and its bias is no more than the limit. */
    TOO_FEW_SHOTS
  }

  /**
   * @throws IllegalArgumentException if there is no pair
   */
  public ReferenceComparison {
    Figures.requireAtLeast(1, pairs.size(), "the shots of a comparison");
    pairs = List.copyOf(pairs);
  }

  /** Mean of station minus reference, m/s; more than zero where the station reads fast. */
  public double bias() {
    return sum().divide(count(), MathContext.DECIMAL64).doubleValue();
  }

  /** Sample standard deviation of the differences, m/s; empty for one shot. */
  public OptionalDouble deviation() {
    if (pairs.size() < 2) {
      return OptionalDouble.empty();
    }
    BigDecimal divisor = count().multiply(count().subtract(BigDecimal.ONE));
    return OptionalDouble.of(
        Math.sqrt(scatter().divide(divisor, MathContext.DECIMAL64).doubleValue()));
  }

  /** Standard error of the bias, m/s: deviation over √n; empty for one shot. */
  public OptionalDouble standardError() {
    OptionalDouble deviation = deviation();
    return deviation.isEmpty()
        ? deviation
        : OptionalDouble.of(deviation.getAsDouble() / Math.sqrt(pairs.size()));
  }

  /** The shot with the largest difference either way, counted from 0; the first of equal ones. */
  public int farthest() {
    int farthest = 0;
    for (int i = 1; i < pairs.size(); i++) {
      if (size(i).compareTo(size(farthest)) > 0) {
        farthest = i;
      }
    }
    return farthest;
  }

  /** The largest difference either way, m/s. */
  public double mostDeviation() {
    return size(farthest()).doubleValue();
  }

  /**
   * Against limits; a share is of the mean reference speed.
   *
   * @param mostBias the most the bias may be, either way
   * @param mostSpread the most the standard deviation of the differences may be
   */
  public Outcome against(Deviation mostBias, Deviation mostSpread) {
    if (biasIsMoreThan(mostBias) || spreadIsMoreThan(mostSpread)) {
      return Outcome.OUT;
    }
    return pairs.size() < 2 ? Outcome.TOO_FEW_SHOTS : Outcome.IN_LIMITS;
  }

  /**
   * Whether it is out of its limits by at least two shots, so that it says something of the
   * instrument even if more shots were agreed: a single one may be a misread.
   */
  public boolean convicts(Deviation mostBias, Deviation mostSpread) {
    return pairs.size() > 1 && against(mostBias, mostSpread) == Outcome.OUT;
  }

  /** The comparison and its outcome, in the unit of the first reference, for a person. */
  public Sentence inWords(Deviation mostBias, Deviation mostSpread) {
    Sentence bias =
        Sentence.of(
            biasIsMoreThan(mostBias) ? Compared.BIAS_MORE : Compared.BIAS_AT_MOST,
            shown("%+.3f", bias()),
            mostBias);
    Sentence spread =
        deviation().isPresent()
            ? Sentence.of(
                spreadIsMoreThan(mostSpread) ? Compared.SPREAD_MORE : Compared.SPREAD_AT_MOST,
                shown("%.3f", deviation().getAsDouble()),
                mostSpread)
            : Sentence.of(Compared.NO_SPREAD);
    Shown farthest = shown("%.3f", mostDeviation());
    return pairs.size() == 1
        ? Sentence.of(Compared.ONE_SHOT, bias, spread, farthest() + 1, farthest)
        : Sentence.of(Compared.SHOTS, pairs.size(), bias, spread, farthest() + 1, farthest);
  }

  /** A rounded difference with its unit. */
  private record Shown(String number, SpeedUnit unit) implements Measure {
    @Override
    public String toString() {
      return number + " " + unit.symbol();
    }
  }

  private Shown shown(String format, double metresPerSecond) {
    SpeedUnit unit = pairs.get(0).reference().unit();
    return new Shown(
        String.format(Locale.ROOT, format, metresPerSecond / unit.inSi().doubleValue()), unit);
  }

  private boolean biasIsMoreThan(Deviation most) {
    return sum().abs().compareTo(timesCount(most)) > 0;
  }

  private boolean spreadIsMoreThan(Deviation most) {
    // s² = scatter / (n(n − 1)) against most²: times n²(n − 1), so that nothing is divided
    BigDecimal limit = timesCount(most).pow(2).multiply(count().subtract(BigDecimal.ONE));
    return scatter().multiply(count()).compareTo(limit) > 0;
  }

  /** The limit at the mean reference speed times the number of shots, exact. */
  private BigDecimal timesCount(Deviation most) {
    BigDecimal references =
        pairs.stream().map(p -> p.reference().si()).reduce(BigDecimal.ZERO, BigDecimal::add);
    return most instanceof Deviation.Share
        ? most.siAt(references)
        : most.siAt(references).multiply(count());
  }

  /** nΣd² − (Σd)², exact; 0 for one shot. */
  private BigDecimal scatter() {
    BigDecimal squares =
        pairs.stream().map(p -> p.difference().pow(2)).reduce(BigDecimal.ZERO, BigDecimal::add);
    return squares.multiply(count()).subtract(sum().pow(2));
  }

  private BigDecimal sum() {
    return pairs.stream().map(Pair::difference).reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  private BigDecimal size(int index) {
    return pairs.get(index).difference().abs();
  }

  private BigDecimal count() {
    return BigDecimal.valueOf(pairs.size());
  }
}
