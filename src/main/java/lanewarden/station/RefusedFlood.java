package lanewarden.station;

import java.io.ByteArrayOutputStream;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import lanewarden.journal.Fact;
import lanewarden.journal.Flood;

/**
 * Keeps a flood of refused lines from filling the ledger: of those that come within a second, a few
 * are written as they are, the next with the note that counting begins, and the rest in one entry
 * that says how many they were, with a sample of their bytes. Immutable, since what could not be
 * written is tried again.
 *
 * @param first the line with which the second began, if there was one
 * @param seen how many came within it
 * @param counted those that are not written yet
 */
record RefusedFlood(Optional<Fact.LineRefused> first, int seen, Optional<Counted> counted) {

  /** Bytes that are kept of those only counted. */
  static final int SAMPLE = 200;

  /**
   * Lines that were only counted.
   *
   * @param last the one that came last
   * @param sample the first bytes of all, base64
   */
  record Counted(Fact.LineRefused last, long lines, long bytes, String sample) {

    private static Counted none(Fact.LineRefused before) {
      return new Counted(before, 0, 0, "");
    }

    private Counted and(Fact.LineRefused line) {
      byte[] raw = Base64.getDecoder().decode(line.raw());
      ByteArrayOutputStream kept = new ByteArrayOutputStream(SAMPLE);
      kept.writeBytes(Base64.getDecoder().decode(sample));
      kept.write(raw, 0, Math.min(raw.length, SAMPLE - kept.size()));
      return new Counted(
          line,
          lines + 1,
          bytes + raw.length,
          Base64.getEncoder().encodeToString(kept.toByteArray()));
    }

    private Fact entry() {
      return new Fact.LineRefused(
          last.check(),
          sample,
          Flood.REASON,
          lines
              + (lines == 1 ? " further line" : " further lines")
              + " of "
              + bytes
              + " bytes in all came within a second and were refused, the last as \""
              + last.reason()
              + "\". They are counted and not written one by one; the bytes here are the first of"
              + " them. Set the instrument to send one line a shot, or wait until its memory is"
              + " out.",
          last.source(),
          last.instrument(),
          last.at());
    }
  }

  /** What to write now, and how it stands once that is written. */
  record Step(RefusedFlood next, List<Fact> facts) {}

  /** Nothing was refused yet. */
  static RefusedFlood none() {
    return new RefusedFlood(Optional.empty(), 0, Optional.empty());
  }

  /** A line is refused. */
  Step take(Fact.LineRefused line) {
    if (!isWithin(line)) {
      List<Fact> facts = new ArrayList<>(settled().facts());
      facts.add(line);
      return new Step(new RefusedFlood(Optional.of(line), 1, Optional.empty()), facts);
    }
    if (seen <= Flood.MOST) {
      Fact written = seen < Flood.MOST ? line : announcing(line);
      return new Step(new RefusedFlood(first, seen + 1, counted), List.of(written));
    }
    Counted more = counted.orElseGet(() -> Counted.none(line)).and(line);
    return new Step(new RefusedFlood(first, seen, Optional.of(more)), List.of());
  }

  /** Something else is to be written: what was counted is told before it. */
  Step settled() {
    return new Step(
        new RefusedFlood(first, seen, Optional.empty()),
        counted.map(Counted::entry).stream().toList());
  }

  private boolean isWithin(Fact.LineRefused line) {
    if (first.isEmpty()) {
      return false;
    }
    Instant since = first.get().at();
    return Objects.equals(first.get().check(), line.check())
        && !line.at().isBefore(since)
        && line.at().isBefore(since.plus(Flood.SECOND));
  }

  private static Fact announcing(Fact.LineRefused line) {
    return new Fact.LineRefused(
        line.check(),
        line.raw(),
        line.reason(),
        line.words()
            + " More than "
            + Flood.MOST
            + " lines were refused within a second: what else is refused within it is counted, and"
            + " told in one entry.",
        line.source(),
        line.instrument(),
        line.at());
  }
}
