package lanewarden.rules;

import java.util.List;
import java.util.Optional;
import lanewarden.quantity.MeanSpeed;
import lanewarden.quantity.Speed;

/**
 * The bands of a rule, the narrowest first; beyond the last, the phase says what follows.
 *
 * @param ascending each reaches further than the one before
 */
record Bands(List<Band> ascending) {

  boolean any() {
    return !ascending.isEmpty();
  }

  /** The band a deciding figure lies in; empty beyond the last. */
  Optional<Band> of(MeanSpeed figure, Speed allowed) {
    return ascending.stream().filter(band -> band.holds(figure, allowed)).findFirst();
  }

  /** Whether no reading still outstanding can move the figure into another band. */
  boolean isSettled(FigureRange figure, Speed allowed) {
    Optional<Band> least = of(figure.atLeast(), allowed);
    if (least.isEmpty()) {
      return true;
    }
    return figure.most().map(most -> of(most, allowed).equals(least)).orElse(false);
  }
}
