package lanewarden.kiosk.line;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lanewarden.kiosk.look.Texts;
import lanewarden.quantity.Quantity;
import lanewarden.rules.SetUp;
import lanewarden.station.CheckView;
import org.jspecify.annotations.Nullable;

/**
 * What is to be stated and ticked for a check, in the words of the screen.
 *
 * @param offered the figures that can be stated: those that the rule asks for, and those that tell
 *     what speed the bow cannot give
 * @param figures what is stated of them, in one line
 * @param missing whether the check cannot go on before more is stated
 * @param least the least arrow that is admitted, where that is known
 * @param conditions what the official ticks
 */
public record Preparation(
    List<Asked> offered,
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
    CERTIFIED_DRAW_WEIGHT,
    /** How far the archer draws this bow. */
    DRAW_LENGTH,
    /** The bow's brace height. */
    BRACE_HEIGHT
  }

  /**
   * A figure that can be stated.
   *
   * @param label how the field is called
   * @param shortLabel the same where there is little room
   * @param known as stated, or blank
   * @param needed whether the rule asks for it
   */
  public record Asked(
      Figure figure, String label, String shortLabel, String known, boolean needed) {

    /** Whether it tells what speed the bow cannot give. */
    boolean tellsBound() {
      return figure != Figure.CERTIFIED_DRAW_WEIGHT;
    }
  }

  /** A condition of the rule. */
  public record Condition(String words, boolean ticked) {}

  static Preparation of(CheckView view, Texts texts) {
    SetUp known = view.check().setUp();
    List<String> needed = view.division().rule().figuresAsked();
    List<Asked> offered =
        Stream.of(Figure.values())
            .map(figure -> asked(figure, known, needed, texts))
            .filter(figure -> figure.needed() || (view.shotsAllowed() > 0 && figure.tellsBound()))
            .sorted(Comparator.comparing(Asked::needed).reversed())
            .toList();
    List<Asked> asked = offered.stream().filter(Asked::needed).toList();
    return new Preparation(
        offered,
        String.join(
            texts.of("set-up.between"),
            asked.stream().map(figure -> inWords(figure, texts)).toList()),
        !view.missingFigures().isEmpty(),
        view.leastArrow().map(mass -> texts.of("set-up.least", mass)),
        view.division().rule().conditions().stream()
            .map(words -> new Condition(words, view.check().ticked().contains(words)))
            .toList());
  }

  /** Every figure that is stated, in one line; blank where none is. */
  public static String stated(SetUp known, Texts texts) {
    return Stream.of(Figure.values())
        .map(figure -> asked(figure, known, List.of(), texts))
        .filter(figure -> !figure.known().isEmpty())
        .map(figure -> inWords(figure, texts))
        .collect(Collectors.joining(texts.of("set-up.between")));
  }

  private static Asked asked(Figure figure, SetUp known, List<String> needed, Texts texts) {
    return switch (figure) {
      case ARROW_MASS ->
          new Asked(
              figure,
              texts.of("set-up.arrow"),
              texts.of("set-up.arrow.short"),
              written(known.arrowMass(), texts),
              needed.contains(SetUp.ARROW_MASS));
      case DRAW_WEIGHT ->
          new Asked(
              figure,
              texts.of("set-up.draw"),
              texts.of("set-up.draw.short"),
              written(known.drawWeight(), texts),
              needed.contains(SetUp.DRAW_WEIGHT));
      case CERTIFIED_DRAW_WEIGHT ->
          new Asked(
              figure,
              texts.of("set-up.certified"),
              texts.of("set-up.certified.short"),
              written(known.certifiedDrawWeight(), texts),
              needed.contains(SetUp.CERTIFIED_DRAW_WEIGHT));
      case DRAW_LENGTH ->
          new Asked(
              figure,
              texts.of("set-up.length"),
              texts.of("set-up.length.short"),
              written(known.drawLength(), texts),
              needed.contains(SetUp.DRAW_LENGTH));
      case BRACE_HEIGHT ->
          new Asked(
              figure,
              texts.of("set-up.brace"),
              texts.of("set-up.brace.short"),
              written(known.braceHeight(), texts),
              needed.contains(SetUp.BRACE_HEIGHT));
    };
  }

  private static String written(@Nullable Quantity<?, ?> figure, Texts texts) {
    return figure == null ? "" : texts.quantity(figure);
  }

  private static String inWords(Asked figure, Texts texts) {
    return figure.known().isEmpty()
        ? texts.of("set-up.unstated", figure.shortLabel())
        : texts.of("set-up.stated", figure.shortLabel(), figure.known());
  }

  /** Whether the rule asks for a figure. */
  public boolean asks() {
    return offered.stream().anyMatch(Asked::needed);
  }

  /** Whether there is anything that the rule wants stated or ticked. */
  public boolean any() {
    return asks() || !conditions.isEmpty();
  }

  /** Whether a condition is not ticked yet. */
  public boolean mayTick() {
    return conditions.stream().anyMatch(condition -> !condition.ticked());
  }
}
