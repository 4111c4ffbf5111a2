package lanewarden.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import lanewarden.bow.DrawCurve;
import lanewarden.bow.MeasuredArrow;
import lanewarden.bow.MeasuredBow;
import lanewarden.bow.VirtualMassRange;
import lanewarden.metrology.Estimate;
import lanewarden.metrology.Mixture;
import lanewarden.quantity.Force;
import lanewarden.quantity.Length;
import lanewarden.quantity.Mass;
import lanewarden.quantity.Percent;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;
import lanewarden.rules.Division;
import lanewarden.rules.RuleEffect;
import lanewarden.rules.SetUp;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProspectTest {
  private static final double FOOT = SpeedUnit.FEET_PER_SECOND.inSi().doubleValue();
  private static final String LIMIT = "limit = \"300 ft/s\"\ntolerance = \"none\"\n";

  /**
   * Against the normal distribution of Apache Commons Math: the mean of three arrows that scatter
   * by 2 ft/s, read with 0.5 and 1 ft/s, of a bow whose mean is itself uncertain. Own algebra: all
   * variances add.
   */
  @ParameterizedTest
  @CsvSource({"298, 0.001", "298, 3", "300, 3", "303, 2", "306, 6"})
  void theChanceOfAMeanIsTheNormalOnesWithTheUncertaintyOfTheBow(double speed, double uncertainty)
      throws Exception {
    double scatter = Math.sqrt((4 + 0.25) / 3 + 1 + uncertainty * uncertainty);
    double normal = new NormalDistribution(speed, scatter).cumulativeProbability(300);
    assertEquals(normal, measured(LIMIT, speed, uncertainty).first().within(), 0.002);
  }

  @Test
  void aReCheckGivesAnotherChance() throws Exception {
    Prospect.Measured once = measured(LIMIT, 300, 1);
    assertTrue(once.ending().within() > once.first().within());
    assertTrue(
        once.inWords().toString().contains("with the re-checks allowed"),
        once.inWords().toString());
  }

  /** Readings raised by 0.5 % to the bow: an arrow read at 298.6 counts as 300.093 ft/s. */
  @Test
  void whatTheRuleRaisesToTheBowIsRaisedHereToo() throws Exception {
    assertTrue(measured(LIMIT, 298.6, 0.5).first().within() > 0.7);
    assertTrue(measured(LIMIT + "bow-correction = \"0.5 %\"\n", 298.6, 0.5).first().within() < 0.5);
  }

  @Test
  void whoBreaksAClauseIsNotAdmittedHoweverSlow() throws Exception {
    Prospect prospect = prospect(Rules.mean(LIMIT + "least-arrow = \"6 gr/lb\"\n"), 200, 1);
    assertInstanceOf(Prospect.NotAdmitted.class, prospect);
    assertEquals(
        "Not admitted: arrow mass 350 gr, at least 6 gr/lb × 60 lbf = 360 gr.",
        prospect.inWords().toString());
  }

  @Test
  void anArrowHeavyEnoughForNoLimitPassesHoweverFast() throws Exception {
    Prospect prospect = prospect(Rules.mean(LIMIT + "only-below = \"5 gr/lb\"\n"), 400, 1);
    assertInstanceOf(Prospect.Unlimited.class, prospect);
  }

  @Test
  void aFigureThatTheRuleAsksForIsAskedFor() throws Exception {
    Prospect prospect =
        prospect(
            Rules.mean(LIMIT + "least-arrow = \"6 gr/lb\"\ndraw-weight = \"certified\"\n"), 290, 1);
    assertEquals("Not known: state certified draw weight.", prospect.inWords().toString());
  }

  @Test
  void whoIsNeverMeasuredIsToldSo() throws Exception {
    Prospect prospect =
        prospect(
            Rules.division("who = \"not measured\"\nlimit = \"300 ft/s\"\ntolerance = \"none\"\n"),
            310,
            1);
    assertInstanceOf(Prospect.Unmeasured.class, prospect);
  }

  /** Common practice, the first of four pairs: 377.5 gr at 272 and 350 gr at 284 ft/s. */
  @Test
  void aVirtualMassThatNoBowHasIsSaidToBeNoise() {
    String told = Sentence.joined(brought(shots(272, 284), Optional.empty()).sentences());
    assertTrue(told.contains("virtual mass is -45 gr"), told);
    assertTrue(told.contains("That is noise and is not used"), told);
    String other = Sentence.joined(brought(shots(290, 300), Optional.empty()).sentences());
    assertTrue(other.contains("virtual mass is 42 gr"), other);
    assertTrue(other.contains("0 gr to 80 gr supposed"), other);
  }

  /**
   * A worked example in print, 48 ft·lbf, 500 gr and 170 ft/s: 248.13 gr, 66.8 %; drawn here as a
   * triangle of 24 in and 48 lbf.
   */
  @Test
  void aForceDrawCurveTellsTheEfficiency() {
    DrawCurve triangle =
        new DrawCurve(
            List.of(
                new DrawCurve.Point(Length.parse("7 in"), Force.parse("0 lbf")),
                new DrawCurve.Point(Length.parse("31 in"), Force.parse("48 lbf"))));
    Brought brought =
        new Brought(
            Mass.parse("500 gr"),
            SetUp.unknown(),
            Mixture.of(new Estimate(170 * FOOT, 0.01)),
            Optional.empty(),
            Optional.of(triangle));
    String told = Sentence.joined(brought.sentences());
    assertTrue(told.contains("stores 48.0 ft·lbf"), told);
    assertTrue(told.contains("takes 67 % of it, a virtual mass of 248 gr."), told);
    // Printed as 32.054 with g = 32.2; exact constants give 32.08
    assertTrue(told.contains("It carries 32.1 ft·lbf"), told);
  }

  @Test
  void anArrowThatTakesMoreThanAllIsAMisprint() {
    Brought brought =
        new Brought(
            Mass.parse("500 gr"),
            new SetUp(
                Mass.parse("500 gr"),
                Force.parse("40 lbf"),
                null,
                Length.parse("26 in"),
                Length.parse("8 in")),
            Mixture.of(new Estimate(300 * FOOT, 0.01)),
            Optional.empty(),
            Optional.empty());
    String told = Sentence.joined(brought.sentences());
    assertTrue(told.endsWith("More than all cannot be: look at the figures again."), told);
  }

  private static MeasuredBow shots(double heavy, double light) {
    return MeasuredBow.of(
        List.of(
            new MeasuredArrow(Mass.parse("377.5 gr"), new Estimate(heavy * FOOT, FOOT)),
            new MeasuredArrow(Mass.parse("350 gr"), new Estimate(light * FOOT, FOOT))),
        VirtualMassRange.COMPOUND);
  }

  private static Brought brought(MeasuredBow bow, Optional<DrawCurve> curve) {
    Mass arrow = Mass.parse("360 gr");
    return new Brought(arrow, SetUp.unknown(), bow.speedOf(arrow), Optional.of(bow), curve);
  }

  private static Prospect.Measured measured(String clauses, double speed, double uncertainty)
      throws Exception {
    return assertInstanceOf(
        Prospect.Measured.class, prospect(Rules.mean(clauses), speed, uncertainty));
  }

  private static Prospect prospect(Division division, double speed, double uncertainty) {
    Mass arrow = Mass.parse("350 gr");
    Brought brought =
        new Brought(
            arrow,
            new SetUp(arrow, Force.parse("60 lbf"), null),
            Mixture.of(new Estimate(speed * FOOT, uncertainty * FOOT)),
            Optional.empty(),
            Optional.empty());
    return brought
        .prospects(
            List.of(division),
            new RuleEffect.Supposed(
                Speed.parse("2 ft/s"),
                Speed.parse("0.5 ft/s"),
                Speed.parse("1 ft/s"),
                Percent.parse("0 %")))
        .get(0);
  }
}
