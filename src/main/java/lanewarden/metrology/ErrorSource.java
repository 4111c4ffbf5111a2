package lanewarden.metrology;

import static lanewarden.metrology.UncertaintyBudget.Evaluation.TYPE_A;
import static lanewarden.metrology.UncertaintyBudget.Evaluation.TYPE_B;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.Locale;
import lanewarden.metrology.UncertaintyBudget.Influence;
import lanewarden.quantity.Length;
import lanewarden.quantity.Percent;
import lanewarden.quantity.Speed;

/** Something known about an instrument that makes its readings uncertain. */
public sealed interface ErrorSource {

  /**
   * Its influence on a reading of this speed.
   *
   * @param metresPerSecond more than zero
   */
  Influence at(double metresPerSecond);

  /**
   * Whether each reading meets it anew, so that it shrinks in a mean; else all readings share it.
   */
  boolean isNewWithEachReading();

  /** A figure without a distribution of its own making. */
  private static Influence assumed(String name, double standard, String words) {
    return new Influence(name, standard, Double.POSITIVE_INFINITY, TYPE_B, words);
  }

  /** The spacing of the gates differs from what was set; relative, as v = L/Δt. */
  record Spacing(Length spacing, Length error, Coverage coverage) implements ErrorSource {
    /**
     * @throws IllegalArgumentException if there is no spacing
     */
    public Spacing {
      Figures.requirePositive(spacing.siDouble(), "the spacing of the gates, in m,");
    }

    @Override
    public Influence at(double metresPerSecond) {
      double share = coverage.standard(error.siDouble()) / spacing.siDouble();
      return assumed(
          "gate spacing",
          metresPerSecond * share,
          "spacing " + spacing + " ± " + error + " (" + coverage + ")");
    }

    @Override
    public boolean isNewWithEachReading() {
      return false;
    }
  }

  /** The clock runs fast or slow by up to a share. */
  record ClockRate(Percent tolerance, Coverage coverage) implements ErrorSource {
    @Override
    public Influence at(double metresPerSecond) {
      return assumed(
          "clock rate",
          metresPerSecond * coverage.standard(tolerance.fraction().doubleValue()),
          "clock rate ± " + tolerance + " (" + coverage + ")");
    }

    @Override
    public boolean isNewWithEachReading() {
      return false;
    }
  }

  /**
   * Each gate sees the arrow a little early or late; two gates, so √2 of it over Δt = L/v.
   *
   * @param jitter of one gate
   */
  record GateJitter(Length spacing, Duration jitter, Coverage coverage) implements ErrorSource {
    /**
     * @throws IllegalArgumentException if there is no spacing or the jitter is negative
     */
    public GateJitter {
      Figures.requirePositive(spacing.siDouble(), "the spacing of the gates, in m,");
      Figures.requireNotNegative(seconds(jitter), "the jitter of a gate, in s,");
    }

    @Override
    public Influence at(double metresPerSecond) {
      return assumed(
          "gate timing",
          timed(metresPerSecond, coverage.standard(seconds(jitter)), spacing),
          "each gate ± " + microseconds(jitter) + " (" + coverage + ") over " + spacing);
    }

    @Override
    public boolean isNewWithEachReading() {
      return true;
    }
  }

  /**
   * Gate times come in whole ticks of the clock.
   *
   * @param tick from one count to the next
   */
  record ClockTick(Length spacing, Duration tick) implements ErrorSource {
    /**
     * @throws IllegalArgumentException if there is no spacing or the tick is negative
     */
    public ClockTick {
      Figures.requirePositive(spacing.siDouble(), "the spacing of the gates, in m,");
      Figures.requireNotNegative(seconds(tick), "the tick of the clock, in s,");
    }

    @Override
    public Influence at(double metresPerSecond) {
      return assumed(
          "clock tick",
          timed(metresPerSecond, UncertaintyBudget.resolution(seconds(tick)), spacing),
          "ticks of " + microseconds(tick) + " over " + spacing);
    }

    @Override
    public boolean isNewWithEachReading() {
      return true;
    }
  }

