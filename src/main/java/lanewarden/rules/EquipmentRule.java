package lanewarden.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanewarden.bow.GrainsPerPound;
import lanewarden.quantity.Force;
import lanewarden.quantity.Mass;
import lanewarden.quantity.Sentence;

/**
 * What a rule asks of bow and arrow before a shot is taken.
 *
 * @param leastArrow the least arrow mass per draw weight
 * @param leastDraw the least draw weight
 * @param mostDraw the most draw weight
 * @param counts which draw weight counts, in this clause and wherever the rule asks for one
 */
public record EquipmentRule(
    Optional<GrainsPerPound> leastArrow,
    Optional<Force> leastDraw,
    Optional<Force> mostDraw,
    DrawWeight counts) {

  /**
   * @throws IllegalArgumentException if no bow could keep it
   */
  public EquipmentRule {
    if (leastDraw.isPresent()
        && mostDraw.filter(most -> leastDraw.get().isMoreThan(most)).isPresent()) {
      throw new IllegalArgumentException(
          "no bow draws at least " + leastDraw.get() + " and at most " + mostDraw.get());
    }
  }

  /** Asks nothing. */
  public static EquipmentRule none() {
    return new EquipmentRule(
        Optional.empty(), Optional.empty(), Optional.empty(), DrawWeight.AS_SET);
  }

  /** Whether it asks anything. */
  public boolean asksAnything() {
    return leastArrow.isPresent() || leastDraw.isPresent() || mostDraw.isPresent();
  }

  /** The figures its clauses ask for and nobody stated. */
  List<String> missing(SetUp setUp) {
    List<String> missing = new ArrayList<>();
    if (leastArrow.isPresent() && setUp.arrowMass() == null) {
      missing.add(SetUp.ARROW_MASS);
    }
    if (asksAnything()) {
      missing.addAll(counts.missing(setUp));
    }
    return missing;
  }

  /**
   * Not admitted where the known figures break a clause, whatever the others are; else empty. Where
   * the greater of two draw weights counts, the one that is known can already be too much.
   */
  Optional<Verdict> broken(SetUp setUp) {
    Optional<DrawWeight.Stated> known = counts.atLeast(setUp);
    if (known.isEmpty()) {
      return Optional.empty();
    }
    Force draw = known.get().draw();
    boolean exact = counts.of(setUp).isPresent();
    if (exact && leastDraw.filter(least -> least.isMoreThan(draw)).isPresent()) {
      return notAdmitted(Because.TOO_LITTLE, known.get().sentence(), leastDraw.get());
    }
    if (mostDraw.filter(draw::isMoreThan).isPresent()) {
      return notAdmitted(Because.TOO_MUCH, known.get().sentence(), mostDraw.get());
    }
    Mass arrow = setUp.arrowMass();
    if (arrow != null && leastArrow.filter(least -> !least.isReachedBy(arrow, draw)).isPresent()) {
      GrainsPerPound least = leastArrow.orElseThrow();
      return notAdmitted(Because.ARROW_TOO_LIGHT, arrow, least, draw, least.leastArrow(draw));
    }
    return Optional.empty();
  }

  /** The figures that its clauses ask for, as far as they are known. */
  List<Sentence> figures(SetUp setUp) {
    List<Sentence> figures = new ArrayList<>();
    Mass arrow = setUp.arrowMass();
    if (leastArrow.isPresent() && arrow != null) {
      figures.add(Sentence.of(Because.FIGURE, Sentence.of(Because.ARROW_MASS), arrow));
    }
    if (asksAnything()) {
      counts
          .of(setUp)
          .ifPresent(draw -> figures.add(Sentence.of(Because.FIGURE, counts.phrase(), draw)));
    }
    return figures;
  }

  private static Optional<Verdict> notAdmitted(Because clause, Object... figures) {
    return Optional.of(new Verdict.NotAdmitted(Sentence.of(clause, figures)));
  }

  /**
   * The least arrow that is admitted with the draw weight of this set-up, rounded up for display;
   * empty where no clause asks for one or the draw weight is not known.
   */
  public Optional<Mass> leastArrow(SetUp setUp) {
    return leastArrow.flatMap(least -> counts.of(setUp).map(least::leastArrow));
  }

  /** A sentence for each clause. */
  List<Sentence> sentences() {
    List<Sentence> sentences = new ArrayList<>();
    Sentence counted = counts.phrase();
    leastArrow.ifPresent(least -> sentences.add(Sentence.of(Demand.LEAST_ARROW, least, counted)));
    leastDraw.ifPresent(least -> sentences.add(Sentence.of(Demand.LEAST_DRAW, least, counted)));
    mostDraw.ifPresent(most -> sentences.add(Sentence.of(Demand.MOST_DRAW, most, counted)));
    return sentences;
  }
}
