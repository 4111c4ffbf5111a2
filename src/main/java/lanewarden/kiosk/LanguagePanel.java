package lanewarden.kiosk;

import java.util.List;
import java.util.function.Consumer;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.GridPane;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.Language;
import lanewarden.kiosk.look.Texts;

/** Lists every language by the name its speakers give it. */
final class LanguagePanel extends KeyedPanel {
  private static final int COLUMNS = 2;

  /** Not F6, which stops the line also where this stands over it. */
  private static final List<KeyCode> CODES =
      List.of(KeyCode.F1, KeyCode.F2, KeyCode.F3, KeyCode.F4, KeyCode.F5, KeyCode.F7);

  /**
   * @param chosen takes the language
   * @param leave stays with the one that is spoken now
   */
  LanguagePanel(Texts texts, Consumer<Language> chosen, Runnable leave) {
    super("language-panel", new KeyButton(texts.of("panel.back"), KeyCode.ESCAPE, leave));
    GridPane grid = new GridPane();
    grid.getStyleClass().add("ways");
    for (Language language : Language.values()) {
      int place = grid.getChildren().size();
      KeyButton button =
          new KeyButton(
              language.ownName(),
              CODES.get(place),
              () -> {
                leave.run();
                chosen.accept(language);
              });
      button.setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
      button.setId("language-" + language.tag());
      keys().add(button);
      grid.add(button, place % COLUMNS, place / COLUMNS);
    }
    root.say(new Label(texts.of("language.title")), new Label(texts.of("language.words")));
    root.getChildren().add(grid);
    offerBack();
  }
}
