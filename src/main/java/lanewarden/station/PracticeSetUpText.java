package lanewarden.station;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import lanewarden.bench.PracticeSetUp;
import lanewarden.bench.Rating;
import lanewarden.quantity.Force;
import lanewarden.quantity.ForceUnit;
import lanewarden.quantity.Length;
import lanewarden.quantity.LengthUnit;
import lanewarden.quantity.QuantityException;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;

/**
 * A bow and an arrow as somebody types them on a practice day; a figure that is left blank is not
 * stated, one without a unit is in grains, pounds-force, inches or ft/s.
 *
 * @param bow its owner's name for it
 * @param arrow its owner's name for it
 * @param mass of the whole arrow, for example {@code 352.5} or {@code 22.8 g}
 * @param drawWeight as set, for example {@code 60}
 * @param drawLength of the archer with this bow, for example {@code 29}
 * @param braceHeight of the bow, for example {@code 7}
 * @param rating the maker's speed with its draw weight, draw length and arrow mass, for example
 *     {@code 330, 70, 30, 350}
 */
public record PracticeSetUpText(
    String bow,
    String arrow,
    String mass,
    String drawWeight,
    String drawLength,
    String braceHeight,
    String rating) {
  private static final String CODE = "PRACTICE-SET-UP";
  private static final String NOT_TAKEN = "This set-up was not taken; nothing is lost.";

  private static final int RATING_FIGURES = 4;

  /**
   * What was typed.
   *
   * @throws StationException if a figure cannot be read
   */
  PracticeSetUp read() throws StationException {
    return new PracticeSetUp(
        bow.strip(),
        arrow.strip(),
        figure(mass, TypedArrow::mass),
        figure(drawWeight, PracticeSetUpText::force),
        figure(drawLength, PracticeSetUpText::length),
        figure(braceHeight, PracticeSetUpText::length),
        rated());
  }

  private Optional<Rating> rated() throws StationException {
    if (rating.isBlank()) {
      return Optional.empty();
    }
    List<String> figures = Stream.of(rating.split(",", -1)).map(String::strip).toList();
    if (figures.size() != RATING_FIGURES) {
      throw refused(
          "The maker's rating was typed \"" + rating.strip() + "\".",
          "Type the speed with the draw weight, draw length and arrow mass it was measured with,"
              + " and commas between: 330, 70, 30, 350. Or leave it blank.");
    }
    return figure(
        rating,
        all ->
            new Rating(
                Speed.parse(figures.get(0), SpeedUnit.FEET_PER_SECOND),
                force(figures.get(1)),
                length(figures.get(2)),
                TypedArrow.mass(figures.get(3))));
  }

  private static Force force(String text) {
    return Force.parse(text, ForceUnit.POUND_FORCE);
  }

  private static Length length(String text) {
    return Length.parse(text, LengthUnit.INCH);
  }

  private static <T> Optional<T> figure(String typed, Function<String, T> reader)
      throws StationException {
    if (typed.isBlank()) {
      return Optional.empty();
    }
    try {
      return Optional.of(reader.apply(typed.strip()));
    } catch (QuantityException e) {
      throw refused(e.expected(), e.found(), e.mend());
    }
  }

  static StationException refused(Sentence expected, Sentence found, Sentence mend) {
    return StationException.misstep(
        CODE,
        NOT_TAKEN,
        "Expected was " + expected + ", found " + found + ".",
        "For this figure: " + mend + ".",
        FormTold.expected(expected, found, mend));
  }

  private static StationException refused(String why, String remedy) {
    return StationException.misstep(CODE, NOT_TAKEN, why, remedy);
  }
}
