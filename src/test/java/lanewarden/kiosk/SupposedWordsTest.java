package lanewarden.kiosk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.text.Text;
import lanewarden.kiosk.look.Language;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What is supposed in the rule studio is named whole, on the smallest screen. */
class SupposedWordsTest {
  @TempDir Path temp;

  @ParameterizedTest
  @EnumSource(Language.class)
  void everySuppositionIsNamedWholeWhateverTheRuleAsks(Language language) throws Exception {
    try (Booth booth = Booth.in(language, BoothEvent.CLAUSES, folder(language), 1280, 800)) {
      booth.press(KeyCode.F10);
      List<String> cut = new ArrayList<>();
      booth.press(KeyCode.F9);
      booth.touch("pick-1");
      int divisions = Booth.call(() -> all(booth, ".division-row").size());
      for (int i = 0; i < divisions; i++) {
        int nth = i;
        Booth.call(
            () -> {
              ((ButtonBase) booth.front.official().lookup("#section-" + nth)).fire();
              return true;
            });
        booth.settle();
        cut.addAll(cutInStudio(booth));
        booth.focusField("suppose-voids");
        booth.type("many");
        cut.addAll(cutInStudio(booth));
        booth.focusField("suppose-voids");
        booth.type("5 %");
      }
      booth.press(KeyCode.F8);
      cut.addAll(Booth.call(() -> cut(booth, "#lanes-panel .label")));
      cut.addAll(booth.cutOff("lanes-panel"));
      assertEquals(List.of(), cut);
    }
  }

  private static List<String> cutInStudio(Booth booth) throws Exception {
    List<String> cut = new ArrayList<>(booth.cutOff("effect-numbers"));
    cut.addAll(Booth.call(() -> cut(booth, "#studio .supposed .label")));
    return cut;
  }

  private Path folder(Language language) throws Exception {
    return Files.createDirectory(temp.resolve(language.name()));
  }

  private static Set<Node> all(Booth booth, String selector) {
    Parent root = booth.front.official().getRoot();
    root.applyCss();
    root.layout();
    return root.lookupAll(selector);
  }

  private static List<String> cut(Booth booth, String selector) {
    return all(booth, selector).stream()
        .filter(Booth::seen)
        .filter(Label.class::isInstance)
        .map(Label.class::cast)
        .filter(label -> !isWhole(label))
        .map(Label::getText)
        .toList();
  }

  /** Not shortened, and no word broken within. */
  private static boolean isWhole(Label label) {
    boolean shown =
        !(label.lookup(".text") instanceof Text drawn) || drawn.getText().equals(label.getText());
    for (String word : label.getText().split(" ", -1)) {
      Text alone = new Text(word);
      alone.setFont(label.getFont());
      shown &= alone.getLayoutBounds().getWidth() <= label.getWidth() + 0.5;
    }
    return shown && label.getHeight() >= Math.floor(label.prefHeight(label.getWidth()));
  }
}
