package lanewarden.station;

import static lanewarden.station.PracticeLine.codeOf;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import lanewarden.ledger.KeyFile;
import lanewarden.ledger.SigningKey;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** After five wrong passphrases in a row a key waits, longer each time. */
class KeyLockTest {
  private static final Instant NOON = Instant.parse("2026-05-30T12:00:00Z");

  @TempDir Path here;
  private Path file;

  @BeforeEach
  void seal() throws Exception {
    file = here.resolve("ash.key");
    SigningKey key = SigningKey.generate(new SecureRandom());
    KeyFile.seal(file, key, "Ash", "right words".toCharArray(), new SecureRandom());
  }

  /** A program that is started anew each time. */
  private String tried(Duration since, String passphrase) {
    Clock clock = Clock.fixed(NOON.plus(since), ZoneOffset.UTC);
    char[] typed = passphrase.toCharArray();
    String code = codeOf(() -> new KeyLock(file, clock).open(typed));
    assertEquals("\0".repeat(typed.length), new String(typed));
    return code;
  }

  private void opens(Duration since) throws Exception {
    Clock clock = Clock.fixed(NOON.plus(since), ZoneOffset.UTC);
    new KeyLock(file, clock).open("right words".toCharArray());
  }

  private void fiveWrong() {
    for (int i = 0; i < 5; i++) {
      assertEquals("KEY-PASSPHRASE", tried(Duration.ZERO, "wrong words"));
    }
  }

  @Test
  void fourWrongOnesCostNothingAndTheRightOneStartsTheCountAnew() throws Exception {
    for (int round = 0; round < 2; round++) {
      for (int i = 0; i < 4; i++) {
        assertEquals("KEY-PASSPHRASE", tried(Duration.ZERO, "wrong words"));
      }
      opens(Duration.ZERO);
      try (var files = Files.list(here)) {
        assertEquals(List.of(file), files.toList());
      }
    }
  }

  @Test
  void fiveWrongOnesCostHalfAMinuteEvenForTheRightOneAndAfterARestart() throws Exception {
    fiveWrong();
    assertEquals("KEY-WAIT", tried(Duration.ofSeconds(29), "right words"));
    StationException told =
        assertThrows(
            StationException.class,
            () ->
                new KeyLock(file, Clock.fixed(NOON.plusSeconds(10), ZoneOffset.UTC))
                    .open("right words".toCharArray()));
    assertTrue(told.trouble().why().contains("5 times in a row"), told.trouble().why());
    assertTrue(told.trouble().why().contains("another 20 s"), told.trouble().why());
    opens(Duration.ofSeconds(30));
  }

  @Test
  void theFifthWrongOneSaysAtOnceHowLongTheNextTryHasToWait() {
    fiveWrong();
    StationException sixth =
        assertThrows(
            StationException.class,
            () ->
                new KeyLock(file, Clock.fixed(NOON.plusSeconds(30), ZoneOffset.UTC))
                    .open("wrong words".toCharArray()));
    assertEquals("KEY-PASSPHRASE", sixth.trouble().code());
    assertEquals(Optional.of(Duration.ofMinutes(1)), sixth.trouble().pause());
    assertTrue(sixth.trouble().why().contains("none is tried for 60 s"), sixth.trouble().why());
  }

  @Test
  void eachFurtherOneDoublesTheWaitUpToAQuarterOfAnHour() throws Exception {
    fiveWrong();
    Duration now = Duration.ZERO;
    for (int wait : new int[] {30, 60, 120, 240, 480, 900, 900}) {
      assertEquals("KEY-WAIT", tried(now.plusSeconds(wait - 1), "right words"));
      now = now.plusSeconds(wait);
      assertEquals("KEY-PASSPHRASE", tried(now, "wrong words"));
    }
    opens(now.plusSeconds(900));
  }

  @Test
  void aClockThatIsSetBackDoesNotLockTheKeyForHours() throws Exception {
    fiveWrong();
    Duration back = Duration.ofHours(-3);
    assertEquals("KEY-WAIT", tried(back, "right words"));
    opens(back.plusSeconds(30));
  }

  @Test
  void whateverIsInTheFileBesideCountsAsFiveWrong() throws Exception {
    Files.writeString(here.resolve("ash.key.wrong"), "none at all");
    assertEquals("KEY-WAIT", tried(Duration.ZERO, "right words"));
  }

  @Test
  void aDamagedKeyIsNoWrongPassphrase() throws Exception {
    Files.writeString(file, "damaged");
    for (int i = 0; i < 7; i++) {
      assertEquals("KEY-DAMAGED", tried(Duration.ZERO, "right words"));
    }
    assertFalse(Files.readString(here.resolve("ash.key.wrong")).startsWith("5"));
  }
}
