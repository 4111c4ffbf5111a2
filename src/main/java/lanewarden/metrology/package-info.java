/**
 * What a set of readings says and how well, and what a rule does before anybody shoots: mean and
 * spread, uncertainty, conformance with a limit, outliers, the instrument against a reference and
 * over the day, the operating characteristic of a check, lanes, samples and the public draw.
 *
 * <p>Front door: {@link lanewarden.metrology.Spread} for readings that were taken; {@link
 * lanewarden.metrology.ReadingUncertainty} for how far to believe one and {@link
 * lanewarden.metrology.Conformance} for what that means at a limit; {@link
 * lanewarden.metrology.OutlierTest}, {@link lanewarden.metrology.StrayReadings} and {@link
 * lanewarden.metrology.PairAgreement} for odd ones; {@link lanewarden.metrology.MeanDifference} for
 * whether one series is faster than another; {@link lanewarden.metrology.ReferenceComparison},
 * {@link lanewarden.metrology.IndividualsChart} and {@link lanewarden.metrology.EwmaChart} for
 * verifying the instrument; {@link lanewarden.metrology.StraightLine} for a line through points,
 * {@link lanewarden.metrology.Estimate} and {@link lanewarden.metrology.Mixture} for what is
 * believed of a figure; {@link lanewarden.metrology.OperatingCharacteristic} for a check as a
 * {@link lanewarden.metrology.CheckModel} describes it; {@link lanewarden.metrology.LanePlan},
 * {@link lanewarden.metrology.SamplePlan} and {@link lanewarden.metrology.PublicDraw} for planning
 * an event. Numbers are doubles in SI, except where an outcome hangs on them: acceptance limits,
 * agreement and comparison with a reference are exact. Distribution functions are the library's;
 * budgets, tests, charts, the sequence of a check, its curve and the plans are our own. Words it
 * owns: mean, standard deviation, spread, influence, budget, coverage, conformance, guard band,
 * outlier, stray reading, sample mean, difference, estimate, interval, bias, calibration error,
 * margin, chance, curve, draw. May import: quantity.
 */
@NullMarked
package lanewarden.metrology;

import org.jspecify.annotations.NullMarked;
