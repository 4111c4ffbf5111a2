package lanewarden.kiosk;

import java.util.Optional;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.trouble.FaultPanel;
import lanewarden.kiosk.trouble.TroublePanel;
import lanewarden.station.Trouble;

/** What goes wrong, put before the official over whatever is shown; on the screen's thread. */
final class Faults {
  private final Shell shell;
  private final Texts texts;
  private final Front.Windows windows;

  Faults(Shell shell, Texts texts, Front.Windows windows) {
    this.shell = shell;
    this.texts = texts;
    this.windows = windows;
  }

  /** Opens the window for a fault that nobody expected; whoever is locked in finds a way out. */
  void show(Trouble trouble) {
    Optional<Runnable> out =
        windows.isFull() ? Optional.of(this::closeAndAskOut) : Optional.empty();
    shell.open(new FaultPanel(trouble, texts, Faults::copy, shell::close, out));
  }

  private void closeAndAskOut() {
    shell.close();
    windows.turnFull();
  }

  /** Shows it only if nobody expected it: what was expected is said where it was met. */
  void showIfUnexpected(Trouble trouble) {
    if (trouble.kind() == Trouble.Kind.BUG) {
      show(trouble);
    }
  }

  /** Says what kept something from opening, where no screen is there to say it. */
  void refuse(Trouble trouble) {
    if (trouble.kind() == Trouble.Kind.BUG) {
      show(trouble);
    } else {
      shell.open(new TroublePanel(trouble, texts, shell::close));
    }
  }

  /** Puts the details of a fault where they can be pasted from. */
  static void copy(String details) {
    ClipboardContent content = new ClipboardContent();
    content.putString(details);
    Clipboard.getSystemClipboard().setContent(content);
  }
}
