package lanewarden.chronograph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.MethodSource;

/** Any bytes under any line rule: the same frames however they are cut, and every byte in one. */
class FramerFuzzTest {
  private static final int HEAD = 4;
  private static final byte[][] TERMINATORS = {
    {'\r', '\n'}, {'\n'}, {'a', 'a', 'b'}, {'a', 'b', 'a', 'b'}
  };

  /** Which terminator, the longest line, the sizes of the chunks, then the bytes. */
  static Stream<byte[]> streams() {
    return Stream.of(
            "\u0000\u0008\u0001.300.1\r\n298.7\r\nxxxxxxxxxxxxxxxxxxxxxx\r\n",
            "\u0001\u0003\u0005.300\n4\n55555\n\n",
            "\u0002\u0004\u0002.aaab" + "a".repeat(700) + "baab",
            "\u0003\u0006\u0003.ababab" + "ab".repeat(300) + "cababababab")
        .map(text -> RawBytes.ofText(text).bytes());
  }

  @MethodSource("streams")
  @FuzzTest
  void framer(byte[] bytes) {
    if (bytes.length <= HEAD) {
      return;
    }
    RawBytes terminator = RawBytes.of(TERMINATORS[bytes[0] & 3]);
    int longest = 1 + (bytes[1] & 0x3F);
    LineRule rule =
        new LineRule(terminator, longest, Duration.ofMillis(250), Duration.ofMillis(300));
    byte[] stream = Arrays.copyOfRange(bytes, HEAD, bytes.length);
    List<Frame> whole = frames(rule, stream, stream.length);
    assertEquals(whole, frames(rule, stream, 1 + (bytes[2] & 0x1F)));
    // An endless line is the only one of which bytes are not kept, and it says how many
    int kept = whole.stream().mapToInt(frame -> frame.bytes().length()).sum();
    assertEquals(stream.length, kept + notKept(whole));
    for (Frame frame : whole) {
      fits(frame, terminator, longest);
    }
  }

  private static List<Frame> frames(LineRule rule, byte[] stream, int chunk) {
    Framer framer = new Framer(rule);
    framer.opened(0);
    List<Frame> frames = new ArrayList<>();
    for (int from = 0; from < stream.length; from += chunk) {
      int to = Math.min(stream.length, from + chunk);
      frames.addAll(framer.feed(RawBytes.of(Arrays.copyOfRange(stream, from, to)), 1));
    }
    frames.addAll(framer.lost());
    return frames;
  }

  private static void fits(Frame frame, RawBytes terminator, int longest) {
    String text = frame.bytes().characters();
    String end = terminator.characters();
    int first = text.indexOf(end);
    if (frame instanceof Frame.Line) {
      assertEquals(text.length() - end.length(), first, "one terminator, at the end");
      assertTrue(first <= longest, text);
    } else if (frame instanceof Frame.Torn) {
      assertEquals(-1, first, "a line with its end is not torn");
    }
  }

  private static long notKept(List<Frame> frames) {
    return frames.stream()
        .filter(Frame.Overlong.class::isInstance)
        .mapToLong(frame -> WireScript.notKept(((Frame.Overlong) frame).words()))
        .sum();
  }
}
