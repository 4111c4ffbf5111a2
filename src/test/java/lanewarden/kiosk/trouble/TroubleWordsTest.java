package lanewarden.kiosk.trouble;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lanewarden.kiosk.look.Language;
import lanewarden.kiosk.look.Texts;
import lanewarden.rules.RuleBook;
import lanewarden.station.Trouble;
import lanewarden.written.WrittenRefused;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The texts of troubles against the sources that have the codes, and what a card says. */
class TroubleWordsTest {
  private static final Pattern CODE = Pattern.compile("\"([A-Z]+(?:-[A-Z]+)+)\"");

  /** The rooms whose troubles reach a screen; the command line speaks English. */
  private static final List<String> ROOMS = List.of("chronograph", "ledger", "station", "audit");

  @ParameterizedTest
  @EnumSource(names = "ENGLISH", mode = EnumSource.Mode.EXCLUDE)
  void everyCodeHasWhatHappenedAndWhatToDoAndNothingElseHas(Language language) throws Exception {
    Set<String> expected = new TreeSet<>();
    Set<String> codes = codesOf(ROOMS);
    codes.add("BUG");
    assertTrue(codes.containsAll(Set.of("KEY-PASSPHRASE", "FILE-REFUSED", "PORT-VANISHED")));
    codes.forEach(code -> expected.addAll(List.of(code, code + ".mend")));
    assertEquals(expected, written(language).keySet());
  }

  @ParameterizedTest
  @EnumSource(names = "ENGLISH", mode = EnumSource.Mode.EXCLUDE)
  void everyTextIsASentenceWithoutBlanksAndNamesNoKey(Language language) throws Exception {
    Map<String, String> wrong = written(language);
    Pattern sentence = Pattern.compile("[^{}\\\\]{3,}[.!]\u200e?");
    Pattern key = Pattern.compile("\\bF\\d|''");
    wrong.values().removeIf(text -> sentence.matcher(text).matches() && !key.matcher(text).find());
    assertEquals(Map.of(), wrong);
  }

  /** No two codes are told alike, or nobody could tell which of them it is. */
  @ParameterizedTest
  @EnumSource(names = "ENGLISH", mode = EnumSource.Mode.EXCLUDE)
  void noTwoTroublesReadTheSame(Language language) throws Exception {
    Map<String, String> texts = written(language);
    Map<String, String> told = new TreeMap<>();
    texts.forEach(
        (code, what) -> {
          if (!code.endsWith(".mend")) {
            String before = told.put(what + texts.get(code + ".mend"), code);
            assertEquals(null, before, code + " reads as another one");
          }
        });
  }

  @Test
  void theFaultsOfAFileAreParticularsInTheLanguageOfTheScreens() throws Exception {
    WrittenRefused refused =
        assertThrows(
            WrittenRefused.class,
            () -> RuleBook.read("book.toml", "format = 2".getBytes(StandardCharsets.UTF_8)));
    Trouble trouble = Trouble.of(refused);
    assertEquals(
        "book.toml, Zeile 1, Zeichen 1: für format erwartet: 1; gefunden: 2; Abhilfe: das Regelwerk"
            + " im Format 1 schreiben oder die Version von Lanewarden nehmen, für die es gemacht"
            + " wurde",
        TroubleWords.of(trouble, Texts.in(Language.GERMAN)).particulars());
    assertEquals(trouble.why(), TroubleWords.of(trouble, Texts.in(Language.ENGLISH)).why());
  }

  @Test
  void aTroubleOfTheScreensThemselvesSpeaksByTheirTexts() throws Exception {
    Set<String> own = codesOf(List.of("kiosk"));
    assertEquals(Set.of("PASSPHRASES-DIFFER", "STATION-SILENT"), own);
    Trouble trouble =
        new Trouble("Was.", "Warum.", "Tun.", "STATION-SILENT", Trouble.Kind.ENVIRONMENT);
    assertEquals(
        new TroubleWords("Was.", "Warum.", "Tun.", ""),
        TroubleWords.of(trouble, Texts.in(Language.GERMAN)));
  }

  @Test
  void inEnglishATroubleIsToldInItsOwnSentences() {
    assertEquals(new TroubleWords("What.", "Why.", "Do.", ""), TroubleWords.of(full(), english()));
    assertEquals(Optional.empty(), TroubleWords.in("Gone. (PORT-VANISHED)", english()));
  }

  @Test
  void inAnotherLanguageItIsToldByItsCodeAndItsOwnSentencesFollow() {
    TroubleWords said = TroubleWords.of(full(), Texts.in(Language.FRENCH));
    assertEquals("Le disque est plein.", said.what());
    assertEquals("What. Why. Do.", said.particulars());
    assertEquals("", said.why());
    assertTrue(said.spoken().startsWith(said.inShort()));
  }

  @Test
  void aFaultThatNobodyExpectedIsToldAsSuchWhateverItsCodeEndsIn() {
    Trouble trouble = Trouble.of(new IllegalStateException("out of nowhere"));
    TroubleWords said = TroubleWords.of(trouble, Texts.in(Language.ITALIAN));
    assertFalse(said.what().equals(trouble.what()));
    assertTrue(said.particulars().contains("out of nowhere"));
  }

  @Test
  void wordsOfAPortAreToldByTheCodeInThem() {
    String words = "The port COM3 went away. (PORT-VANISHED)";
    TroubleWords said = TroubleWords.in(words, Texts.in(Language.SPANISH)).orElseThrow();
    assertEquals(words, said.particulars());
    assertTrue(said.inShort().contains("puerto"), said.inShort());
    assertEquals(
        Optional.empty(), TroubleWords.in("Shot 3 (VOID-LIKE)", Texts.in(Language.SPANISH)));
  }

  @Test
  void besideAFieldAFaultIsToldByItsCodeAndOneWithinAFileAsTheFileHasIt() {
    Texts german = Texts.in(Language.GERMAN);
    assertEquals(
        "Das wird bei allen Teilnehmern gebraucht. Die Spalte wählen, in der es steht.",
        TroubleWords.inField("COLUMN-NEEDED", "Every competitor needs this.", german));
    assertEquals("Line 4: expected", TroubleWords.inField("", "Line 4: expected", german));
    assertEquals("Words.", TroubleWords.inField("COLUMN-NEEDED", "Words.", english()));
  }

  private static Trouble full() {
    return new Trouble("What.", "Why.", "Do.", "DISK-FULL", Trouble.Kind.ENVIRONMENT);
  }

  private static Texts english() {
    return Texts.in(Language.ENGLISH);
  }

  private static Set<String> codesOf(List<String> rooms) throws IOException {
    Set<String> codes = new TreeSet<>();
    for (String room : rooms) {
      try (Stream<Path> files = Files.walk(Path.of("src/main/java/lanewarden", room))) {
        for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
          CODE.matcher(Files.readString(file))
              .results()
              .map((MatchResult found) -> found.group(1))
              .forEach(codes::add);
        }
      }
    }
    return codes;
  }

  private static Map<String, String> written(Language language) throws IOException {
    String file = "/lanewarden/kiosk/faults_" + language.tag() + ".properties";
    Properties texts = new Properties();
    try (InputStream in = Objects.requireNonNull(Texts.class.getResourceAsStream(file), file);
        Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
      texts.load(reader);
    }
    Map<String, String> written = new TreeMap<>();
    texts.stringPropertyNames().forEach(key -> written.put(key, texts.getProperty(key)));
    return written;
  }
}
