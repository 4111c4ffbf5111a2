package lanewarden.station;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayDeque;
import java.util.Base64;
import java.util.Deque;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import lanewarden.chronograph.Capture;
import lanewarden.chronograph.RawBytes;
import lanewarden.journal.Check;
import lanewarden.journal.Fact;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;
import org.jspecify.annotations.Nullable;

/**
 * One competitor at the line of a rehearsal: what comes from the arrows of one check.
 *
 * <p>With a section of the capture, its bytes; a reading declared void after the last of them is
 * shot once more. Without one, arrows near the limit, the same ones each time. For one thread.
 */
final class Archer {

  /** How long an archer without a capture takes for an arrow, in milliseconds. */
  static final int DRAWING = 5_000;

  /** The middle and the spread of invented speeds, as shares of the fastest allowed. */
  private static final double MIDDLE = 0.975;

  /** What is shot where nothing says how fast. */
  static final Speed ORDINARY = Speed.of("240", SpeedUnit.FEET_PER_SECOND);

  private static final double SPREAD = 0.012;

  /** What comes next. */
  sealed interface Next {
    /** How long after what came before, in milliseconds. */
    int afterMillis();

    /** Bytes as they were captured. */
    record Bytes(int afterMillis, RawBytes bytes) implements Next {}

    /** An arrow of this speed. */
    record Arrow(int afterMillis, Speed speed) implements Next {}
  }

  private final boolean captured;
  private final Deque<Capture.Chunk> rest;
  private final Random invented;
  private long voidsAnswered;
  private @Nullable Next pending;

  private Archer(boolean captured, Deque<Capture.Chunk> rest, Random invented, long voids) {
    this.captured = captured;
    this.rest = rest;
    this.invented = invented;
    this.voidsAnswered = voids;
  }

  /** Which check of the archer it is: its attempt, or that it is a recheck of a protest. */
  private static Object which(Check check) {
    Long protest = check.opened().protest();
    return protest == null ? check.opened().attempt() : "recheck-" + protest;
  }

  /** The archer of a check, who goes on where the check stands. */
  static Archer of(Check check, Optional<Capture> capture) {
    Fact.CheckOpened opened = check.opened();
    Random invented = new Random(Objects.hash(opened.bib(), which(check), check.shots().size()));
    String label = which(check).equals(1) ? opened.bib() : opened.bib() + "/" + which(check);
    Optional<Capture> section =
        capture.filter(c -> c.labels().contains(label)).map(c -> c.section(label));
    return new Archer(
        section.isPresent(),
        section.map(s -> after(s.chunks(), check)).orElseGet(ArrayDeque::new),
        invented,
        voids(check));
  }

  /** The chunks behind the last one that the ledger shows something of. */
  private static Deque<Capture.Chunk> after(List<Capture.Chunk> chunks, Check check) {
    StringBuilder wire = new StringBuilder();
    chunks.forEach(chunk -> wire.append(characters(chunk.bytes().bytes())));
    int seenUpTo =
        Math.max(
            end(wire, check.shots().stream().map(s -> s.reading().raw()).toList()),
            end(wire, check.refused().stream().map(Fact.LineRefused::raw).toList()));
    Deque<Capture.Chunk> rest = new ArrayDeque<>();
    int position = 0;
    for (Capture.Chunk chunk : chunks) {
      position += chunk.bytes().length();
      if (position > seenUpTo) {
        rest.add(chunk);
      }
    }
    return rest;
  }

  /** Where the last of these lines, in base64, ends on the wire. */
  private static int end(StringBuilder wire, List<String> lines) {
    int end = 0;
    for (String line : lines) {
      String raw = characters(Base64.getDecoder().decode(line));
      int at = wire.indexOf(raw, end);
      end = at < 0 ? end : at + raw.length();
    }
    return end;
  }

  private static String characters(byte[] bytes) {
    return new String(bytes, ISO_8859_1);
  }

  private static long voids(Check check) {
    return check.shots().stream().filter(s -> !s.stands()).count();
  }

  /** What comes next, if anything does; the same when asked again, until it came. */
  Optional<Next> next(CheckView view) {
    if (pending == null) {
      pending = coming(view);
    }
    return Optional.ofNullable(pending);
  }

  private @Nullable Next coming(CheckView view) {
    Capture.Chunk chunk = rest.peek();
    if (chunk != null) {
      return new Next.Bytes(chunk.afterMillis(), chunk.bytes());
    }
    boolean waitsForOfficial = captured && voids(view.check()) <= voidsAnswered;
    return waitsForOfficial ? null : new Next.Arrow(DRAWING, speed(middle(view)));
  }

  /** It came. */
  void came(CheckView view) {
    voidsAnswered = rest.poll() == null ? voidsAnswered + 1 : voids(view.check());
    pending = null;
  }

  /** What the invented arrows fly about: the limit, or an ordinary speed where there is none. */
  private static Speed middle(CheckView view) {
    return view.fastest().orElse(ORDINARY);
  }

  private Speed speed(Speed allowed) {
    double share = MIDDLE + SPREAD * invented.nextGaussian();
    return Speed.of(
        allowed.value().multiply(BigDecimal.valueOf(share)).setScale(1, RoundingMode.HALF_EVEN),
        allowed.unit());
  }
}
