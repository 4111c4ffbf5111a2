package lanewarden.chronograph;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Cuts a stream of bytes into lines, and says of every byte that is in no line why.
 *
 * <p>Gives the same frames for every way the same bytes are cut into chunks, as long as no chunk is
 * later than {@link LineRule#silence} after the one before. Memory is bounded: of a line that never
 * ends, the first and the last bytes are kept. Times are monotonic nanoseconds. For one thread.
 */
final class Framer {
  /** How many bytes of an overlong line are kept beyond the longest line, to be shown. */
  private static final int OVERHANG = 256;

  private enum Growth {
    FITTING,
    OVERLONG,
    ENDLESS
  }

  private final LineRule rule;
  private final byte[] terminator;
  private final byte[] kept;
  private int length;
  private Growth growth = Growth.FITTING;
  private long dropped;
  private boolean joinedMidway = true;
  private boolean untouched = true;
  private long openedAt;
  private long lastByteAt;

  Framer(LineRule rule) {
    this.rule = rule;
    this.terminator = rule.terminator().bytes();
    this.kept = new byte[rule.longest() + terminator.length + OVERHANG];
  }

  /** The port was opened: the next byte may come from the middle of a line. */
  void opened(long nanos) {
    startLine(true);
    untouched = true;
    openedAt = nanos;
  }

  /** Takes the next bytes off the wire. */
  List<Frame> feed(RawBytes chunk, long nanos) {
    List<Frame> frames = new ArrayList<>();
    if (chunk.length() == 0) {
      return frames;
    }
    tearAfterSilence(nanos, frames);
    untouched = false;
    lastByteAt = nanos;
    byte[] bytes = chunk.bytes();
    int at = 0;
    while (at < bytes.length) {
      int end = length == 0 && growth == Growth.FITTING ? endOfLine(bytes, at) : at;
      if (end > at) {
        frames.add(new Frame.Line(RawBytes.of(bytes, at, end), joinedMidway));
        startLine(false);
        at = end;
      } else {
        take(bytes[at], frames);
        at++;
      }
    }
    return frames;
  }

  /**
   * Nothing was there to read at this time. Only this proves quiet after opening: the mere time of
   * the first chunk would not, because a busy machine can fetch early bytes late.
   */
  List<Frame> idle(long nanos) {
    List<Frame> frames = new ArrayList<>();
    if (untouched && nanos - openedAt >= rule.quiet().toNanos()) {
      joinedMidway = false;
    }
    tearAfterSilence(nanos, frames);
    return frames;
  }

  /** The link is gone: what has no end will never get one. */
  List<Frame> lost() {
    List<Frame> frames = new ArrayList<>();
    cutOff("The link ended in the middle of this line.", frames);
    untouched = false;
    return frames;
  }

  private void tearAfterSilence(long nanos, List<Frame> frames) {
    if (nanos - lastByteAt >= rule.silence().toNanos()) {
      cutOff(
          "The line stopped midway and nothing came for "
              + rule.silence().toMillis()
              + " ms. Check the cable, then shoot again.",
          frames);
    }
  }

  /** Ends an unfinished line; whatever follows up to the next terminator may be its tail. */
  private void cutOff(String words, List<Frame> frames) {
    if (length > 0) {
      frames.add(growth == Growth.FITTING ? new Frame.Torn(taken(length), words) : overlong());
      startLine(true);
    } else if (growth == Growth.ENDLESS) {
      startLine(true);
    }
  }

  /**
   * Where a line that begins here ends, if all of it is in this chunk and it is not too long; else
   * here. The short way for the lines that are as they should be: what it leaves goes byte by byte.
   */
  private int endOfLine(byte[] bytes, int from) {
    int count = terminator.length;
    byte last = terminator[count - 1];
    int until = Math.min(bytes.length, from + rule.longest() + count);
    for (int i = from + count - 1; i < until; i++) {
      if (bytes[i] == last && Arrays.equals(bytes, i + 1 - count, i + 1, terminator, 0, count)) {
        return i + 1;
      }
    }
    return from;
  }

  private void take(byte next, List<Frame> frames) {
    kept[length] = next;
    length++;
    int ending = terminatorAtEnd();
    if (ending == terminator.length) {
      frames.add(
          growth == Growth.FITTING ? new Frame.Line(taken(length), joinedMidway) : overlong());
      startLine(false);
    } else if (growth == Growth.FITTING && length - ending > rule.longest()) {
      growth = Growth.OVERLONG;
    } else if (length == kept.length) {
      makeRoom(ending, frames);
    }
  }

  /** The line outgrew its memory: its first part goes out once, then only its last part is kept. */
  private void makeRoom(int ending, List<Frame> frames) {
    int shed = growth == Growth.OVERLONG ? length - ending : length / 2;
    if (growth == Growth.OVERLONG) {
      frames.add(
          new Frame.Overlong(
              taken(shed), longerThanAllowed() + " These are its first bytes; more follow."));
      growth = Growth.ENDLESS;
    } else {
      dropped += shed;
    }
    System.arraycopy(kept, shed, kept, 0, length - shed);
    length -= shed;
  }

  private Frame overlong() {
    String part =
        growth == Growth.OVERLONG
            ? " It is refused whole."
            : " These are its last bytes; " + dropped + " in between were not kept.";
    return new Frame.Overlong(taken(length), longerThanAllowed() + part);
  }

  private String longerThanAllowed() {
    return "The line is longer than the "
        + rule.longest()
        + " bytes this instrument may send: check baud rate and profile.";
  }

  /** How many bytes at the end are the beginning of a terminator, or all of it. */
  private int terminatorAtEnd() {
    for (int count = Math.min(terminator.length, length); count > 0; count--) {
      if (Arrays.equals(kept, length - count, length, terminator, 0, count)) {
        return count;
      }
    }
    return 0;
  }

  private RawBytes taken(int count) {
    return RawBytes.of(kept, 0, count);
  }

  private void startLine(boolean midway) {
    length = 0;
    dropped = 0;
    growth = Growth.FITTING;
    joinedMidway = midway;
  }
}
