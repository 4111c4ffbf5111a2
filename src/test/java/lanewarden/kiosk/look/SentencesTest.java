package lanewarden.kiosk.look;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lanewarden.quantity.Percent;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;
import lanewarden.rules.Because;
import lanewarden.rules.Missing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What the rooms hand out as sentences with their figures, in the words of every language. */
class SentencesTest {
  private static final Pattern BLANK = Pattern.compile("\\{\\d}");

  /** Every form in the house whose words are not just handed on. */
  private static final List<Sentence.Form> FORMS =
      new ClassFileImporter()
              .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
              .importPackages("lanewarden")
              .stream()
              .filter(c -> c.isEnum() && c.isAssignableTo(Sentence.Form.class))
              .map(JavaClass::reflect)
              .flatMap(c -> Stream.of((Sentence.Form[]) c.getEnumConstants()))
              .filter(form -> !Sentence.verbatim("").form().equals(form))
              .toList();

  private static List<String> blanks(String text) {
    return BLANK.matcher(text).results().map(MatchResult::group).distinct().sorted().toList();
  }

  /** The form with a name of each blank in it, so that one that is lost or twice is seen. */
  private static String said(Sentence.Form form, Texts texts) {
    Object[] names =
        IntStream.range(0, blanks(form.english()).size()).mapToObj(i -> "{" + i + "}").toArray();
    return texts.of(Sentence.of(form, names)).replace("\u200e", "");
  }

  @Test
  void thereAreSentencesOfEveryRoomThatHasSome() {
    assertEquals(
        List.of(
            "bench",
            "bow",
            "journal",
            "metrology",
            "quantity",
            "roster",
            "rules",
            "station",
            "written"),
        List.copyOf(
            new TreeSet<>(
                FORMS.stream()
                    .map(form -> form.getClass().getPackageName().split("\\.")[1])
                    .toList())));
  }

  @ParameterizedTest
  @EnumSource(Language.class)
  void everySentenceHasATextWithAllItsFigures(Language language) {
    Texts texts = Texts.in(language);
    FORMS.forEach(
        form ->
            assertEquals(
                blanks(form.english()), blanks(said(form, texts)), form + " in " + language));
  }

  /** An English screen says what is signed, word for word. */
  @Test
  void inEnglishTheScreensSayWhatTheRoomSays() {
    Texts texts = Texts.in(Language.ENGLISH);
    Map<String, String> room = new TreeMap<>();
    Map<String, String> screen = new TreeMap<>();
    FORMS.forEach(
        form -> {
          room.put(form.getClass().getName() + form, form.english());
          screen.put(form.getClass().getName() + form, said(form, texts));
        });
    assertEquals(room, screen);
  }

  @Test
  void figuresAreWrittenInTheMannerOfTheLanguageHoweverDeepTheyStand() {
    Sentence mean =
        Sentence.of(Because.MEAN, Sentence.of(Because.SHOWN, Speed.parse("300.1 ft/s")));
    Sentence limit =
        Sentence.of(
            Because.LIMIT,
            Sentence.of(Because.PLUS, Speed.parse("300 ft/s"), Percent.parse("0.5 %")));
    Sentence why = Sentence.of(Because.AGAINST, mean, limit);
    assertEquals("mean 300.1 ft/s, limit 300 ft/s plus 0.5 %", why.toString());
    assertEquals(why.toString(), Texts.in(Language.ENGLISH).of(why));
    assertEquals(
        "Mittelwert 300,1 ft/s, Limit 300 ft/s plus 0,5 %", Texts.in(Language.GERMAN).of(why));
    String hebrew = Texts.in(Language.HEBREW).of(why);
    assertTrue(hebrew.contains("\u200e300.1 ft/s\u200e"), hebrew);
  }

  @Test
  void aRowIsWrittenOneByOne() {
    Sentence row =
        Sentence.of(
            Because.NONE_WITHIN,
            2,
            new Sentence.Row(
                ", ", List.of(Speed.parse("300.1 ft/s"), new BigDecimal("0.5"), "5.5 of 6")));
    assertEquals(
        "keiner von 2 Messwerten im Limit: 300,1 ft/s, 0,5, 5.5 of 6",
        Texts.in(Language.GERMAN).of(row));
  }

  @ParameterizedTest
  @EnumSource(Language.class)
  void oneMoreReadingIsToldApartFromMore(Language language) {
    Texts texts = Texts.in(language);
    String one = texts.of(new Missing.MoreReadings(1).sentence());
    String two = texts.of(new Missing.MoreReadings(2).sentence());
    assertFalse(one.contains("2"), one);
    assertTrue(two.contains("2"), two);
  }

  @ParameterizedTest
  @EnumSource(Language.class)
  void whatWasSignedInWordsThatNobodySaysAnyMoreStandsAsItWasSigned(Language language) {
    String signed = "highest 300.1 ft/s of {3}, it''s over";
    assertEquals(signed, Texts.in(language).of(Sentence.verbatim(signed)));
  }
}
