package lanewarden.kiosk.line;

import java.util.List;
import java.util.Optional;
import lanewarden.kiosk.look.Texts;
import lanewarden.quantity.Quantity;
import lanewarden.rules.SetUp;
import lanewarden.station.CheckView;
import org.jspecify.annotations.Nullable;

/**
 * What is to be stated and ticked for a check, in the words of the screen.
 *
 * @param asked the figures that the rule asks for; empty where it asks for none
 * @param figures what is stated of them, in one line
 * @param missing whether the check cannot go on before more is stated
 * @param least the least arrow that is admitted, where that is known
 * @param conditions what the official ticks
 */
public record Preparation(
    List<Asked> asked,
    String figures,
    boolean missing,
    Optional<String> least,
    List<Condition> conditions) {

  /** A figure of bow or arrow. */
  public enum Figure {
    /** The whole arrow's mass. */
    ARROW_MASS,
    /** The draw weight as the bow is set. */
    DRAW_WEIGHT,
    /** The draw weight of its certificate. */
    CERTIFIED_DRAW_WEIGHT
  }

  /**
   * A figure that the rule asks for.
   *
   * @param label how the field is called
   * @param shortLabel the same where there is little room
   * @param known as stated, or blank
   */
  public record Asked(Figure figure, String label, String shortLabel, String known) {}

  /** A condition of the rule. */
  public record Condition(String words, boolean ticked) {}

  static Preparation of(CheckView view, Texts texts) {
    List<String> names = view.division().rule().figuresAsked();
    SetUp known = view.check().setUp();
    List<Asked> asked =
        List.of(
                new Asked(
                    Figure.ARROW_MASS,
                    texts.of("set-up.arrow"),
                    texts.of("set-up.arrow.short"),
                    written(known.arrowMass())),
                new Asked(
                    Figure.DRAW_WEIGHT,
                    texts.of("set-up.draw"),
                    texts.of("set-up.draw.short"),
                    written(known.drawWeight())),
                new Asked(
                    Figure.CERTIFIED_DRAW_WEIGHT,
                    texts.of("set-up.certified"),
                    texts.of("set-up.certified.short"),
                    written(known.certifiedDrawWeight())))
            .stream()
            .filter(figure -> names.contains(nameOf(figure.figure())))
            .toList();
    return new Preparation(
        asked,
        String.join(
            texts.of("set-up.between"),
            asked.stream().map(figure -> inWords(figure, texts)).toList()),
        !view.missingFigures().isEmpty(),
        view.leastArrow().map(mass -> texts.of("set-up.least", mass)),
        view.division().rule().conditions().stream()
            .map(words -> new Condition(words, view.check().ticked().contains(words)))
            .toList());
  }

  private static String nameOf(Figure figure) {
    return switch (figure) {
      case ARROW_MASS -> SetUp.ARROW_MASS;
      case DRAW_WEIGHT -> SetUp.DRAW_WEIGHT;
      case CERTIFIED_DRAW_WEIGHT -> SetUp.CERTIFIED_DRAW_WEIGHT;
    };
  }

  private static String written(@Nullable Quantity<?, ?> figure) {
    return figure == null ? "" : figure.toString();
  }

  private static String inWords(Asked figure, Texts texts) {
    return figure.known().isEmpty()
        ? texts.of("set-up.unstated", figure.shortLabel())
        : texts.of("set-up.stated", figure.shortLabel(), figure.known());
  }

  /** Whether there is anything to state or to tick. */
  public boolean any() {
    return !asked.isEmpty() || !conditions.isEmpty();
  }

  /** Whether a condition is not ticked yet. */
  public boolean mayTick() {
    return conditions.stream().anyMatch(condition -> !condition.ticked());
  }
}
