package lanewarden.kiosk.look;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Properties;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import lanewarden.quantity.Speed;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Every language against English, against the typefaces, and in how it writes numbers. */
class LanguageTest {
  private static final Pattern BLANK = Pattern.compile("\\{\\d}");
  private static final Pattern LONE_APOSTROPHE = Pattern.compile("(?<!')'(?:'')*(?!')");

  @ParameterizedTest
  @EnumSource(Language.class)
  void everyLanguageHasEveryTextAndNoOther(Language language) throws Exception {
    assertEquals(
        new TreeSet<>(written(Language.ENGLISH).keySet()),
        new TreeSet<>(written(language).keySet()));
  }

  @ParameterizedTest
  @EnumSource(Language.class)
  void everyTextHasTheBlanksOfTheEnglishOne(Language language) throws Exception {
    Map<String, String> english = blanks(written(Language.ENGLISH));
    assertEquals(english, blanks(written(language)));
  }

  @ParameterizedTest
  @EnumSource(Language.class)
  void noApostropheOpensAQuotationThatSwallowsABlank(Language language) throws Exception {
    Map<String, String> wrong = written(language);
    wrong.values().removeIf(text -> !LONE_APOSTROPHE.matcher(text).find());
    assertEquals(Map.of(), wrong);
  }

  @ParameterizedTest
  @EnumSource(Language.class)
  void theTypefacesHaveEveryLetter(Language language) throws Exception {
    for (String file : new String[] {"DejaVuSans.ttf", "DejaVuSans-Bold.ttf"}) {
      Font face = typeface(file);
      said(language)
          .forEach(
              (key, text) ->
                  assertEquals(-1, face.canDisplayUpTo(text.replace("\n", "")), file + " " + key));
    }
  }

