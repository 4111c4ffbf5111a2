package lanewarden;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lanewarden.bow.Drag;
import lanewarden.metrology.Alignment;
import lanewarden.metrology.Coverage;
import lanewarden.metrology.Deviation;
import lanewarden.metrology.ErrorSource;
import lanewarden.metrology.ReferenceComparison;
import lanewarden.quantity.Length;
import lanewarden.quantity.Mass;
import lanewarden.quantity.Speed;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The tables of {@code hardware-notes}, computed anew; those of the reference timer are in {@link
 * ReferenceTimerTest}, those that hang on sentences in {@code chronograph.NotedSentencesTest}.
 */
class HardwareNotesTest {
  private static final Speed SPEED = Speed.parse("300 ft/s");

  private static final double FOOT = 0.3048;

  private static final Coverage ONE = Coverage.factor("1");

  private static final int SHAFT_COLUMNS = 3;

  /** What a row must be, from the cells that say what is computed. */
  private static final Map<String, UnaryOperator<List<String>>> ROWS =
      Map.of(
          "flight off the line by", HardwareNotesTest::crooked,
          "spacing wrong by", HardwareNotesTest::misspaced,
          "shaft", HardwareNotesTest::slowed,
          "distance", HardwareNotesTest::farAway,
          "distance wrong by", HardwareNotesTest::displaced,
          "triggers apart by", HardwareNotesTest::turnedRound,
          "middle gate off by", HardwareNotesTest::offTheMiddle);

  static Set<String> rowTables() {
    return ROWS.keySet();
  }

  @ParameterizedTest
  @MethodSource("rowTables")
  void rowsAreAsComputed(String title) {
    List<List<String>> rows = Notes.table(title).rows();
    assertFalse(rows.isEmpty());
    assertEquals(Notes.lines(rows.stream().map(ROWS.get(title)).toList()), Notes.lines(rows));
  }

  private static List<String> crooked(List<String> row) {
    double degrees = Double.parseDouble(row.get(0).replace("°", ""));
    Alignment alignment = new Alignment(degrees);
    double standard = new ErrorSource.CrookedFlight(alignment).at(SPEED.siDouble()).standard();
    return List.of(
        row.get(0),
        Notes.print("%.0f mm", 1000 * Math.tan(Math.toRadians(degrees))),
        Notes.print("%.2f %%", 100 * alignment.slow()),
        Notes.print("%.2f ft/s", 300 * (1 - alignment.slow())),
        Notes.print("%.2f ft/s", standard / FOOT));
  }

  private static double share(String spacing, String error) {
    return new ErrorSource.Spacing(Length.parse(spacing), Length.parse(error), ONE)
        .at(1)
        .standard();
  }

  private static List<String> misspaced(List<String> row) {
    return Stream.concat(
            Stream.of(row.get(0)),
            Stream.of("304.8 mm", "609.6 mm", "1219.2 mm")
                .map(spacing -> Notes.print("%.3f %%", 100 * share(spacing, row.get(0)))))
        .toList();
  }

  private static List<String> turnedRound(List<String> row) {
    double off = share("609.6 mm", row.get(0));
    return List.of(
        row.get(0),
        Notes.print("%.3f %%", 100 * off),
        Notes.print("%.2f ft/s", 300 * (1 + off - (1 - off))));
  }

  /** What the one way has too much the other has too little. */
  private static List<String> offTheMiddle(List<String> row) {
    return List.of(row.get(0), Notes.print("%.3f %%", 200 * share("304.8 mm", row.get(0))));
  }

  private static Drag drag(List<String> row) {
    return Drag.of(
        1.2, Double.parseDouble(row.get(2)), Length.parse(row.get(0)), Mass.parse(row.get(1)));
  }

  private static Drag least() {
    return drag(Notes.table("shaft").rows().get(0));
  }

  static Drag most() {
    List<List<String>> rows = Notes.table("shaft").rows();
    return drag(rows.get(rows.size() - 1));
  }

  private static List<String> slowed(List<String> row) {
    return Stream.concat(
            row.subList(0, SHAFT_COLUMNS).stream(),
            Stream.of(Notes.print("%.3f %%", 100 * drag(row).perMetre())))
        .toList();
  }

  @Test
  void theFirstArrowLosesLeastAndTheLastMost() {
    for (List<String> row : Notes.table("shaft").rows()) {
      assertTrue(least().perMetre() <= drag(row).perMetre(), row.toString());
      assertTrue(most().perMetre() >= drag(row).perMetre(), row.toString());
    }
  }

  private static List<String> farAway(List<String> row) {
    Length distance = Length.parse(row.get(0));
    return Stream.concat(
            Stream.of(row.get(0)),
            Stream.of(
                    least().at(distance, SPEED),
                    most().at(distance, SPEED),
                    least().atBow(distance, SPEED).orElseThrow(),
                    most().atBow(distance, SPEED).orElseThrow())
                .map(speed -> Notes.print("%.1f ft/s", speed.siDouble() / FOOT)))
        .toList();
  }

  static ErrorSource distance(String error, Drag drag) {
    return new ErrorSource.Distance(Length.parse(error), drag.perMetre(), Coverage.LIMITS);
  }

  private static List<String> displaced(List<String> row) {
    return Stream.concat(
            Stream.of(row.get(0)),
            Stream.of(least(), most())
                .map(drag -> distance(row.get(0), drag).at(SPEED.siDouble()).standard())
                .map(standard -> Notes.print("%.2f ft/s", standard / FOOT)))
        .toList();
  }

  /** Limits from OIML R 91 and ASTM F1544, as the page names them. */
  @Test
  void theExampleVerificationsEndAsThePageSays() {
    String page = "before-an-event.md";
    String toml = Notes.examples(page, "toml").get(0);
    Deviation bias = Deviation.parse(value(toml, "most_bias"));
    Deviation spread = Deviation.parse(value(toml, "most_spread"));
    List<ReferenceComparison.Outcome> outcomes = new ArrayList<>();
    for (int i = 0; i < 2; i++) {
      Notes.Table table = Notes.tables("shot").get(i);
      ReferenceComparison comparison =
          new ReferenceComparison(
              table.rows().stream()
                  .map(r -> new ReferenceComparison.Pair(feet(r.get(1)), feet(r.get(2))))
                  .toList());
      outcomes.add(comparison.against(bias, spread));
      assertEquals(
          comparison.inWords(bias, spread).toString(),
          Notes.examples(page, "text").get(i).replaceAll("\\s+", " "));
      assertEquals(
          IntStream.rangeClosed(1, table.rows().size()).mapToObj(String::valueOf).toList(),
          table.column(0));
      assertEquals(
          table.rows().stream()
              .map(
                  r ->
                      Notes.print("%+.1f", feet(r.get(1)).value().subtract(feet(r.get(2)).value())))
              .toList(),
          table.column(3));
      assertEquals(value(toml, "shots"), String.valueOf(table.rows().size()));
    }
    assertEquals(
        List.of(ReferenceComparison.Outcome.IN_LIMITS, ReferenceComparison.Outcome.OUT), outcomes);
  }

  private static Speed feet(String digits) {
    return Speed.parse(digits + " ft/s");
  }

  private static String value(String toml, String key) {
    Matcher line = Pattern.compile("(?m)^" + key + " = \"?([^\"\n]*)\"?$").matcher(toml);
    assertTrue(line.find(), key);
    return line.group(1);
  }
}
