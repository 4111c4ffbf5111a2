package lanewarden.kiosk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;
import javafx.scene.control.ListView;
import javafx.scene.control.skin.VirtualFlow;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.GridPane;
import lanewarden.kiosk.look.Language;
import lanewarden.kiosk.look.TextSize;
import lanewarden.roster.RosterSheet;
import lanewarden.station.CompetitorList;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A list of competitors that is looked at from the start screen, by keys alone. */
class ListCornerTest {
  private static final Path RULES = Path.of("config", "rule-book.toml").toAbsolutePath();

  private static final String LIST =
      """
      Start number;Club;Who;Bow class;Arow mass
      11;Elm Meadow;Ines Wetherholt;OC;352 gr
      12;Elm Meadow;Goran Pellinor;XX;352 gr
      """;

  @TempDir Path temp;
  private Doorstep door;
  private Path list;

  @BeforeEach
  void open() throws Exception {
    list = Files.writeString(temp.resolve("list.csv"), LIST);
    door = new Doorstep(temp);
    door.press(KeyCode.INSERT);
    door.press(KeyCode.F4);
  }

  @AfterEach
  void close() throws Exception {
    door.close();
  }

  private void take(Path file) throws Exception {
    door.chosen.add(file);
    door.press(KeyCode.F4);
    door.press(KeyCode.ENTER);
  }

  /** What the preview shows, row after row, its titles first. */
  private List<String> preview() throws Exception {
    Scene scene = door.scene();
    return Booth.call(
        () -> {
          Stream<String> titles =
              ((GridPane) scene.lookup("#roster-titles"))
                  .getChildren().stream().map(cell -> ((Labeled) cell).getText());
          return Stream.concat(titles, rows(scene).getItems().stream().flatMap(List::stream))
              .toList();
        });
  }

  @SuppressWarnings("unchecked") // the only list on the screen
  private static ListView<List<String>> rows(Scene scene) {
    return (ListView<List<String>>) scene.lookup("#roster-rows");
  }

  /** The bibs of the lines that are in sight. */
  private List<String> seen() throws Exception {
    Scene scene = door.scene();
    return Booth.call(
        () -> {
          scene.getRoot().layout();
          ListView<List<String>> rows = rows(scene);
          VirtualFlow<?> flow = (VirtualFlow<?>) rows.lookup(".virtual-flow");
          return rows
              .getItems()
              .subList(
                  flow.getFirstVisibleCell().getIndex(), flow.getLastVisibleCell().getIndex() + 1)
              .stream()
              .map(line -> line.get(0))
              .toList();
        });
  }

  private static List<String> cells(CompetitorList read) {
    return Stream.concat(
            RosterSheet.wanted().stream()
                .map(RosterSheet.Wanted::title)
                .filter(read.columns()::containsKey)
                .map(title -> title.replace('-', ' ')),
            read.mapped().orElseThrow().rows().stream().flatMap(List::stream))
        .toList();
  }

  @Test
  void whatWouldBeTakenIsWhatTheCommandTellsAndNothingIsMade() throws Exception {
    take(list);
    assertTrue(door.text("fault-column-name").contains("Choose the column"));
    assertEquals("Left out: Club, Who, Arow mass (arrow mass?)", door.text("roster-left-out"));
    assertEquals(List.of(), preview());

    door.focus("field-column-name");
    door.press(KeyCode.RIGHT, 3);
    door.focus("field-column-arrow-mass");
    door.press(KeyCode.LEFT);
    CompetitorList read =
        CompetitorList.read(list, List.of("name=3", "arrow-mass=5"), Optional.empty());
    assertEquals(cells(read), preview());
    assertEquals("Left out: Club", door.text("roster-left-out"));
    assertEquals(List.of(), read.faults());
    assertEquals("", door.text("fault-roster") + door.text("fault-column-name"));
    assertTrue(door.line.station().isEmpty());
    try (Stream<Path> files = Files.list(temp)) {
      assertEquals(List.of(list), files.toList());
    }
    door.press(KeyCode.ESCAPE);
    assertEquals("Lanewarden test", door.text("start-version"));
  }

  @Test
  void everyLineIsShownAndTheKeysTurnThemFromWhereverTheFocusIs() throws Exception {
    Files.writeString(
        list,
        IntStream.rangeClosed(1, 400)
            .mapToObj(bib -> bib + ";Ann " + bib + ";OC\n")
            .collect(Collectors.joining("", "Bib;Name;Division\n", "")));
    take(list);
    assertEquals(cells(CompetitorList.read(list, List.of(), Optional.empty())), preview());
    List<String> first = seen();
    assertEquals("1", first.get(0));
    assertTrue(first.size() > 5 && first.size() < 40, first.toString());

    door.focus("field-roster");
    door.press(KeyCode.PAGE_DOWN);
    List<String> next = seen();
    assertEquals(first.get(first.size() - 1), next.get(0), "none is passed over");
    door.press(KeyCode.PAGE_UP);
    assertEquals(first, seen());

    door.focus("roster-rows");
    door.press(KeyCode.END);
    List<String> last = seen();
    assertEquals("400", last.get(last.size() - 1));
  }

