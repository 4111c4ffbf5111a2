package lanewarden.kiosk.look;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;

/** The words of the screens in one language; immutable. */
public final class Texts {
  private static final String BUNDLE = "lanewarden.kiosk.texts";

  private final ResourceBundle bundle;
  private final Locale language;

  private Texts(Locale language) {
    this.bundle = ResourceBundle.getBundle(BUNDLE, language);
    this.language = language;
  }

  /** The texts in a language, in English where there are none. */
  public static Texts in(Locale language) {
    return new Texts(language);
  }

  /**
   * A text with its blanks filled; numbers are written without grouping.
   *
   * @throws java.util.MissingResourceException if there is no such text
   */
  public String of(String key, Object... blanks) {
    Object[] plain = new Object[blanks.length];
    for (int i = 0; i < blanks.length; i++) {
      plain[i] = String.valueOf(blanks[i]);
    }
    return new MessageFormat(bundle.getString(key), language).format(plain);
  }

  /** Every key there is. */
  public Set<String> keys() {
    return new TreeSet<>(bundle.keySet());
  }
}
