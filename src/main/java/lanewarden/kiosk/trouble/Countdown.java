package lanewarden.kiosk.trouble;

import java.time.Duration;
import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.scene.control.Label;
import lanewarden.kiosk.look.PanelFrame;
import lanewarden.kiosk.look.Texts;

/** How many seconds a passphrase is not tried, told down to the moment when it is again. */
final class Countdown extends Label {
  private final Texts texts;
  private final Timeline beat =
      new Timeline(new KeyFrame(javafx.util.Duration.seconds(1), e -> tick()));
  private long left;

  Countdown(Texts texts) {
    this.texts = texts;
    beat.setCycleCount(Animation.INDEFINITE);
    getStyleClass().add("countdown");
    PanelFrame.wrap(this);
    // A card that is closed has nobody to tell
    sceneProperty().addListener((all, before, now) -> go());
  }

  /** Begins anew; with no time left nothing is told. */
  void start(Duration wait) {
    left = wait.plusMillis(999).toSeconds();
    setVisible(left > 0);
    setManaged(left > 0);
    tell();
    go();
  }

  private void go() {
    if (left > 0 && getScene() != null) {
      beat.playFromStart();
    } else {
      beat.stop();
    }
  }

  private void tick() {
    left--;
    tell();
    if (left <= 0) {
      beat.stop();
    }
  }

  private void tell() {
    setText(left > 0 ? texts.of("countdown.wait", left) : texts.of("countdown.over"));
  }
}
