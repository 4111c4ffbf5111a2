package lanewarden.kiosk;

import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Region;
import lanewarden.kiosk.look.Language;
import lanewarden.kiosk.look.Theme;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * No state of the line asks for more room than the smallest screen it is made for, 1280 by 800:
 * what asks for more is cut off at the edge, and it would be the limit or the outcome. In every
 * language.
 */
class LineWidthTest {
  private static final double WIDTH = 1280;
  private static final double HEIGHT = 800;

  @TempDir Path temp;

  private static void assertFits(Booth booth, String state) throws Exception {
    for (Theme theme : themes(booth)) {
      Booth.call(
          () -> {
            booth.front.look().theme().set(theme);
            Region line = (Region) booth.front.official().lookup("#line");
            line.applyCss();
            line.layout();
            assertTrue(line.minWidth(-1) <= WIDTH, state + ", " + theme + ": " + line.minWidth(-1));
            assertTrue(
                line.minHeight(WIDTH) <= HEIGHT, state + ", " + theme + ": " + line.minHeight(-1));
            Node cut = cutOff(line);
            assertTrue(cut == null, state + ", " + theme + ": " + cut);
            return true;
          });
    }
  }

  /** The themes differ in nothing that takes room, which one language is enough to show. */
  private static Theme[] themes(Booth booth) {
    return booth.front.texts().language() == Language.ENGLISH
        ? Theme.values()
        : new Theme[] {Theme.DAY};
  }

  /** A button whose words are shortened: they are short already, and say what a key does. */
  private static @Nullable Node cutOff(Parent parent) {
    for (Node node : parent.lookupAll(".key-button .label")) {
      Label label = (Label) node;
      if (Booth.seen(label) && label.getWidth() < Math.floor(label.prefWidth(-1))) {
        return label;
      }
    }
    return null;
  }

  @ParameterizedTest
  @EnumSource(Language.class)
  void plainRulesFit(Language language) throws Exception {
    try (Booth booth = Booth.in(language, BoothEvent.PLAIN, temp, WIDTH, HEIGHT)) {
      assertNull(Booth.call(() -> cutOff(booth.front.official().getRoot())), "sign-in");
      booth.signIn();
      assertFits(booth, "clear");
      booth.type("il");
      assertFits(booth, "search");
      booth.press(KeyCode.ESCAPE);
      booth.scan("102");
      assertFits(booth, "called");
      booth.shoot("300.1 ft/s", "301.4 ft/s");
      booth.emit("$PLWT,00003,0304.1,F,006578,A*00\\r\\n");
      assertFits(booth, "refused");
      booth.press(KeyCode.F3);
      booth.type("2");
      booth.press(KeyCode.ENTER);
      assertFits(booth, "void");
      booth.shoot("300.6 ft/s", "299.9 ft/s");
      assertFits(booth, "within");
      booth.press(KeyCode.ENTER);
      assertFits(booth, "clear after a check");
      booth.scan("103");
      booth.shoot("312.4 ft/s", "310.0 ft/s", "311.2 ft/s");
      assertFits(booth, "over");
      booth.scan("205");
      booth.shoot("214.8 ft/s");
      booth.instrument.unplug();
      booth.settle();
      booth.scan("999");
      assertFits(booth, "lost, and a bib that is not there");
    }
  }

  @ParameterizedTest
  @EnumSource(Language.class)
  void rulesThatAskForMoreThanSpeedFit(Language language) throws Exception {
    try (Booth booth = Booth.in(language, BoothEvent.CLAUSES, temp, WIDTH, HEIGHT)) {
      booth.signIn();
      booth.scan("101");
      booth.press(KeyCode.ESCAPE);
      assertFits(booth, "figures missing");
      booth.station.endCheck("bow too light");
      booth.settle();
      booth.scan("102");
      booth.shoot("305.0 ft/s", "306.1 ft/s", "306.3 ft/s");
      assertFits(booth, "to be ticked, with the speed at the bow");
      booth.press(KeyCode.F11);
      assertFits(booth, "what follows");
      booth.scan("103");
      assertFits(booth, "not admitted");
      booth.scan("202");
      assertFits(booth, "no limit");
      booth.scan("401");
      assertFits(booth, "grounds");
    }
  }

  @ParameterizedTest
  @EnumSource(Language.class)
  void verifiedAndHeldLineFits(Language language) throws Exception {
    try (Booth booth =
        Booth.in(
            language, ProvingScreenTest.verifying(temp.resolve("made")), temp, WIDTH, HEIGHT)) {
      booth.signIn();
      assertFits(booth, "verify first");
      booth.press(KeyCode.END);
      booth.shoot("296.0 ft/s", "296.9 ft/s");
      booth.press(KeyCode.ESCAPE);
      booth.scan("101");
      booth.shoot("299.8 ft/s", "300.1 ft/s", "300.1 ft/s");
      assertFits(booth, "verified");
      booth.press(KeyCode.PAGE_DOWN);
      booth.type("1");
      booth.press(KeyCode.ENTER);
      assertFits(booth, "held, and in question");
    }
  }
}
