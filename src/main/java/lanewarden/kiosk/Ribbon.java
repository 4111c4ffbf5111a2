package lanewarden.kiosk;

import java.util.Optional;
import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.scene.AccessibleRole;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import javafx.stage.Window;
import javafx.util.Duration;
import lanewarden.kiosk.line.Glance;
import lanewarden.kiosk.look.Mark;
import lanewarden.kiosk.look.PanelFrame;
import lanewarden.kiosk.look.Row;
import lanewarden.kiosk.look.Sign;
import lanewarden.kiosk.signin.IdleViewModel;

/** What stands above every screen and every panel while there is something to say. */
final class Ribbon extends VBox {
  private final Mark mark = new Mark();
  private final Label words = new Label();
  private final Label news = new Label();
  private final Row line = new Row(mark, words, news);

  /**
   * @param idle what is said of an official who does nothing
   */
  Ribbon(IdleViewModel idle) {
    Mark clock = new Mark();
    clock.show(Sign.HELD);
    Label left = new Label();
    left.setId("idle-words");
    Row warning = new Row(clock, left);
    warning.getStyleClass().addAll("glance-line", "idle-line");
    warning.setAccessibleRole(AccessibleRole.TEXT);
    idle.words()
        .addListener(
            (all, before, now) -> {
              left.setText(now.orElse(""));
              warning.setAccessibleText(now.orElse(""));
              warning.setVisible(now.isPresent());
              warning.setManaged(now.isPresent());
            });
    warning.setVisible(false);
    warning.setManaged(false);
    Timeline beat = new Timeline(new KeyFrame(Duration.seconds(1), e -> idle.tick()));
    beat.setCycleCount(Animation.INDEFINITE);
    // A window that is closed tells nobody, and keeps nothing alive
    sceneProperty()
        .flatMap(Scene::windowProperty)
        .flatMap(Window::showingProperty)
        .orElse(false)
        .subscribe(
            shown -> {
              if (shown) {
                beat.play();
              } else {
                beat.stop();
              }
            });
    words.setId("glance");
    news.setId("glance-news");
    news.getStyleClass().add("glance-news");
    PanelFrame.wrap(words, news, left);
    line.getStyleClass().addAll("outcome", "glance-line");
    line.setAccessibleRole(AccessibleRole.TEXT);
    getChildren().addAll(warning, line);
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
