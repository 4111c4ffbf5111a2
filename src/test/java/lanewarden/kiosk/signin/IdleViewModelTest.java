package lanewarden.kiosk.signin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Optional;
import lanewarden.kiosk.look.Language;
import lanewarden.kiosk.look.Texts;
import org.junit.jupiter.api.Test;

/** The seconds until an official who does nothing is signed out. */
class IdleViewModelTest {
  private Instant now = Instant.parse("2026-05-30T12:00:00Z");

  private final IdleViewModel model =
      new IdleViewModel(
          new Clock() {
            @Override
            public ZoneId getZone() {
              return ZoneOffset.UTC;
            }

            @Override
            public Clock withZone(ZoneId zone) {
              return this;
            }

            @Override
            public Instant instant() {
              return now;
            }
          },
          Texts.in(Language.ENGLISH));

  private void pass(int seconds) {
    now = now.plusSeconds(seconds);
    model.tick();
  }

  private String words() {
    return model.words().get().orElse("");
  }

  @Test
  void nothingIsSaidUntilTheLastMinuteAndThenEverySecond() {
    model.take("Wanda", Optional.of(Duration.ofMinutes(10)));
    pass(9 * 60);
    assertEquals("", words());
    pass(15);
    assertTrue(words().contains("Wanda is signed out in 45 s"), words());
    pass(1);
    assertTrue(words().contains("in 44 s"), words());
    pass(100);
    assertTrue(words().contains("in 0 s"), words());
  }

  @Test
  void anActPutsItAway() {
    model.take("Wanda", Optional.of(Duration.ofSeconds(20)));
    assertTrue(words().contains("in 20 s"), words());
    model.take("Wanda", Optional.of(Duration.ofMinutes(10)));
    assertEquals("", words());
  }

  @Test
  void whereThereIsNoLimitNothingIsSaid() {
    model.take("Wanda", Optional.empty());
    pass(100_000);
    assertEquals("", words());
  }
}