  /**
   * Letters beside a to z as the Unicode CLDR lists them for each language, from memory. A text
   * that got into another language's file is not found by its blanks.
   */
  @ParameterizedTest
  @EnumSource(Language.class)
  void noTextHasALetterThatItsLanguageDoesNotHave(Language language) throws Exception {
    String letters =
        switch (language) {
          case ENGLISH -> "";
          case GERMAN -> "äöüß";
          case FRENCH -> "àâæçéèêëîïôœùûüÿ";
          case SPANISH -> "áéíñóúü¿¡º";
          case ITALIAN -> "àéèìíòóùú";
          case HEBREW -> "\\u05d0-\\u05ea";
        };
    Pattern foreign =
        Pattern.compile(
            "[\\p{L}¿¡&&[^a-z" + letters + "]]", Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    Map<String, String> wrong = said(language);
    wrong.values().removeIf(text -> !foreign.matcher(text).find());
    assertEquals(Map.of(), wrong);
  }

  /**
   * Marks of direction (Unicode, UAX 9) other than U+200E, with which blanks are held: where no
   * letter of their direction is beside them the typefaces draw a box in their place.
   */
  @ParameterizedTest
  @EnumSource(Language.class)
  void noTextHasAMarkOfDirectionThatIsDrawn(Language language) throws Exception {
    Pattern drawn = Pattern.compile("[\\u200f\\u061c\\u202a-\\u202e\\u2066-\\u2069]");
    Map<String, String> wrong = said(language);
    wrong.values().removeIf(text -> !drawn.matcher(text).find());
    assertEquals(Map.of(), wrong);
  }

  @Test
  void theFourOutcomesReadDifferentlyInEveryLanguage() throws Exception {
    for (Language language : Language.values()) {
      Map<String, String> texts = written(language);
      long words =
          texts.keySet().stream()
              .filter(key -> key.startsWith("outcome.") && !key.equals("outcome.follows"))
              .map(texts::get)
              .distinct()
              .count();
      assertEquals(7, words, language.toString());
    }
  }

  /** Decimal signs as in the Unicode CLDR, from memory. */
  @Test
  void aDecimalSignIsThatOfTheLanguage() {
    BigDecimal speed = new BigDecimal("288.40");
    assertEquals("288.40", Texts.in(Language.ENGLISH).number(speed));
    assertEquals("288,40", Texts.in(Language.GERMAN).number(speed));
    assertEquals("288,40", Texts.in(Language.FRENCH).number(speed));
    assertEquals("288,40", Texts.in(Language.SPANISH).number(speed));
    assertEquals("288,40", Texts.in(Language.ITALIAN).number(speed));
    assertEquals("288.40", Texts.in(Language.HEBREW).number(speed));
  }

  @Test
  void aQuantityInABlankIsWrittenInTheMannerOfTheLanguage() {
    Speed limit = Speed.parse("288.4 ft/s");
    assertTrue(Texts.in(Language.GERMAN).of("limit.plain", limit).contains("288,4 ft/s"));
    assertTrue(Texts.in(Language.ENGLISH).of("limit.plain", limit).contains("288.4 ft/s"));
  }

  @Test
  void aCommaTypedInALanguageThatHasItIsTheDecimalSign() {
    assertEquals("298.4 ft/s", Texts.in(Language.GERMAN).typed("298,4 ft/s"));
    assertEquals("298.4", Texts.in(Language.GERMAN).typed("298.4"));
    assertEquals("298,4", Texts.in(Language.ENGLISH).typed("298,4"));
    assertEquals("bow, arrow", Texts.in(Language.GERMAN).typed("bow, arrow"));
  }

  @Test
  void aNumberKeepsItsDirectionInASentenceFromRightToLeft() {
    String held = Texts.in(Language.HEBREW).of("limit.plain", Speed.parse("288.4 ft/s"));
    assertTrue(held.contains("\u200e288.4 ft/s\u200e"), held);
    String name = Texts.in(Language.HEBREW).of("division", "אב", "גד");
    assertTrue(name.indexOf('\u200e') < 0, name);
  }

  @Test
  void aLanguageIsFoundByItsTagWhateverTheCountry() {
    assertEquals(Optional.of(Language.GERMAN), Language.of("de-AT"));
    assertEquals(Optional.of(Language.HEBREW), Language.of("he-IL"));
    assertEquals(Optional.empty(), Language.of("ja"));
    assertEquals(Optional.empty(), Language.of(""));
  }

  private static Map<String, String> blanks(Map<String, String> texts) {
    Map<String, String> blanks = new TreeMap<>();
    texts.forEach(
        (key, text) ->
            blanks.put(
                key,
                BLANK
                    .matcher(text)
                    .results()
                    .map(MatchResult::group)
                    .distinct()
                    .sorted()
                    .collect(Collectors.joining())));
    return blanks;
  }

  /** What the language's own file says; the program would fall back to English. */
  private static Map<String, String> written(Language language) throws IOException {
    return written(language == Language.ENGLISH ? "texts" : "texts_" + language.tag());
  }

  private static Map<String, String> written(String bundle) throws IOException {
    String file = "/lanewarden/kiosk/" + bundle + ".properties";
    Properties texts = new Properties();
    try (InputStream in = Objects.requireNonNull(Texts.class.getResourceAsStream(file), file);
        Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
      texts.load(reader);
    }
    Map<String, String> written = new TreeMap<>();
    texts.stringPropertyNames().forEach(key -> written.put(key, texts.getProperty(key)));
    return written;
  }

  /** That, and what its own file says of troubles; English troubles say it themselves. */
  private static Map<String, String> said(Language language) throws IOException {
    Map<String, String> all = written(language);
    if (language != Language.ENGLISH) {
      all.putAll(written("faults_" + language.tag()));
    }
    return all;
  }

  private static Font typeface(String file) throws IOException, FontFormatException {
    try (InputStream in =
        Objects.requireNonNull(
            Texts.class.getResourceAsStream("/net/sf/jasperreports/fonts/dejavu/" + file))) {
      return Font.createFont(Font.TRUETYPE_FONT, in);
    }
  }
}
