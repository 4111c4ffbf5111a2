package lanewarden.chronograph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TypedEntryTest {
  private static final TypedEntry ENTRY =
      new TypedEntry(
          new SpeedRange(Speed.parse("60 ft/s"), Speed.parse("500 ft/s")), Profiles.CLOCK);

  private static Signal read(String text) {
    return ENTRY.read(text, SpeedUnit.FEET_PER_SECOND);
  }

  @ParameterizedTest
  @CsvSource({
    "300.1, 300.1 ft/s",
    "300, 300 ft/s",
    "' 299.80 ', 299.80 ft/s",
    "300.1 ft/s, 300.1 ft/s",
    "300.1fps, 300.1 ft/s",
    "91.44 m/s, 91.44 m/s"
  })
  void readsANumberWithOrWithoutUnit(String text, String speed) {
    assertEquals(
        speed, read(text) instanceof Signal.Heard h ? h.reading().speed().toString() : "refused");
  }

  @Test
  void marksTheReadingAsTypedAndKeepsWhatWasTyped() {
    assertEquals(
        new Signal.Heard(
            new Reading(
                Speed.parse("300.1 ft/s"),
                RawBytes.ofText(" 300.1"),
                Source.TYPED,
                "Typed by the official",
                Profiles.NOON,
                null)),
        read(" 300.1"));
  }

  @Test
  void takesTheUnitOfTheRuleWhereNoneIsTyped() {
    assertTrue(
        ENTRY.read("91.44", SpeedUnit.METRES_PER_SECOND) instanceof Signal.Heard h
            && h.reading().speed().equals(Speed.parse("91.44 m/s")));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // 60 ft/s is 18.288 m/s and 500 ft/s is 152.4 m/s, by hand from 1 ft = 0.3048 m
        "371 | METRES_PER_SECOND | Without a unit, 371 is read as 371 m/s, as the rule speaks; no"
            + " arrow flies at that speed (plausible: 18.3 m/s to 152.4 m/s). If the display says"
            + " 371 ft/s, type: 371 ft/s",
        "55.5 | FEET_PER_SECOND | Without a unit, 55.5 is read as 55.5 ft/s, as the rule speaks; no"
            + " arrow flies at that speed (plausible: 60 ft/s to 500 ft/s). If the display says"
            + " 55.5 m/s, type: 55.5 m/s",
        "3710 | METRES_PER_SECOND | Without a unit, 3710 is read as 3710 m/s, as the rule speaks;"
            + " no arrow flies at that speed (plausible: 18.3 m/s to 152.4 m/s). Look at the"
            + " display again."
      })
  void saysWhichUnitItTookAndWhichTheDisplayMayHaveMeant(
      String text, SpeedUnit unit, String words) {
    assertEquals(words, ((Signal.Refused) ENTRY.read(text, unit)).refusal().words());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "300,1 | PATTERN | not a comma",
        "NaN | NOT_A_NUMBER | no number",
        "9.91E37 | NOT_A_NUMBER | no number",
        "9.9E37 | OUT_OF_RANGE | plausible: 60 ft/s to 500 ft/s",
        "inf | OUT_OF_RANGE | plausible",
        "-300 | OUT_OF_RANGE | plausible",
        "0 | OUT_OF_RANGE | plausible",
        "59.9 | OUT_OF_RANGE | plausible",
        "300 m/s | OUT_OF_RANGE | plausible",
        "300 km/h | UNIT | Type ft/s or m/s",
        "300.1.2 | NOT_A_NUMBER | no number",
        "fast | PATTERN | Type a number",
        "'' | PATTERN | Type a number",
        "٣٠٠ | PATTERN | Type a number",
        "300.11111111111111111111111111111111111111111 | OVERLONG | too long"
      })
  void refusesWhatIsNoSpeedAndSaysWhatToType(String text, Reason reason, String words) {
    Signal signal = read(text);
    Refusal refusal = ((Signal.Refused) signal).refusal();
    assertEquals(reason, refusal.reason());
    assertTrue(refusal.words().contains(words), refusal.words());
    assertEquals(Source.TYPED, refusal.source());
    assertEquals(RawBytes.ofText(text), refusal.raw());
  }
}
