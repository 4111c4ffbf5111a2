package lanewarden.rules;

import java.math.BigDecimal;
import java.util.List;

/**
 * What a complete row of readings means under one clause, by an arithmetic of the tests' own: sums
 * and sorted values of plain numbers, no early decision, nothing of the rules room.
 *
 * @param limit the most that is allowed, in the readings' unit
 * @param below whether a figure equal to it is over
 * @param step to which readings are rounded, halves up; null where they are not
 * @param spread how far apart they may lie; null where that does not matter
 * @param edges the upper edges of the bands
 */
record CompleteRow(
    BigDecimal limit, boolean below, BigDecimal step, BigDecimal spread, List<BigDecimal> edges) {

  static CompleteRow upTo(String limit) {
    return new CompleteRow(new BigDecimal(limit), false, null, null, List.of());
  }

  CompleteRow exclusive() {
    return new CompleteRow(limit, true, step, spread, edges);
  }

  CompleteRow roundedTo(String width) {
    return new CompleteRow(limit, below, new BigDecimal(width), spread, edges);
  }

  CompleteRow apart(String most) {
    return new CompleteRow(limit, below, step, new BigDecimal(most), edges);
  }

  CompleteRow banded(String... upper) {
    return new CompleteRow(
        limit, below, step, spread, List.of(upper).stream().map(BigDecimal::new).toList());
  }

  /**
   * For example {@code within}, {@code over}, {@code over in band 2} or {@code too wide}.
   *
   * @param decide as in a rule book, with the number behind {@code k of n}
   */
  String outcome(String decide, List<String> row) {
    List<BigDecimal> sorted =
        row.stream().map(BigDecimal::new).map(this::rounded).sorted().toList();
    int counted = sorted.size();
    if (spread != null && sorted.get(counted - 1).subtract(sorted.get(0)).compareTo(spread) > 0) {
      return "too wide";
    }
    List<BigDecimal> deciding =
        switch (decide) {
          case "mean" -> sorted;
          case "highest" -> sorted.subList(counted - 1, counted);
          case "first within" -> sorted.subList(0, 1);
          case "median" -> sorted.subList((counted - 1) / 2, counted / 2 + 1);
          default -> {
            int needed = Integer.parseInt(decide.substring("k of n ".length()));
            yield sorted.subList(needed - 1, needed);
          }
        };
    int side = compare(deciding, limit);
    return side < 0 || (side == 0 && !below) ? "within" : "over" + band(deciding);
  }

  private String band(List<BigDecimal> deciding) {
    for (int i = 0; i < edges.size(); i++) {
      if (compare(deciding, edges.get(i)) <= 0) {
        return " in band " + (i + 1);
      }
    }
    return "";
  }

  private static int compare(List<BigDecimal> speeds, BigDecimal with) {
    BigDecimal sum = speeds.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    return sum.compareTo(with.multiply(BigDecimal.valueOf(speeds.size())));
  }

  private BigDecimal rounded(BigDecimal reading) {
    if (step == null) {
      return reading;
    }
    BigDecimal[] parts = reading.divideAndRemainder(step);
    boolean up = parts[1].add(parts[1]).compareTo(step) >= 0;
    return (up ? parts[0].add(BigDecimal.ONE) : parts[0]).multiply(step);
  }
}