  @Test
  void everyFaultIsToldByItsLineOnceThereIsARuleBook() throws Exception {
    Files.writeString(list, LIST.replace("Who", "Name").replace("\n11;", "\n12;"));
    take(list);
    assertEquals(
        faults(CompetitorList.read(list, List.of(), Optional.empty())), lines("roster-faults"));
    assertTrue(door.text("fault-roster").contains("1 line is wrong"), door.text("fault-roster"));

    door.chosen.add(RULES);
    door.press(KeyCode.F6);
    List<Integer> both = faults(CompetitorList.read(list, List.of(), Optional.of(RULES)));
    assertEquals(List.of(3, 3), both);
    assertEquals(both, lines("roster-faults"));

    Files.writeString(list, Files.readString(list).replace("XX", "OC").replaceFirst("12", "11"));
    door.press(KeyCode.F5);
    assertEquals(List.of(), lines("roster-faults"));
    assertEquals("", door.text("fault-roster"));
  }

  private static List<Integer> faults(CompetitorList read) {
    return read.faults().stream().map(CompetitorList.Fault::line).toList();
  }

  /** The lines that the faults on the screen name. */
  private List<Integer> lines(String id) throws Exception {
    return door.lines(id).stream()
        .map(told -> Integer.valueOf(told.replaceFirst("^Line (\\d+): expected .*", "$1")))
        .toList();
  }

  @Test
  void anEventsFolderIsARuleBookTooAndOneThatIsFaultyIsToldAtItsField() throws Exception {
    Files.writeString(list, LIST.replace("Who", "Name"));
    take(list);
    Path event = Files.createDirectory(temp.resolve("weekend"));
    Files.copy(RULES, event.resolve("rule-book.toml"));
    door.chosen.add(event);
    door.press(KeyCode.F6);
    assertEquals(List.of(3), lines("roster-faults"));

    Files.writeString(event.resolve("rule-book.toml"), "[event]\nname = 3\n");
    door.press(KeyCode.ENTER);
    assertTrue(door.text("fault-rule-book").startsWith("Line "), door.text("fault-rule-book"));
    assertEquals(event.toString(), door.label("field-rule-book"));
    assertEquals(List.of(), lines("roster-faults"), "there are no divisions to compare");
  }

  @Test
  void whatIsNoListIsToldAtItsFieldOnceItIsToBeLookedAt() throws Exception {
    door.focus("field-roster");
    door.type("list.csv");
    assertEquals("", door.text("fault-roster"), "nobody is told while typing");
    door.press(KeyCode.ENTER);
    assertTrue(door.text("fault-roster").contains("the whole way"), door.text("fault-roster"));
    assertEquals("list.csv", door.label("field-roster"));
  }

  @Test
  void anotherListIsReadByItsOwnColumns() throws Exception {
    take(list);
    door.focus("field-column-name");
    door.press(KeyCode.RIGHT, 3);
    Path other = Files.writeString(temp.resolve("other.csv"), "Bib;Name;Division\n7;Ann;OC\n");
    take(other);
    assertEquals(List.of("bib", "name", "division", "7", "Ann", "OC"), preview());
    door.press(KeyCode.INSERT);
    door.press(KeyCode.F4);
    assertEquals(other.toString(), door.label("field-roster"), "what was looked at last stays");
  }

  private void speakGerman() throws Exception {
    Booth.call(
        () -> {
          door.look.language().set(Language.GERMAN);
          return true;
        });
    door.settle();
    door.press(KeyCode.INSERT);
    door.press(KeyCode.F4);
  }

  @Test
  void whatIsWrongInTheListIsToldInTheLanguageOfTheScreens() throws Exception {
    speakGerman();
    Files.writeString(
        list,
        """
        Bib,Name,Division,Arrow mass
        11,Ines Wetherholt,OC,352
        11,Goran Pellinor,XX,"1,5 gr"
        """);
    take(list);
    door.chosen.add(RULES);
    door.press(KeyCode.F6);
    assertEquals(
        List.of(
            "Zeile 2: erwartet: ein Gewicht wie \"350 gr\"; gefunden: \"352\". Abhilfe: die Einheit"
                + " dazuschreiben, eine von gr, g, kg, lb, oder es leer lassen.",
            "Zeile 3: erwartet: eine Startnummer, die sonst niemand hat; gefunden: \"11\", schon in"
                + " Zeile 2. Abhilfe: jedem Teilnehmer eine eigene Startnummer und nur eine Zeile"
                + " geben.",
            "Zeile 3: erwartet: eine Klasse des Regelwerks, eine von OC, TR; gefunden: \"XX\"."
                + " Abhilfe: sie hier berichtigen oder die Klasse ins Regelwerk aufnehmen.",
            "Zeile 3: erwartet: ein Gewicht wie \"350 gr\"; gefunden: \"1,5 gr\". Abhilfe: einen"
                + " Dezimalpunkt statt des Kommas schreiben, oder es leer lassen."),
        door.lines("roster-faults"));
  }

  @Test
  void whatIsNoTableIsToldInTheLanguageOfTheScreens() throws Exception {
    speakGerman();
    take(Files.writeString(temp.resolve("empty.csv"), "Bib,Name,Division\n"));
    assertEquals(
        "Zeile 1: erwartet: eine Kopfzeile, dann eine Zeile je Datensatz; gefunden: nur eine"
            + " Zeile. Abhilfe: die ganze Tabelle speichern, mit den Namen ihrer Spalten darüber.",
        door.text("fault-roster"));
  }

  @Test
  void nothingIsLostWithTextTwiceAsLargeInTheLongestLanguage() throws Exception {
    Booth.call(
        () -> {
          door.look.language().set(Language.GERMAN);
          door.look.textSize().set(TextSize.LARGEST);
          return true;
        });
    door.settle();
    door.press(KeyCode.INSERT);
    door.press(KeyCode.F4);
    take(list);
    assertFalse(door.text("roster-left-out").isEmpty());
    assertEquals(List.of(), LargeTextTest.lost(door.scene()));
  }
}
