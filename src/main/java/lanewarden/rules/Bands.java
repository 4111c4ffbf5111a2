package lanewarden.rules;

import java.math.BigDecimal;
import java.util.ArrayList;
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

  /**
   * Speeds of readings of which some settles whatever can be settled: a very slow one, the upper
   * edge of each band, and a very fast one.
   */
  List<Speed> telling(Rounding reading, Speed allowed) {
    List<Speed> telling = new ArrayList<>();
    telling.add(Speed.of(BigDecimal.ZERO, allowed.unit()));
    for (Band band : ascending) {
      telling.add(reading.readable(band.edge(allowed)));
    }
    Speed last = ascending.get(ascending.size() - 1).edge(allowed);
    telling.add(reading.readable(last.plus(last)));
    return telling;
  }
}
