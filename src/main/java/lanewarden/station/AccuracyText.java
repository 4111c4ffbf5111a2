package lanewarden.station;

import static lanewarden.station.WrittenAccuracy.COVERS;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import lanewarden.metrology.Coverage;
import lanewarden.metrology.ErrorSource;
import lanewarden.metrology.ReadingUncertainty;

/** Writes the table {@code [accuracy]}, so that {@link WrittenAccuracy} reads the same back. */
final class AccuracyText {
  private final Map<String, String> lines = new LinkedHashMap<>();

  private AccuracyText() {}

  static String of(ReadingUncertainty uncertainty) {
    AccuracyText text = new AccuracyText();
    uncertainty.sources().forEach(text::add);
    StringBuilder toml = new StringBuilder("\n[" + WrittenAccuracy.TABLE + "]\n");
    text.lines.forEach(
        (key, value) -> toml.append(key).append(" = \"").append(value).append("\"\n"));
    return toml.toString();
  }

  private void add(ErrorSource source) {
    if (source instanceof ErrorSource.Spacing spacing) {
      lines.put(WrittenAccuracy.SPACING, spacing.spacing().toString());
      covered(WrittenAccuracy.SPACING_ERROR, spacing.error(), spacing.coverage());
    } else if (source instanceof ErrorSource.ClockRate rate) {
      covered(WrittenAccuracy.CLOCK_RATE, rate.tolerance(), rate.coverage());
    } else if (source instanceof ErrorSource.GateJitter gate) {
      lines.put(WrittenAccuracy.SPACING, gate.spacing().toString());
      covered(WrittenAccuracy.GATE_JITTER, time(gate.jitter()), gate.coverage());
    } else if (source instanceof ErrorSource.ClockTick clock) {
      lines.put(WrittenAccuracy.SPACING, clock.spacing().toString());
      lines.put(WrittenAccuracy.CLOCK_TICK, time(clock.tick()));
    } else if (source instanceof ErrorSource.DisplayStep display) {
      lines.put(WrittenAccuracy.DISPLAY_STEP, display.step().toString());
    } else if (source instanceof ErrorSource.StatedAccuracy stated) {
      covered(WrittenAccuracy.STATED, stated.accuracy(), stated.coverage());
    } else if (source instanceof ErrorSource.CrookedFlight flight) {
      lines.put(
          WrittenAccuracy.ALIGNMENT,
          BigDecimal.valueOf(flight.alignment().degrees()).stripTrailingZeros().toPlainString()
              + "°");
    } else if (source instanceof ErrorSource.Distance distance) {
      covered(WrittenAccuracy.DISTANCE_ERROR, distance.error(), distance.coverage());
    } else {
      throw new IllegalArgumentException("no settings say this of an instrument: " + source);
    }
  }

  private void covered(String key, Object amount, Coverage coverage) {
    lines.put(key, amount.toString());
    lines.put(key + COVERS, coverage.toString());
  }

  private static String time(Duration time) {
    long nanos = time.toNanos();
    return nanos % 1000 == 0 ? nanos / 1000 + " µs" : nanos + " ns";
  }
}
