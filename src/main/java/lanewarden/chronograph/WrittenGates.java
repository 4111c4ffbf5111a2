package lanewarden.chronograph;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import lanewarden.quantity.Length;
import lanewarden.quantity.Percent;
import lanewarden.quantity.QuantityException;
import lanewarden.written.Section;
import org.jspecify.annotations.Nullable;

/**
 * Reads the tables {@code [[gate]]} and {@code [clock]} of a profile, and whether they fit the
 * fields of the line and the speeds that are plausible.
 */
final class WrittenGates {
  private static final int MOST_FIELDS = 3;
  private static final BigDecimal TWO = BigDecimal.valueOf(2);

  private final Section root;
  private final Section sentence;
  private final List<Section> tables;
  private final List<Optional<Length>> spacings = new ArrayList<>();
  private final List<Optional<Percent>> agreements = new ArrayList<>();
  private final @Nullable Section clockTable;
  private final GateClock clock;

  WrittenGates(Section root, Section sentence) {
    this.root = root;
    this.sentence = sentence;
    this.tables = root.sections("gate");
    for (Section gate : tables) {
      spacings.add(gate.value("spacing", "a length such as \"609.6 mm\"", WrittenGates::spacing));
      agreements.add(gate.optionalValue("agree", "a share such as \"0.1 %\"", Percent::parse));
      gate.closed();
    }
    this.clockTable = root.has("clock") ? root.section("clock").orElse(null) : null;
    this.clock = clockTable == null ? GateClock.MICROSECONDS : clock(clockTable);
  }

  private static Length spacing(String text) {
    Length spacing = Length.parse(text);
    if (spacing.value().signum() == 0) {
      throw new QuantityException("a length above zero", text, "measure from gate to gate");
    }
    return spacing;
  }

  private static GateClock clock(Section table) {
    Optional<BigDecimal> tick =
        table.optionalValue("tick", "how long one count lasts, such as \"1 µs\"", GateClock::tick);
    OptionalLong range = table.optionalCount("rolls_over", 2, Long.MAX_VALUE);
    table.closed();
    return new GateClock(
        tick.orElse(GateClock.MICROSECONDS.tick()),
        range.isPresent() ? BigDecimal.valueOf(range.getAsLong()) : null);
  }

  /**
   * The gate times of a line with these fields; faults are noted.
   *
   * @param plausible empty if it has a fault of its own
   */
  GateTimes times(Set<String> groups, Optional<SpeedRange> plausible) {
    boolean intervals = groups.stream().anyMatch(group -> group.matches("gate[1-9]"));
    boolean moments = groups.stream().anyMatch(group -> group.matches("at[1-9]"));
    if (intervals && moments) {
      sentence.fault(
          "pattern",
          "times from gate to gate (gate1 …) or moments at the gates (at1 …)",
          "both",
          "keep one kind, and write (?:…) around the other");
    }
    fieldsFit(groups, moments && !intervals);
    agreementsFit(groups.contains("speed"));
    clockFits(moments);
    plausible.ifPresent(this::slowestIsSeen);
    List<GateRule> ways = new ArrayList<>();
    for (int i = 0; i < tables.size(); i++) {
      Percent agree = agreements.get(i).orElse(null);
      spacings.get(i).ifPresent(spacing -> ways.add(new GateRule(spacing, agree)));
    }
    return new GateTimes(List.copyOf(ways), moments, clock);
  }

  private void fieldsFit(Set<String> groups, boolean moments) {
    String kind = moments ? "at" : "gate";
    int wanted = tables.isEmpty() ? 0 : tables.size() + (moments ? 1 : 0);
    for (int n = 1; n <= MOST_FIELDS; n++) {
      WrittenSentence.fits(
          sentence, groups.contains(kind + n), wanted >= n, kind + n, "a table [[gate]]");
    }
    if (wanted > MOST_FIELDS) {
      int most = moments ? MOST_FIELDS - 1 : MOST_FIELDS;
      root.fault(
          "gate",
          "at most " + most + " tables [[gate]], one from each gate to the next",
          tables.size() + " tables",
          "take out those that the line says nothing about");
    }
  }

  private void agreementsFit(boolean speedIsSaid) {
    for (int i = 0; i < tables.size(); i++) {
      boolean compared = speedIsSaid || i > 0;
      if (!compared) {
        tables.get(i).leftOut("agree", "the line says no other speed before this one");
      } else if (!tables.get(i).has("agree")) {
        tables
            .get(i)
            .fault(
                "agree",
                "the share by which the speeds of one line may differ",
                "nothing",
                "add agree = \"0.1 %\" to this table, or what the instrument can keep");
      }
    }
  }

  private void clockFits(boolean moments) {
    if (moments && !root.has("clock")) {
      root.fault(
          "clock",
          "the clock by which the moments at1, at2, … are counted",
          "nothing",
          "add a section [clock] with tick = \"1 µs\", and rolls_over if it begins at zero again");
    }
    if (tables.isEmpty()) {
      root.leftOut("clock", "the line has no gate times");
    }
  }

  /** Half of the clock's range must be longer than the slowest arrow takes from gate to gate. */
  private void slowestIsSeen(SpeedRange plausible) {
    BigDecimal range = clock.range();
    if (clockTable == null || range == null) {
      return;
    }
    BigDecimal wayPerCount = plausible.least().si().multiply(clock.tick());
    for (Optional<Length> spacing : spacings) {
      BigDecimal twice = spacing.map(length -> length.si().multiply(TWO)).orElse(BigDecimal.ZERO);
      if (twice.signum() > 0 && twice.compareTo(range.multiply(wayPerCount)) >= 0) {
        clockTable.fault(
            "rolls_over",
            leastRange(twice, wayPerCount, plausible, spacing.orElseThrow()),
            range.toPlainString(),
            "set the gates nearer together, let the instrument count slower, or raise least: what takes half of the range cannot be told from gates passed in the wrong order");
        return;
      }
    }
  }

  private static String leastRange(
      BigDecimal twice, BigDecimal wayPerCount, SpeedRange plausible, Length spacing) {
    if (wayPerCount.signum() == 0) {
      return "a least plausible speed above zero, where the clock rolls over";
    }
    BigDecimal least = twice.divide(wayPerCount, 0, RoundingMode.DOWN).add(BigDecimal.ONE);
    return "at least %s counts: more than twice what an arrow at %s takes over %s"
        .formatted(least.toPlainString(), plausible.least(), spacing);
  }
}
