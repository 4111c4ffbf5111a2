package lanewarden.kiosk.rulebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Random;
import lanewarden.kiosk.look.Language;
import lanewarden.kiosk.look.Texts;
import lanewarden.station.RuleDraft;
import lanewarden.station.RuleKey;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever is typed, wherever: the studio goes on, and every field says what was typed in it. */
class AnyTypingTest {
  private static final int STEPS = 250;
  private static final List<String> TYPED =
      List.of(
          "",
          "none",
          "3",
          "0",
          "1",
          "2",
          "50",
          "-1",
          "3 %",
          "0 %",
          "100 %",
          "0.5 %",
          "300 ft/s",
          "0.01 ft/s",
          "3 ft/s",
          "30",
          "91.44 m/s",
          "999999 m/s",
          "2 ft/s",
          "down to 1 ft/s",
          "nearest 0.1 ft/s",
          "down to 500 ft/s",
          "5 gr/lb",
          "0.001 gr/lb",
          "400 gr/lb",
          "60 lbf",
          "1000 N",
          "165 J",
          "0.001 J",
          "80 ft·lbf",
          "up to 1 %: re-check",
          "up to 1 %: barred\nup" + " to 3 %: judge",
          "full draw",
          "2026-03-01",
          "soon",
          "\"",
          "#",
          "[x]",
          "\ud800",
          "instrument accuracy",
          "k of n",
          "a = 1");

  @TempDir Path folder;
  private final Deque<Runnable> work = new ArrayDeque<>();

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void nothingThatIsTypedStopsTheStudio(long seed) throws Exception {
    Random random = new Random(seed);
    Path file = Files.copy(Path.of("demo-data/rule-book.toml"), folder.resolve("rules.toml"));
    RuleBookViewModel book =
        new RuleBookViewModel(RuleDraft.open(file), Clock.systemUTC(), work::add, Runnable::run);
    EffectViewModel effect =
        new EffectViewModel(book, Texts.in(Language.ENGLISH), work::add, Runnable::run);
    effect.setBeside(new EffectViewModel.Beside.AsSaved());
    for (int i = 0; i < STEPS; i++) {
      if (random.nextInt(20) == 0) {
        book.open(random.nextInt(6));
      }
      RuleKey key = RuleKey.values()[random.nextInt(RuleKey.values().length)];
      List<String> words = key.words();
      String typed =
          !words.isEmpty() && random.nextBoolean()
              ? words.get(random.nextInt(words.size()))
              : TYPED.get(random.nextInt(TYPED.size()));
      book.type(key, typed);
      assertEquals(typed, book.text(key));
      assertNotNull(book.faultsOfNoField());
      while (!work.isEmpty()) {
        work.remove().run();
      }
      if (random.nextInt(4) == 0 && !book.faults().isEmpty()) {
        // back to what is right, so that the curves have something to draw
        book.type(key, book.draft().get().text(book.section().get(), key));
        book.type(key, "");
      }
    }
  }
}
