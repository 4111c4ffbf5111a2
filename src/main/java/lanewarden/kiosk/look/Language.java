package lanewarden.kiosk.look;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** A language in which the screens speak. */
public enum Language {
  /** In which the program is written, and every entry of the ledger. */
  ENGLISH("en", "English"),
  /** With a comma before the decimals. */
  GERMAN("de", "Deutsch"),
  /** With a comma before the decimals. */
  FRENCH("fr", "Français"),
  /** With a comma before the decimals. */
  SPANISH("es", "Español"),
  /** With a comma before the decimals. */
  ITALIAN("it", "Italiano"),
  /** Written from right to left. */
  HEBREW("he", "עברית");

  private final Locale locale;
  private final String ownName;

  Language(String tag, String ownName) {
    this.locale = Locale.forLanguageTag(tag);
    this.ownName = ownName;
  }

  /** The language with a tag of RFC 5646, such as {@code de} or {@code de-AT}, if there is one. */
  public static Optional<Language> of(String tag) {
    String wanted = Locale.forLanguageTag(tag).getLanguage();
    return Arrays.stream(values()).filter(l -> l.locale.getLanguage().equals(wanted)).findFirst();
  }

  /** Its tag, RFC 5646. */
  public String tag() {
    return locale.toLanguageTag();
  }

  /** How numbers and dates are written. */
  public Locale locale() {
    return locale;
  }

  /** What its speakers call it. */
  public String ownName() {
    return ownName;
  }

  /** Whether it is written from right to left. */
  public boolean isRightToLeft() {
    return this == HEBREW;
  }
}
