package lanewarden.bow;

import java.math.BigDecimal;
import java.util.List;
import lanewarden.quantity.Energy;
import lanewarden.quantity.EnergyUnit;
import lanewarden.quantity.Force;
import lanewarden.quantity.Length;

/**
 * A measured force-draw curve: how hard the string pulls at each draw.
 *
 * @param points two or more, from the string at rest to full draw, each farther than the one before
 */
public record DrawCurve(List<DrawCurve.Point> points) {
  private static final BigDecimal HALF = new BigDecimal("0.5");

  /**
   * One reading of the scale.
   *
   * @param draw of the string, from any fixed mark
   * @param force at that draw
   */
  public record Point(Length draw, Force force) {}

  /**
   * @throws IllegalArgumentException if the points are no draw
   */
  public DrawCurve {
    points = List.copyOf(points);
    if (points.size() < 2) {
      throw new IllegalArgumentException("a force-draw curve has two points or more");
    }
    for (int i = 1; i < points.size(); i++) {
      if (points.get(i).draw().isAtMost(points.get(i - 1).draw())) {
        throw new IllegalArgumentException(
            points.get(i).draw()
                + " stands after "
                + points.get(i - 1).draw()
                + "; list the points from rest to full draw");
      }
    }
  }

  /**
   * The work of drawing, which the bow then stores: the area under straight lines from point to
   * point (trapezoid rule), in joules, exact for those lines.
   */
  public Energy stored() {
    BigDecimal joules = BigDecimal.ZERO;
    for (int i = 1; i < points.size(); i++) {
      Point from = points.get(i - 1);
      Point to = points.get(i);
      BigDecimal way = to.draw().si().subtract(from.draw().si());
      joules = joules.add(from.force().si().add(to.force().si()).multiply(way).multiply(HALF));
    }
    return Energy.of(joules, EnergyUnit.JOULE);
  }

  /** The greatest force among the points: the draw weight. */
  public Force peak() {
    return points.stream().map(Point::force).max(Force::compareTo).orElseThrow();
  }
}
