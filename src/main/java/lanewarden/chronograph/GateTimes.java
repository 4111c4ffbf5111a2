package lanewarden.chronograph;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import lanewarden.quantity.Percent;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;

/**
 * What a line says about when the arrow passed the gates, and the speed that follows from it.
 *
 * <p>Either the times from gate to gate (fields {@code gate1} …) or the moments at the gates
 * (fields {@code at1} …), both in counts of the instrument's clock. All comparisons are exact.
 *
 * @param ways from each gate to the next; empty if the line says no such times
 * @param moments whether the fields are moments
 * @param clock what the instrument counts by
 */
record GateTimes(List<GateRule> ways, boolean moments, GateClock clock) {
  /** A line without gate times. */
  static final GateTimes NONE = new GateTimes(List.of(), false, GateClock.MICROSECONDS);

  private static final BigDecimal SECONDS_BETWEEN_SIMULATED_SHOTS = BigDecimal.valueOf(2);

  /** The names of the fields, in the order of the gates. */
  List<String> fields() {
    if (ways.isEmpty()) {
      return List.of();
    }
    String kind = moments ? "at" : "gate";
    return IntStream.rangeClosed(1, ways.size() + (moments ? 1 : 0))
        .mapToObj(n -> kind + n)
        .toList();
  }

  /**
   * The arrow's passages from gate to gate, roll-over undone.
   *
   * @param field what stands in a field of the line
   * @throws Misread if a field is no count of the clock, or the gates were passed in another order
   */
  List<Passage> passages(Function<String, Optional<String>> field) throws Misread {
    List<BigDecimal> counts = new ArrayList<>();
    for (String name : fields()) {
      counts.add(count(name, field.apply(name).orElse("")));
    }
    List<Passage> passages = new ArrayList<>();
    for (int i = 0; i < ways.size(); i++) {
      BigDecimal difference = moments ? counts.get(i + 1).subtract(counts.get(i)) : counts.get(i);
      BigDecimal passed = clock.passed(difference);
      if (passed.signum() <= 0) {
        throw new Misread(
            Reason.REVERSED,
            "Gate %d was passed before gate %d or together with it (%s counts later): the gates are connected the wrong way round, or something else triggered one. Shoot again; if it repeats, swap the gates."
                .formatted(i + 2, i + 1, passed.toPlainString()));
      }
      passages.add(ways.get(i).in(passed.multiply(clock.tick())));
    }
    return passages;
  }

  private BigDecimal count(String name, String written) throws Misread {
    Numeral numeral = Numeral.of(written);
    if (numeral instanceof Numeral.Absent) {
      throw new Misread(
          Reason.NOT_A_NUMBER,
          "\"%s\" in the field %s is no time: a gate saw nothing. Shoot again."
              .formatted(written, name));
    }
    // A difference may be negative where the instrument subtracts across its own roll-over
    if (!(numeral instanceof Numeral.Finite finite)
        || !clock.shows(moments ? finite.value() : finite.value().abs())) {
      throw new Misread(
          Reason.OUT_OF_RANGE,
          "\"%s\" in the field %s is no count of the instrument's clock, which counts %s. Shoot again; if it repeats, mend rolls_over in the profile."
              .formatted(written, name, clock.counts()));
    }
    return finite.value();
  }

  /**
   * Checks each passage against the one before.
   *
   * @throws Misread if two speeds are further apart than the later way allows
   */
  void agree(List<Passage> passages, SpeedUnit unit) throws Misread {
    for (int i = 1; i < passages.size(); i++) {
      Passage before = passages.get(i - 1);
      Percent most = ways.get(i).agree();
      if (most != null && !passages.get(i).agrees(before, most)) {
        throw new Misread(
            Reason.GATES,
            "%s from gate %d to gate %d and %s from gate %d to gate %d differ by more than %s: a gate was triggered by something else. Shoot again."
                .formatted(
                    before.speed(unit), i, i + 1, passages.get(i).speed(unit), i + 1, i + 2, most));
      }
    }
  }

  /**
   * Checks each passage against the speed of the same line.
   *
   * @throws Misread if they are further apart than the way allows
   */
  void agree(List<Passage> passages, Speed said) throws Misread {
    for (int i = 0; i < passages.size(); i++) {
      Percent most = ways.get(i).agree();
      if (most != null && !passages.get(i).agrees(Passage.ofOneSecond(said), most)) {
        throw new Misread(
            Reason.GATES,
            "The line says %s, but its gate times say %s from gate %d to gate %d, more than %s apart: a gate was triggered by something else. Shoot again."
                .formatted(said, passages.get(i).speed(said.unit()), i + 1, i + 2, most));
      }
    }
  }

  /** The speed over the whole way; see {@link Passage#speed} for its decimals. */
  static Speed speed(List<Passage> passages, SpeedUnit unit) {
    return passages.stream().reduce(Passage::then).orElseThrow().speed(unit);
  }

  /**
   * What an instrument writes into the fields for an arrow of this speed, in whole counts, rounded
   * half to even.
   *
   * <p>A clock that rolls over runs on between the shots, two seconds each; one that does not is
   * started by the arrow.
   *
   * @param shot from 0
   * @throws IllegalArgumentException if the speed is zero
   */
  Map<String, BigDecimal> counts(Speed speed, long shot) {
    if (speed.value().signum() == 0) {
      throw new IllegalArgumentException("a speed of zero never reaches the second gate");
    }
    BigDecimal perMetre = speed.si().multiply(clock.tick());
    List<String> names = fields();
    Map<String, BigDecimal> counts = new LinkedHashMap<>();
    BigDecimal way = BigDecimal.ZERO;
    for (int i = 0; i < names.size(); i++) {
      if (!moments) {
        way = ways.get(i).spacing().si();
      } else if (i > 0) {
        way = way.add(ways.get(i - 1).spacing().si());
      }
      BigDecimal ticks = way.divide(perMetre, 0, RoundingMode.HALF_EVEN);
      counts.put(names.get(i), moments ? onTheClock(ticks, shot) : ticks);
    }
    return counts;
  }

  private BigDecimal onTheClock(BigDecimal ticks, long shot) {
    if (clock.range() == null) {
      return ticks;
    }
    return SECONDS_BETWEEN_SIMULATED_SHOTS
        .multiply(BigDecimal.valueOf(shot))
        .divide(clock.tick(), 0, RoundingMode.DOWN)
        .add(ticks)
        .remainder(clock.range());
  }
}
