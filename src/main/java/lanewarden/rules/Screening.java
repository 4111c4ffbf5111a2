package lanewarden.rules;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lanewarden.bow.Arrow;
import lanewarden.bow.BowLimit;
import lanewarden.metrology.OutlierTest;
import lanewarden.quantity.Force;
import lanewarden.quantity.Length;
import lanewarden.quantity.Mass;
import lanewarden.quantity.PowerStroke;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;

/**
 * Which readings are not believed as they come.
 *
 * <p>What the bow cannot give by its stated figures is void in every division. The two other
 * clauses only ask: the reading stands, but no verdict rests on it before an official has let it
 * count or has declared it void.
 *
 * @param jump a reading this far or less from the one before it is not asked about
 * @param outlier the test that is made of all readings that stand
 */
public record Screening(Optional<Speed> jump, Optional<OutlierTest> outlier) {

  /** Whether an official is asked about any reading. */
  public boolean asks() {
    return jump.isPresent() || outlier.isPresent();
  }

  /** What holds in every division, for screens and reports. */
  public static final String EVERYWHERE =
      "A reading is void if the arrow would carry more energy than the bow can give: peak draw"
          + " weight times power stroke (draw length less 1.75 in and brace height). It is looked at"
          + " wherever arrow mass, draw weight, draw length and brace height are stated.";

  /**
   * What an organizer is to know where nobody is asked about any reading, and how to have it
   * otherwise; empty where somebody is.
   *
   * <p>No clause is made up instead. A doubt holds a verdict back, and every verdict of an older
   * ledger is asked anew by the rule book in it: a clause that is not written there would take back
   * what was rightly given.
   *
   * @param counted how many readings count
   * @param unit of the figures that are proposed; common practice: two shots of one arrow lie
   *     within a few feet a second
   */
  Optional<Sentence> remark(int counted, SpeedUnit unit) {
    if (asks()) {
      return Optional.empty();
    }
    boolean feet = unit == SpeedUnit.FEET_PER_SECOND;
    String jumped = "jump = \"" + (feet ? "10 ft/s" : "3 m/s") + "\"";
    if (counted < 2) {
      return Optional.of(Sentence.of(Demand.UNSCREENED_ONE, jumped));
    }
    return Optional.of(
        counted < LEAST_TELLING
            ? Sentence.of(Demand.UNSCREENED_FEW, jumped)
            : Sentence.of(
                Demand.UNSCREENED,
                jumped,
                "outlier = \"Grubbs at 5 %\"",
                "outlier-least = \"" + (feet ? "3 ft/s" : "1 m/s") + "\""));
  }

  /**
   * Of fewer readings a test at 5 % finds the odd one only where all others are almost alike: of
   * three, Grubbs' statistic is never above 1.1547, and its critical value is 1.1543.
   */
  private static final int LEAST_TELLING = 5;

  /** Nothing but what the bow cannot give. */
  public static Screening plain() {
    return new Screening(Optional.empty(), Optional.empty());
  }

  /** The shots with every reading that the bow cannot give taken for void. */
  static List<Shot> possible(SetUp setUp, List<Shot> taken) {
    Optional<BowLimit> bow = bow(setUp);
    return bow.isEmpty()
        ? taken
        : taken.stream()
            .map(shot -> isImpossible(shot, setUp, bow.get()) ? new Shot.Voided() : shot)
            .toList();
  }

  /** Every doubt that the shots leave, at most one each, in their order. */
  List<Doubt> doubts(SetUp setUp, List<Shot> taken) {
    List<Doubt> doubts = new ArrayList<>();
    bow(setUp).ifPresent(bow -> impossible(setUp, bow, taken, doubts));
    Inquiry inquiry = new Inquiry(possible(setUp, taken));
    jump.ifPresent(inquiry::jumps);
    outlier.ifPresent(inquiry::outliers);
    doubts.addAll(inquiry.doubts());
    doubts.sort(Comparator.comparingInt(Doubt::shot));
    return doubts;
  }

  private static void impossible(SetUp setUp, BowLimit bow, List<Shot> taken, List<Doubt> doubts) {
    for (int i = 0; i < taken.size(); i++) {
      if (taken.get(i) instanceof Shot.Read read && isImpossible(read, setUp, bow)) {
        doubts.add(
            new Doubt(
                i,
                Doubt.Kind.IMPOSSIBLE,
                Sentence.of(
                    Because.OF_SHOT,
                    i + 1,
                    bow.sentence(read.speed(), arrow(setUp).orElseThrow()))));
      }
    }
  }

  private static boolean isImpossible(Shot shot, SetUp setUp, BowLimit bow) {
    return shot instanceof Shot.Read read
        && arrow(setUp).filter(arrow -> bow.isImpossible(read.speed(), arrow)).isPresent();
  }

  private static Optional<Arrow> arrow(SetUp setUp) {
    Mass mass = setUp.arrowMass();
    return mass == null ? Optional.empty() : Optional.of(new Arrow(mass));
  }

  /**
   * What the bow can give; empty where a figure is missing. Figures that leave no power stroke make
   * no bow: whoever takes them down refuses them, but a ledger may hold them.
   */
  private static Optional<BowLimit> bow(SetUp setUp) {
    Optional<Force> weight = heaviest(setUp);
    Length draw = setUp.drawLength();
    Length brace = setUp.braceHeight();
    if (weight.isEmpty() || draw == null || brace == null || setUp.arrowMass() == null) {
      return Optional.empty();
    }
    return new PowerStroke(draw, brace).isSome()
        ? Optional.of(new BowLimit(weight.get(), draw, brace))
        : Optional.empty();
  }

  /**
   * The most that the bow may draw, by what is known of it: the bound shall be no bow's mistake.
   */
  private static Optional<Force> heaviest(SetUp setUp) {
    return Stream.of(DrawWeight.AS_SET, DrawWeight.CERTIFIED)
        .flatMap(which -> which.of(setUp).stream())
        .max(Comparator.naturalOrder());
  }

  /**
   * Sentences for screens and reports; none where only the bow's own bound is looked at.
   *
   * @param atOnce what a single reading must be to decide before any other is in; empty where none
   *     does
   */
  List<Sentence> sentences(Optional<Demand> atOnce) {
    List<Sentence> sentences = new ArrayList<>();
    jump.ifPresent(most -> sentences.add(Sentence.of(Demand.JUMP, most)));
    outlier.ifPresent(test -> sentences.add(Sentence.of(Demand.OUTLIER, test.sentence())));
    atOnce.filter(any -> asks()).map(this::unasked).ifPresent(sentences::add);
    return sentences;
  }

  /** Nobody is asked about a reading that decides before there is any to hold it against. */
  private Sentence unasked(Demand decisive) {
    return jump.isPresent()
        ? Sentence.of(Demand.UNASKED_FIRST, Sentence.of(decisive))
        : Sentence.of(Demand.UNASKED_TWO, OutlierTest.FEWEST, Sentence.of(decisive));
  }
}
