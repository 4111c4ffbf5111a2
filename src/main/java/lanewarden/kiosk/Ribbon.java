package lanewarden.kiosk;

import java.util.Optional;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.line.Glance;
import lanewarden.kiosk.look.Mark;

/** What stands above every screen and every panel while there is something to say. */
final class Ribbon extends VBox {
  private final Mark mark = new Mark();
  private final Label words = new Label();
  private final Label news = new Label();
  private final HBox line = new HBox(mark, words, news);

  Ribbon() {
    words.setId("glance");
    news.setId("glance-news");
    news.getStyleClass().add("glance-news");
    news.setMinWidth(USE_PREF_SIZE);
    words.setMinWidth(0);
    line.getStyleClass().addAll("outcome", "glance-line");
    line.setAccessibleRole(AccessibleRole.TEXT);
    getChildren().add(line);
    show(Optional.empty());
  }

  /** Shows what goes on at the line, or nothing. */
  void show(Optional<Glance> glance) {
    line.setVisible(glance.isPresent());
    line.setManaged(glance.isPresent());
    glance.ifPresent(
        seen -> {
          mark.show(seen.sign());
          Mark.show(line, seen.sign());
          words.setText(seen.words());
          news.setText(seen.news());
          news.setVisible(!seen.news().isBlank());
          line.setAccessibleText(String.join(" ", seen.words(), seen.news()));
        });
  }
}
