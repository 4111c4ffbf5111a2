package lanewarden.chronograph;

import static lanewarden.chronograph.Profiles.MILLI;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FramerTest {
  private static final Duration SILENCE = Duration.ofMillis(250);
  private static final Duration QUIET = Duration.ofMillis(300);

  private static LineRule rule(String terminator, int longest) {
    return new LineRule(RawBytes.ofText(terminator), longest, SILENCE, QUIET);
  }

  private static Framer quietly(LineRule rule) {
    Framer framer = new Framer(rule);
    framer.opened(-1_000 * MILLI);
    framer.idle(0);
    return framer;
  }

  private static List<Frame> feed(Framer framer, String text, long millis) {
    return framer.feed(RawBytes.ofText(text), millis * MILLI);
  }

  private static Frame.Line line(String text) {
    return new Frame.Line(RawBytes.ofText(text), false);
  }

  @Test
  void aLineEndsAtItsTerminatorAndKeepsIt() {
    Framer framer = quietly(rule("\r\n", 10));
    assertEquals(List.of(line("ab\r\n"), line("\r\n")), feed(framer, "ab\r\n\r\nc", 0));
    assertEquals(List.of(line("cd\r\n")), feed(framer, "d\r\n", 1));
  }

  @Test
  void aCarriageReturnAloneDoesNotEndALineThatNeedsBoth() {
    Framer framer = quietly(rule("\r\n", 10));
    assertEquals(List.of(line("a\rb\r\r\n")), feed(framer, "a\rb\r\r\n", 0));
  }

  @ParameterizedTest
  @ValueSource(strings = {"\r\n", "\n", "\r", "\r\n\r\n", "#"})
  void givesTheSameFramesForEveryChunking(String terminator) {
    Random random = new Random(20260502);
    for (int round = 0; round < 300; round++) {
      byte[] stream = stream(random, terminator);
      List<Frame> whole = quietly(rule(terminator, 12)).feed(RawBytes.of(stream), 0);
      Framer framer = quietly(rule(terminator, 12));
      List<Frame> pieces = new ArrayList<>();
      int at = 0;
      while (at < stream.length) {
        int size = Math.min(stream.length - at, 1 + random.nextInt(1 + random.nextInt(40)));
        byte[] chunk = new byte[size];
        System.arraycopy(stream, at, chunk, 0, size);
        pieces.addAll(framer.feed(RawBytes.of(chunk), at * 1_000L));
        at += size;
      }
      assertEquals(whole, pieces, RawBytes.of(stream).escaped());
    }
  }

  @Test
  void noByteGetsLostBetweenFramesAsLongAsLinesEnd() {
    Random random = new Random(3);
    for (int round = 0; round < 300; round++) {
      byte[] stream = stream(random, "\r\n");
      Framer framer = quietly(rule("\r\n", 12));
      List<Frame> frames = new ArrayList<>(framer.feed(RawBytes.of(stream), 0));
      frames.addAll(framer.lost());
      ByteArrayOutputStream joined = new ByteArrayOutputStream();
      frames.forEach(frame -> joined.writeBytes(frame.bytes().bytes()));
      assertEquals(RawBytes.of(stream), RawBytes.of(joined.toByteArray()));
    }
  }

  /** Short and overlong pieces, whole and broken terminators, in random order; below 500 bytes. */
  private static byte[] stream(Random random, String terminator) {
    StringBuilder text = new StringBuilder();
    while (text.length() < 200) {
      text.append("x".repeat(random.nextInt(random.nextInt(5) == 0 ? 60 : 14)));
      text.append(terminator, 0, 1 + random.nextInt(terminator.length()));
    }
    return text.toString().getBytes(java.nio.charset.StandardCharsets.US_ASCII);
  }

  @Test
  void aLineOfTheGreatestLengthIsALineAndOneByteMoreIsOverlong() {
    Framer framer = quietly(rule("\r\n", 4));
    List<Frame> frames = feed(framer, "abcd\r\nabcde\r\nab\r\n", 0);
    assertEquals(line("abcd\r\n"), frames.get(0));
    assertTrue(frames.get(1) instanceof Frame.Overlong);
    assertEquals(RawBytes.ofText("abcde\r\n"), frames.get(1).bytes());
    assertEquals(line("ab\r\n"), frames.get(2), "in step again after the terminator");
  }

  @Test
  void aLineWithoutEndShowsItsFirstAndItsLastBytesInBoundedMemory() {
    Framer framer = quietly(rule("\n", 4));
    List<Frame> frames = new ArrayList<>(feed(framer, "first", 0));
    for (int i = 0; i < 10_000; i++) {
      frames.addAll(feed(framer, "0123456789", 0));
    }
    assertEquals(1, frames.size(), "told at once, and once");
    assertTrue(frames.get(0).bytes().escaped().startsWith("first0123"));
    assertTrue(frames.get(0).bytes().length() < 300);
    frames = feed(framer, "last\nab\n", 0);
    assertTrue(frames.get(0) instanceof Frame.Overlong);
    assertTrue(frames.get(0).bytes().escaped().endsWith("789last\\n"));
    assertTrue(frames.get(0).bytes().length() < 300);
    assertEquals(line("ab\n"), frames.get(1));
  }

  @Test
  void halfALineThenSilenceIsTornAndWhatFollowsMayBeItsTail() {
    Framer framer = quietly(rule("\n", 10));
    feed(framer, "ab", 0);
    assertEquals(List.of(), framer.idle(249 * MILLI));
    List<Frame> torn = framer.idle(250 * MILLI);
    assertTrue(torn.get(0) instanceof Frame.Torn);
    assertEquals(RawBytes.ofText("ab"), torn.get(0).bytes());
    assertEquals(
        List.of(new Frame.Line(RawBytes.ofText("cd\n"), true), line("ef\n")),
        feed(framer, "cd\nef\n", 300));
  }

  @Test
  void silenceIsSeenAtTheNextChunkToo() {
    Framer framer = quietly(rule("\n", 10));
    feed(framer, "ab", 0);
    List<Frame> frames = feed(framer, "cd\n", 400);
    assertTrue(frames.get(0) instanceof Frame.Torn);
    assertEquals(new Frame.Line(RawBytes.ofText("cd\n"), true), frames.get(1));
  }

  @Test
  void silenceEndsAnOverlongLineAsOverlong() {
    Framer framer = quietly(rule("\n", 2));
    feed(framer, "abcdef", 0);
    assertTrue(framer.idle(300 * MILLI).get(0) instanceof Frame.Overlong);
  }

  @Test
  void aPartialLineAtTheLossOfTheLinkIsTornAndNeverGluedToTheNext() {
    Framer framer = quietly(rule("\n", 10));
    feed(framer, "ab", 0);
    assertEquals(RawBytes.ofText("ab"), framer.lost().get(0).bytes());
    framer.opened(10 * MILLI);
    assertEquals(List.of(new Frame.Line(RawBytes.ofText("cd\n"), true)), feed(framer, "cd\n", 11));
  }

  @Test
  void theFirstLineAfterOpeningIsKnownWholeOnlyAfterQuietThatWasSeen() {
    Framer framer = new Framer(rule("\n", 10));
    framer.opened(0);
    framer.idle(300 * MILLI);
    assertEquals(List.of(line("ab\n")), feed(framer, "ab\n", 301));

    framer.opened(1_000 * MILLI);
    framer.idle(1_299 * MILLI);
    // Late, but nobody looked in between: the bytes may have waited since the opening
    assertEquals(
        List.of(new Frame.Line(RawBytes.ofText("ab\n"), true)), feed(framer, "ab\n", 1_900));
  }

  @Test
  void quietAfterTheFirstByteProvesNothing() {
    Framer framer = new Framer(rule("\n", 10));
    framer.opened(0);
    feed(framer, "ab", 1);
    framer.idle(900 * MILLI);
    assertEquals(List.of(new Frame.Line(RawBytes.ofText("cd\n"), true)), feed(framer, "cd\n", 901));
  }
}
