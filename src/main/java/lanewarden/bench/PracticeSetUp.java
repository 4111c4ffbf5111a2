package lanewarden.bench;

import java.util.Optional;
import lanewarden.quantity.Force;
import lanewarden.quantity.Length;
import lanewarden.quantity.Mass;

/**
 * A bow and an arrow that somebody is about to shoot; a figure that is not stated is what the notes
 * have of that bow or arrow already, if anything.
 *
 * @param bow its owner's name for it
 * @param arrow its owner's name for it
 * @param mass of the whole arrow, as weighed
 * @param drawWeight as set
 * @param drawLength of the archer with this bow
 * @param braceHeight of the bow
 * @param rating what the bow's maker says of its speed
 */
public record PracticeSetUp(
    String bow,
    String arrow,
    Optional<Mass> mass,
    Optional<Force> drawWeight,
    Optional<Length> drawLength,
    Optional<Length> braceHeight,
    Optional<Rating> rating) {

  /** One of which the notes have every figure. */
  public static PracticeSetUp known(String bow, String arrow) {
    return new PracticeSetUp(
        bow,
        arrow,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  /** The one of a series. */
  static PracticeSetUp of(Series series) {
    PracticeBow bow = series.bow();
    return new PracticeSetUp(
        bow.label(),
        series.arrow(),
        Optional.of(series.mass()),
        bow.drawWeight(),
        bow.drawLength(),
        bow.braceHeight(),
        bow.rating());
  }

  /** What its bow's rating makes one expect; empty where rating, draw or mass is not stated. */
  public Optional<Rating.Expected> expected() {
    PracticeBow shot = new PracticeBow(bow, drawWeight, drawLength, braceHeight, rating);
    return rating.flatMap(stated -> mass.flatMap(arrow -> stated.scaledTo(shot, arrow)));
  }

  /** As it is called in a comparison. */
  public String name() {
    return Series.name(bow, arrow);
  }
}
