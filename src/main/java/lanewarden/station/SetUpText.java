package lanewarden.station;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import lanewarden.journal.SetUpStated;
import lanewarden.quantity.Extremes;
import lanewarden.quantity.Force;
import lanewarden.quantity.ForceUnit;
import lanewarden.quantity.Length;
import lanewarden.quantity.LengthUnit;
import lanewarden.quantity.Mass;
import lanewarden.quantity.PowerStroke;
import lanewarden.quantity.Quantity;
import lanewarden.quantity.QuantityException;
import lanewarden.rules.SetUp;
import org.jspecify.annotations.Nullable;

/**
 * Bow and arrow as an official types them. A figure that is left blank stays as it is; one without
 * a unit is in grains, pounds-force or inches.
 *
 * @param arrowMass of the whole arrow, for example {@code 352.5} or {@code 22.8 g}
 * @param drawWeight as the bow is set, for example {@code 60} or {@code 267 N}
 * @param certifiedDrawWeight as a certificate of the bow states it
 * @param drawLength of the archer with this bow, for example {@code 29} or {@code 74 cm}
 * @param braceHeight of the bow, for example {@code 7}
 */
public record SetUpText(
    String arrowMass,
    String drawWeight,
    String certifiedDrawWeight,
    String drawLength,
    String braceHeight) {
  private static final String CODE = "SET-UP-UNREADABLE";
  private static final String NOT_STATED = "Bow and arrow were not stated.";

  /** The bow's lengths were not typed. */
  public SetUpText(String arrowMass, String drawWeight, String certifiedDrawWeight) {
    this(arrowMass, drawWeight, certifiedDrawWeight, "", "");
  }

  /**
   * What is to be signed.
   *
   * @param known what was stated before
   * @throws StationException if nothing is written, or a figure cannot be read
   */
  SetUpStated stated(long check, SetUp known) throws StationException {
    if (weighed().isEmpty()) {
      throw refused("No figure was given.", "Type the arrow's mass or the bow's draw weight.");
    }
    SetUpStated stated =
        new SetUpStated(
            check,
            arrow(known.arrowMass()),
            figure(drawWeight, "the draw weight", known.drawWeight(), SetUpText::force),
            figure(
                certifiedDrawWeight,
                "the certified draw weight",
                known.certifiedDrawWeight(),
                SetUpText::force),
            draw(known.drawLength()),
            figure(braceHeight, "the brace height", known.braceHeight(), SetUpText::length),
            weighed());
    if (stated.drawLength() != null && stated.braceHeight() != null) {
      requireStroke(new PowerStroke(stated.drawLength(), stated.braceHeight()));
    }
    return stated;
  }

  /** The figures that were typed, by their names. */
  private List<String> weighed() {
    Map<String, String> typed = new LinkedHashMap<>();
    typed.put(SetUp.ARROW_MASS, arrowMass);
    typed.put(SetUp.DRAW_WEIGHT, drawWeight);
    typed.put(SetUp.CERTIFIED_DRAW_WEIGHT, certifiedDrawWeight);
    typed.put(SetUp.DRAW_LENGTH, drawLength);
    typed.put(SetUp.BRACE_HEIGHT, braceHeight);
    return typed.entrySet().stream()
        .filter(figure -> !figure.getValue().isBlank())
        .map(Map.Entry::getKey)
        .toList();
  }

  /** Without one nothing is asked of readings by what the bow can give, and nobody would know. */
  private static void requireStroke(PowerStroke stroke) throws StationException {
    if (!stroke.isSome()) {
      String found = stroke.inWords();
      throw refused(
          Character.toUpperCase(found.charAt(0)) + found.substring(1) + ".",
          "Measure both, look whether the two were exchanged, and type both anew.");
    }
  }

  private @Nullable Length draw(@Nullable Length known) throws StationException {
    Length draw = figure(drawLength, "the draw length", known, SetUpText::length);
    if (draw != null && draw.isMoreThan(Extremes.LONGEST_DRAW)) {
      throw refused(
          "No archer draws " + draw + ".", "Look whether it belongs to another field or unit.");
    }
    return draw;
  }

  private static Length length(String text) {
    return Length.parse(text, LengthUnit.INCH);
  }

  private @Nullable Mass arrow(@Nullable Mass known) throws StationException {
    Mass mass = figure(arrowMass, "the arrow's mass", known, TypedArrow::mass);
    if (mass != null && mass.isMoreThan(Extremes.HEAVIEST_ARROW)) {
      throw refused(
          "No arrow has a mass of " + mass + ".",
          "Look whether it belongs to another field or unit.");
    }
    return mass;
  }

  private static Force force(String text) {
    return Force.parse(text, ForceUnit.POUND_FORCE);
  }

  private static <Q extends Quantity<?, Q>> @Nullable Q figure(
      String typed, String what, @Nullable Q known, Function<String, Q> reader)
      throws StationException {
    if (typed.isBlank()) {
      return known;
    }
    try {
      Q figure = reader.apply(typed);
      if (figure.value().signum() > 0) {
        return figure;
      }
    } catch (QuantityException e) {
      throw StationException.misstep(
          CODE,
          NOT_STATED,
          "As " + what + " was typed " + e.found() + ".",
          "For this figure: " + e.mend() + ".",
          FormTold.expected(e.expected(), e.found(), e.mend()));
    }
    throw refused("As " + what + " was typed zero.", "Weigh it, or leave the figure out.");
  }

  private static StationException refused(String why, String remedy) {
    return StationException.misstep(CODE, NOT_STATED, why, remedy);
  }
}
