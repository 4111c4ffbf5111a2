package lanewarden.kiosk;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.input.KeyCode;
import lanewarden.kiosk.look.Texts;

/** The one way of moving between the screens: a panel that lists them all with their keys. */
final class Ways {

  /**
   * A way to a screen.
   *
   * @param words what it is
   * @param key the key that leads there
   * @param go leads there
   * @param barred why it does not now, if so
   */
  record Way(String words, KeyCode key, Runnable go, Optional<String> barred) {}

  private final Shell shell;
  private final Texts texts;
  private final Wording wording;
  private final Supplier<List<Way>> all;

  /** What the list says above its ways. */
  record Wording(String title, String words) {}

  /**
   * @param all every way, as things stand
   */
  Ways(Shell shell, Texts texts, Wording wording, Supplier<List<Way>> all) {
    this.shell = shell;
    this.texts = texts;
    this.wording = wording;
    this.all = all;
  }

  /** A way that is open. */
  Way to(String text, KeyCode key, Runnable go) {
    return new Way(texts.of(text), key, go, Optional.empty());
  }

  /** A way that is not open now, and why. */
  Way barred(String text, KeyCode key, String why) {
    return new Way(texts.of(text), key, () -> {}, Optional.of(why));
  }

  /** Opens the panel. */
  void open() {
    shell.open(new WaysPanel(all.get(), wording, texts, shell::close));
  }
}
