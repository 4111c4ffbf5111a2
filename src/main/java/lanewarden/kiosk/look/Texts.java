package lanewarden.kiosk.look;

import java.math.BigDecimal;
import java.text.DecimalFormatSymbols;
import java.text.MessageFormat;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import lanewarden.quantity.Measure;
import lanewarden.quantity.Quantity;
import lanewarden.quantity.Sentence;

/** The words of the screens in one language, and how it writes numbers; immutable. */
public final class Texts {
  private static final String BUNDLE = "lanewarden.kiosk.texts";

  /** Holds a blank's own direction in a sentence of the other one (Unicode, UAX 9). */
  private static final char LEFT_TO_RIGHT = '\u200e';

  private static final Pattern COMMA = Pattern.compile("(?<=\\d),(?=\\d+(?:\\D|$))");

  private final ResourceBundle bundle;
  private final Language language;
  private final char point;

  private Texts(Language language) {
    // Without another language behind it: a text that is missing must be found, not be English
    this.bundle =
        ResourceBundle.getBundle(
            BUNDLE,
            language == Language.ENGLISH ? Locale.ROOT : language.locale(),
            ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
    this.language = language;
    this.point = DecimalFormatSymbols.getInstance(language.locale()).getDecimalSeparator();
  }

  /** The texts in a language. */
  public static Texts in(Language language) {
    return new Texts(language);
  }

  /** Their language. */
  public Language language() {
    return language;
  }

  /**
   * A text with its blanks filled. Whole numbers are written without grouping; a decimal number or
   * a quantity in the manner of the language; a sentence in its words.
   *
   * @throws java.util.MissingResourceException if there is no such text
   */
  public String of(String key, Object... blanks) {
    Object[] plain = new Object[blanks.length];
    for (int i = 0; i < blanks.length; i++) {
      plain[i] = held(written(blanks[i]));
    }
    return new MessageFormat(bundle.getString(key), language.locale()).format(plain);
  }

  /** A sentence in the words of the language; one of which only the English is known, in that. */
  public String of(Sentence sentence) {
    Object[] figures = sentence.figures().toArray();
    return sentence.isVerbatim()
        ? sentence.toString()
        : of(SentenceKeys.of(sentence.form()), figures);
  }

  /** Sentences one after the other. */
  public String of(List<Sentence> sentences) {
    return sentences.stream().map(this::of).collect(Collectors.joining(" "));
  }

  /** A number in the manner of the language, with all its decimals. */
  public String number(BigDecimal number) {
    return number(number.toPlainString());
  }

  /** A number that was written with a decimal point, in the manner of the language. */
  public String number(String number) {
    return number.replace('.', point);
  }

  /** A number with its unit, as one types it too. */
  public String quantity(Quantity<?, ?> quantity) {
    return number(quantity.value()) + " " + quantity.unit().symbol();
  }

  /**
   * What was typed, with a decimal point where the language has a comma: behind the screens every
   * number has a point.
   */
  public String typed(String number) {
    return point == ',' ? COMMA.matcher(number).replaceAll(".") : number;
  }

  /** Every key there is. */
  public Set<String> keys() {
    return new TreeSet<>(bundle.keySet());
  }

  private String written(Object blank) {
    if (blank instanceof Sentence sentence) {
      return of(sentence);
    }
    if (blank instanceof Sentence.Row row) {
      return row.figures().stream().map(this::written).collect(Collectors.joining(row.between()));
    }
    if (blank instanceof Measure measure) {
      return number(measure.toString());
    }
    return blank instanceof BigDecimal number ? number(number) : String.valueOf(blank);
  }

  /** Names, numbers and units are mostly written from left to right, also within the other way. */
  private String held(String blank) {
    return language.isRightToLeft() && isLeftToRight(blank)
        ? LEFT_TO_RIGHT + blank + LEFT_TO_RIGHT
        : blank;
  }

  private static boolean isLeftToRight(String text) {
    return text.codePoints()
        .noneMatch(
            c -> {
              byte way = Character.getDirectionality(c);
              return way == Character.DIRECTIONALITY_RIGHT_TO_LEFT
                  || way == Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC;
            });
  }
}