  /** The last digit of the display stands for all speeds that round to it. */
  record DisplayStep(Speed step) implements ErrorSource {
    @Override
    public Influence at(double metresPerSecond) {
      return assumed(
          "display step",
          UncertaintyBudget.resolution(step.siDouble()),
          "display in steps of " + step);
    }

    @Override
    public boolean isNewWithEachReading() {
      return true;
    }
  }

  /**
   * What the maker or a calibration states for the whole instrument.
   *
   * <p>It already covers spacing, clock and gates, so whoever states it leaves those out.
   */
  record StatedAccuracy(Deviation accuracy, Coverage coverage) implements ErrorSource {
    @Override
    public Influence at(double metresPerSecond) {
      double amount = accuracy.siAt(BigDecimal.valueOf(metresPerSecond)).doubleValue();
      return assumed(
          "stated accuracy",
          coverage.standard(amount),
          "accuracy ± " + accuracy + " (" + coverage + ")");
    }

    @Override
    public boolean isNewWithEachReading() {
      return false;
    }
  }

  /**
   * The arrow flies crookedly by up to an angle, so the reading is up to b = 1 − cos θ slow.
   *
   * <p>Anything from 0 to b is taken as likely alike. A reading is not corrected for the mean b/2
   * of that, which then counts with its scatter: b²/12 + (b/2)² = (b/√3)² (GUM F.2.4.5, from
   * memory; own algebra). All shots of an archer share it.
   */
  record CrookedFlight(Alignment alignment) implements ErrorSource {
    @Override
    public Influence at(double metresPerSecond) {
      return assumed(
          "alignment",
          metresPerSecond * UncertaintyBudget.rectangular(alignment.slow()),
          String.format(
              Locale.ROOT,
              "flight up to %.1f° off the line of the gates, reads up to %.2f %% slow",
              alignment.degrees(),
              100 * alignment.slow()));
    }

    @Override
    public boolean isNewWithEachReading() {
      return false;
    }
  }

  /**
   * The archer stands nearer or farther than was set, and the arrow slows on its way.
   *
   * @param decayPerMetre share of its speed that the arrow loses on each metre, as k of the drag
   *     law v = v₀·exp(−kx)
   */
  record Distance(Length error, double decayPerMetre, Coverage coverage) implements ErrorSource {
    /**
     * @throws IllegalArgumentException if the decay is negative or no number
     */
    public Distance {
      Figures.requireNotNegative(decayPerMetre, "the decay of speed on one metre");
    }

    @Override
    public Influence at(double metresPerSecond) {
      return assumed(
          "distance",
          metresPerSecond * decayPerMetre * coverage.standard(error.siDouble()),
          "distance ± " + error + " (" + coverage + ")");
    }

    @Override
    public boolean isNewWithEachReading() {
      return false;
    }
  }

  /**
   * The scatter of repeated readings, as a verification found it.
   *
   * @param deviation sample standard deviation of one reading
   * @param readings it was found from, two or more; one less are its degrees of freedom
   */
  record Repeatability(Speed deviation, int readings) implements ErrorSource {
    /**
     * @throws IllegalArgumentException if there are fewer than two readings
     */
    public Repeatability {
      Figures.requireAtLeast(2, readings, "the readings of a standard deviation");
    }

    @Override
    public Influence at(double metresPerSecond) {
      return new Influence(
          "repeatability",
          deviation.siDouble(),
          readings - 1,
          TYPE_A,
          "standard deviation " + deviation + " of " + readings + " readings");
    }

    @Override
    public boolean isNewWithEachReading() {
      return true;
    }
  }

  /** From an error of each of two gates to the error of the speed: v·√2·u/(L/v). */
  private static double timed(double metresPerSecond, double gate, Length spacing) {
    return metresPerSecond * Math.sqrt(2) * gate * metresPerSecond / spacing.siDouble();
  }

  private static double seconds(Duration duration) {
    return duration.getSeconds() + duration.getNano() * 1e-9;
  }

  private static String microseconds(Duration duration) {
    return String.format(Locale.ROOT, "%.3f µs", seconds(duration) * 1e6);
  }
}
