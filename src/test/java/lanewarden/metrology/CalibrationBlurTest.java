package lanewarden.metrology;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.Stream;
import org.apache.commons.math3.analysis.integration.SimpsonIntegrator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The mean over the calibration error, against commons-math3's quadrature of the same. */
class CalibrationBlurTest {

  static Stream<CheckModel> models() {
    return Stream.of(
            DecidingFigure.highest(1),
            DecidingFigure.highest(3),
            DecidingFigure.highest(30),
            DecidingFigure.withinCount(2, 7),
            DecidingFigure.median(6),
            DecidingFigure.mean(5))
        .flatMap(
            figure ->
                Stream.of(0.003, 0.012, 0.02, 0.05, 0.1, 0.3, 1.0, 5.0)
                    .map(c -> SampleModels.plain(figure, new Dispersion(0.2, 0, c))))
        .flatMap(m -> Stream.of(0, 1, 4).map(r -> SampleModels.withRechecks(m, r)));
  }

  @ParameterizedTest
  @MethodSource("models")
  void agreesWithAnotherQuadrature(CheckModel model) {
    double calibration = model.dispersion().calibration();
    CheckModel known = SampleModels.withDispersion(model, new Dispersion(0.2, 0, 0));
    ClosedForm given = ClosedForm.of(known).orElseThrow();
    ClosedForm closed = ClosedForm.of(model).orElseThrow();
    SimpsonIntegrator integrator = new SimpsonIntegrator(1e-9, 1e-9, 12, 24);
    for (double offset : new double[] {-0.3, -0.05, 0, 0.12, 0.5}) {
      double speed = SampleModels.THRESHOLD + offset;
      double expected =
          integrator.integrate(
              1_000_000,
              error ->
                  given.at(speed + error).ending().within()
                      * Bell.density(error / calibration)
                      / calibration,
              -8 * calibration,
              8 * calibration);
      assertEquals(expected, closed.at(speed).ending().within(), 2e-6, "offset " + offset);
    }
  }
}
