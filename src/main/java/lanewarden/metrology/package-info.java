/**
 * What a set of readings says and how well, and what a rule does before anybody shoots: mean and
 * spread, the operating characteristic of a check, lanes, samples and the public draw.
 *
 * <p>Front door: {@link lanewarden.metrology.Spread} for readings that were taken; {@link
 * lanewarden.metrology.OperatingCharacteristic} for a check as a {@link
 * lanewarden.metrology.CheckModel} describes it; {@link lanewarden.metrology.LanePlan}, {@link
 * lanewarden.metrology.SamplePlan} and {@link lanewarden.metrology.PublicDraw} for planning an
 * event. Numbers are doubles in SI: nothing here decides about an archer. Distribution functions
 * are the library's; the sequence of a check, its curve and the plans are our own. Words it owns:
 * mean, standard deviation, spread, calibration error, margin, chance, curve, draw. May import:
 * quantity.
 */
@NullMarked
package lanewarden.metrology;

import org.jspecify.annotations.NullMarked;
