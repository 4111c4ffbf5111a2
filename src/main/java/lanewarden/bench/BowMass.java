package lanewarden.bench;

import java.util.List;
import java.util.Optional;
import lanewarden.bow.MeasuredArrow;
import lanewarden.bow.MeasuredBow;
import lanewarden.bow.VirtualMassRange;
import lanewarden.metrology.Estimate;
import lanewarden.metrology.Interval;

/**
 * What two or more arrows of unlike mass say of a bow's virtual mass: the mass that flies along
 * without being arrow.
 *
 * @param fitted by the speeds alone, kg; less than zero where they are noise
 * @param noise whether the speeds contradict every bow, so that nothing is taken from them
 * @param interval what is believed with the speeds and the range that is supposed, kg, 95 times in
 *     100
 * @param supposed that range
 */
public record BowMass(
    PracticeBow bow, Estimate fitted, boolean noise, Interval interval, VirtualMassRange supposed) {

  /** Of the set-ups of one bow; empty where fewer than two arrow masses have an interval. */
  static Optional<BowMass> of(PracticeBow bow, List<Showing> showings) {
    List<MeasuredArrow> arrows =
        showings.stream()
            .filter(showing -> showing.series().bow().equals(bow))
            .flatMap(
                showing ->
                    showing.estimate().stream()
                        .map(mean -> new MeasuredArrow(showing.series().mass(), mean)))
            .toList();
    if (arrows.size() < 2) {
      return Optional.empty();
    }
    VirtualMassRange supposed = VirtualMassRange.COMPOUND;
    MeasuredBow measured = MeasuredBow.of(arrows, supposed);
    return measured
        .fittedVirtualMass()
        .map(
            fit ->
                new BowMass(
                    bow,
                    fit,
                    measured.isNoise(),
                    measured.virtualMass(Comparison.CONFIDENCE),
                    supposed));
  }

  /** The range that is supposed, for example {@code 0 gr to 80 gr}. */
  public String supposedInWords() {
    return supposed.inWords();
  }
}
