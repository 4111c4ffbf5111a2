package lanewarden.kiosk.look;

import java.util.regex.Pattern;
import javafx.scene.control.Labeled;

/**
 * Words that take the lines they need, also from right to left. On Linux the toolkit shapes such
 * letters with Pango, and where it breaks a line within a run of them it draws the whole run again
 * (JavaFX 21: its layout remembers a run's letters from before the run was split). So a mark of the
 * other direction stands behind each blank: there a run ends, and nothing has to be split.
 */
public final class WrappedWords {
  private static final String BESIDE = "[^\\p{L}\\p{N} ]{0,2}";

  /** A blank behind a word from right to left. */
  private static final Pattern BEHIND =
      Pattern.compile("(?<=\\p{IsHebrew}" + BESIDE + ") (?!\u200e)");

  /** A blank before one only: a mark would draw it to the words of the other direction. */
  private static final Pattern BEFORE =
      Pattern.compile("(?<!\\p{IsHebrew}" + BESIDE + ") (?=" + BESIDE + "\\p{IsHebrew})");

  private WrappedWords() {}

  /** Wraps them, whatever they come to say; a text that is bound is left as it is. */
  public static void in(Labeled... labels) {
    for (Labeled label : labels) {
      label.setWrapText(true);
      label.textProperty().addListener((all, before, now) -> mark(label));
      mark(label);
    }
  }

  private static void mark(Labeled label) {
    String breakable = breakable(label.getText());
    if (!label.textProperty().isBound() && !breakable.equals(label.getText())) {
      label.setText(breakable);
    }
  }

  /** The same words with the marks, which have no width, and unbroken where none can stand. */
  private static String breakable(String words) {
    return BEFORE.matcher(BEHIND.matcher(words).replaceAll(" \u200e")).replaceAll("\u00a0");
  }
}
