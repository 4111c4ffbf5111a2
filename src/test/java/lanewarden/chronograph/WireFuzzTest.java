package lanewarden.chronograph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Whatever comes over the wire and whenever: no reading that no good line carried, no byte without
 * a signal, and after any noise the next good line is heard. What a good line is, a second opinion
 * says. {@code DEVELOPERS.md} tells how to let it run for long.
 */
class WireFuzzTest {
  // Read once: a fuzzer asks ten thousands of times
  private static final SentenceProfile GATE_TIMER = Profiles.gateTimer();
  private static final SentenceProfile PLAIN_DECIMAL = Profiles.plainDecimal();
  private static final byte[] GOOD = event(WireScript.GOOD, 100, 1);

  private static byte[] event(byte kind, int a, int b) {
    return new byte[] {WireScript.EVENT, kind, (byte) a, (byte) b};
  }

  private static byte[] script(byte[]... parts) {
    RawBytes whole = RawBytes.ofText("");
    for (byte[] part : parts) {
      whole = whole.then(RawBytes.of(part));
    }
    // A last event is only one if bytes follow it
    return whole.then(RawBytes.ofText("....")).bytes();
  }

  static Stream<byte[]> scripts() {
    byte[] silence = event(WireScript.SILENCE, 200, 0);
    byte[] second = event(WireScript.GOOD, 90, 2);
    byte[] text = Profiles.good(7).bytes();
    return Stream.of(
        script(GOOD, second, text),
        script(GOOD, GOOD, event(WireScript.REPLUG, 0, 0), GOOD, second),
        script(GOOD, event(WireScript.FLIP, 20, 4), second),
        script(GOOD, event(WireScript.LOSE, 3, 0), event(WireScript.DOUBLE, 9, 0), second),
        script("$PLWT,0".getBytes(), silence, GOOD, silence, text),
        script(event(WireScript.QUIET_REPLUG, 0, 0), "300.1\r\n".getBytes(), silence, GOOD),
        script(
            event(WireScript.QUIET_REPLUG, 0, 0), "300.1\r".getBytes(), silence, "\n".getBytes()),
        script("x".repeat(900).getBytes(), event(WireScript.CHUNK, 0, 0), "\r\n".getBytes(), GOOD));
  }

  @MethodSource("scripts")
  @FuzzTest
  void gateTimer(byte[] bytes) {
    WireScript wire = new WireScript(GATE_TIMER);
    wire.play(bytes);
    String last = null;
    for (WireScript.Placed one : wire.readings()) {
      byte[] line = one.raw().bytes();
      Optional<String> carried = GateTimerJudge.speed(line);
      assertTrue(carried.isPresent(), () -> "not good: " + one);
      assertEquals(carried.get(), hundredths(WireScript.reading(one).speed()));
      last = GateTimerJudge.sequence(line);
    }
    int before = wire.readings().size();
    wire.send(RawBytes.ofText("\r\n"));
    assertEquals(before, wire.readings().size(), "a line that did not end is none");
    wire.send(Profiles.good("00042".equals(last) ? 43 : 42));
    assertEquals(before + 1, wire.readings().size(), "in step again");
  }

  @MethodSource("scripts")
  @FuzzTest
  void plainDecimal(byte[] bytes) {
    WireScript wire = new WireScript(PLAIN_DECIMAL);
    wire.play(bytes);
    for (WireScript.Placed one : wire.readings()) {
      String line = one.raw().characters();
      assertFalse(one.midway(), () -> "nothing proves it whole: " + one);
      assertTrue(line.matches("[0-9]{3}\\.[0-9]\r\n"), line);
      int tenths = Integer.parseInt(line.substring(0, 3) + line.charAt(4));
      assertTrue(tenths >= 600 && tenths <= 5_000, line);
      assertEquals(tenths + "0 F", hundredths(WireScript.reading(one).speed()));
    }
    int before = wire.readings().size();
    byte[] quiet = script(event(WireScript.SILENCE, 255, 0), event(WireScript.SILENCE, 255, 0));
    wire.play(quiet);
    wire.send(RawBytes.ofText("\r\n"));
    wire.play(quiet);
    wire.send(RawBytes.ofText("\r\n300.1\r\n"));
    assertEquals(before + 1, wire.readings().size(), "in step again");
  }

  static Stream<byte[]> lines() {
    return Stream.of(
            "PLWT,00042,0300.1,F,006664,A",
            "PLWT,00042,9.91E37,F,000000,A",
            "PLWT,00042,091.47,M,006664,A",
            "PLWT,00042,0300.1,F,006700,A",
            "PLWT,00042,0300.1,F,006664,W",
            "PLWT,00042,0030.1,F,066640,A")
        .map(covered -> Profiles.sentence(covered).bytes());
  }

  /** One line alone: the sentence hears it just when the second opinion finds it good. */
  @MethodSource("lines")
  @FuzzTest
  void sentence(byte[] bytes) {
    RawBytes line = RawBytes.of(bytes);
    Sentence.Outcome outcome = new Sentence(GATE_TIMER.form()).read(line.characters());
    Optional<String> carried = GateTimerJudge.speed(line.then(RawBytes.ofText("\r\n")).bytes());
    Optional<String> said =
        outcome instanceof Sentence.Said heard
            ? Optional.of(hundredths(heard.speed()))
            : Optional.empty();
    assertEquals(carried, said, () -> line.escaped());
    assertTrue(said.isPresent() || !((Sentence.Unfit) outcome).words().isBlank());
  }

  private static String hundredths(Speed speed) {
    String unit = speed.unit() == SpeedUnit.FEET_PER_SECOND ? " F" : " M";
    return speed.value().movePointRight(2).toBigIntegerExact() + unit;
  }

  @Test
  void theSecondOpinionKnowsGoodLinesFromBad() {
    List<Boolean> good = lines().map(line -> GateTimerJudge.speed(line).isPresent()).toList();
    assertEquals(List.of(true, false, true, false, false, false), good);
  }
}
