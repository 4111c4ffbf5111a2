package lanewarden.kiosk.look;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.stream.Stream;
import lanewarden.chronograph.Reason;
import lanewarden.journal.Occasion;
import lanewarden.journal.Untimely;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What is signed in a word or two, and times, in the words of the screens. */
class WordingTest {
  @ParameterizedTest
  @EnumSource(Occasion.class)
  void inEnglishAnOccasionReadsAsItIsSignedAndInGermanNot(Occasion occasion) {
    Texts english = Texts.in(Language.ENGLISH);
    Texts german = Texts.in(Language.GERMAN);
    assertEquals(occasion.word(), Wording.occasion(occasion.word(), english));
    assertNotEquals(occasion.word(), Wording.occasion(occasion.word(), german));
    assertEquals("as an older version said", Wording.occasion("as an older version said", german));
  }

  private static String written(String at, ZoneId zone) {
    return Wording.clock(zone).format(Instant.parse(at));
  }

  @Test
  void everyTimeSaysHowFarItsClockIsFromUtc() {
    ZoneId paris = ZoneId.of("Europe/Paris");
    assertEquals("2026-05-02 11:30:05 UTC+02:00", written("2026-05-02T09:30:05Z", paris));
    assertEquals("2026-12-02 10:30:05 UTC+01:00", written("2026-12-02T09:30:05Z", paris));
    assertEquals(
        "2026-05-02 06:00:05 UTC-03:30",
        written("2026-05-02T09:30:05Z", ZoneOffset.ofHoursMinutes(-3, -30)));
    assertEquals("2026-05-02 09:30:05 UTC", written("2026-05-02T09:30:05Z", ZoneOffset.UTC));
  }

  @Test
  void inEnglishWhyALineIsRefusedReadsAsItIsSignedAndInGermanNot() {
    Texts english = Texts.in(Language.ENGLISH);
    Texts german = Texts.in(Language.GERMAN);
    Stream.concat(
            Arrays.stream(Reason.values()).map(Reason::word),
            Arrays.stream(Untimely.values()).map(Untimely::word))
        .forEach(
            signed -> {
              assertEquals(signed, RefusalWording.of(signed, english));
              assertNotEquals(signed, RefusalWording.of(signed, german));
            });
    assertEquals("as an older version said", RefusalWording.of("as an older version said", german));
  }
}
