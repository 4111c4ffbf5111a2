package lanewarden;

import static lanewarden.HardwareNotesTest.distance;
import static lanewarden.HardwareNotesTest.most;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import lanewarden.metrology.Alignment;
import lanewarden.metrology.Coverage;
import lanewarden.metrology.ErrorSource;
import lanewarden.metrology.ReadingUncertainty;
import lanewarden.metrology.UncertaintyBudget;
import lanewarden.quantity.Length;
import lanewarden.quantity.Percent;
import lanewarden.quantity.Speed;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

/** The error budgets, the parts and the drawings of the reference timer. */
class ReferenceTimerTest {
  private static final Speed SPEED = Speed.parse("300 ft/s");

  private static final double FOOT = 0.3048;

  private static final Length WAY = Length.parse("609.6 mm");

  static final Set<String> BUDGETS = Set.of("two gates: because of", "three gates: because of");

  private static List<ErrorSource> sources(boolean withDisplay) {
    List<ErrorSource> sources =
        new ArrayList<>(
            List.of(
                new ErrorSource.Spacing(WAY, Length.parse("0.2 mm"), Coverage.LIMITS),
                new ErrorSource.Spacing(WAY, Length.parse("0.3 mm"), Coverage.LIMITS),
                new ErrorSource.ClockRate(Percent.parse("0.01 %"), Coverage.LIMITS),
                new ErrorSource.GateJitter(WAY, Duration.ofNanos(3_000), Coverage.LIMITS),
                new ErrorSource.ClockTick(WAY, Duration.ofNanos(1_000)),
                new ErrorSource.DisplayStep(Speed.parse("0.1 ft/s")),
                new ErrorSource.CrookedFlight(new Alignment(3)),
                distance("0.1 m", most())));
    if (!withDisplay) {
      sources.removeIf(s -> s instanceof ErrorSource.DisplayStep);
    }
    return sources;
  }

  @Test
  void budgetsAreAsTheProgramComputesThem() {
    for (String title : BUDGETS) {
      List<List<String>> rows = Notes.table(title).rows();
      ReadingUncertainty uncertainty = new ReadingUncertainty(sources(title.startsWith("two")));
      UncertaintyBudget one = uncertainty.at(SPEED);
      UncertaintyBudget three = uncertainty.atMeanOf(3, SPEED);
      List<List<String>> expected = new ArrayList<>();
      for (int i = 0; i < one.influences().size(); i++) {
        UncertaintyBudget.Influence influence = one.influences().get(i);
        expected.add(
            List.of(
                i < rows.size() ? rows.get(i).get(0) : "",
                influence.name(),
                influence.words(),
                Notes.print("%.3f", influence.standard() / FOOT),
                Notes.print("%.3f", three.influences().get(i).standard() / FOOT)));
      }
      expected.add(
          List.of(
              "standard uncertainty",
              "",
              "",
              Notes.print("%.3f", one.combined() / FOOT),
              Notes.print("%.3f", three.combined() / FOOT)));
      expected.add(
          List.of(
              "expanded, 95 %",
              "",
              "",
              Notes.print("%.2f", one.expanded(0.95) / FOOT),
              Notes.print("%.2f", three.expanded(0.95) / FOOT)));
      assertEquals(Notes.lines(expected), Notes.lines(rows));
    }
  }

  /**
   * Own arithmetic: Ohm's law on the values of the parts; between two sensors a shaft shades the
   * gap first, then of both together as much as one needs. Of a rectangular hole the shade grows
   * evenly, so it does not matter how the shaft lies; of a round one it is least where both are
   * shaded alike.
   */
  @Test
  void theGateWorksAtTheValuesOfItsParts() {
    double branch =
        (part("supply of the emitters")
                - part("emitters in one branch") * forward()
                - part("voltage across the switch"))
            / part("resistor of a branch");
    double gate = branch * part("branches of one gate");
    double supply = part("supply of sensors, comparator and microcontroller");
    double shadow = part("light current of each") * part("load");
    double signal = shadow * part("phototransistors of one gate");
    double series = part("resistor of the average");
    double down = part("resistor that sets the threshold");
    double input = part("resistor into the comparator");
    double back = part("resistor of the hysteresis");
    double threshold = signal * (1 - down / (down + series) * back / (back + input));
    double average = series * down / (series + down) * part("capacitor of the average");
    double hole = part("hole in front of each");
    double gap = part("from one phototransistor to the next") - hole;
    List<List<String>> expected =
        List.of(
            List.of("current of a branch", Notes.print("%.1f mA", branch * 1e3)),
            List.of("emitters of one gate", Notes.print("%.0f mA", gate * 1e3)),
            List.of("emitters of three gates", Notes.print("%.0f mA", 3 * gate * 1e3)),
            List.of("signal without a shadow", Notes.print("%.2f V", signal)),
            List.of("one sensor wholly shaded", Notes.print("%.0f mV less", shadow * 1e3)),
            List.of("threshold below the signal", Notes.print("%.0f mV", threshold * 1e3)),
            List.of("hysteresis", Notes.print("%.0f mV", supply * input / (input + back) * 1e3)),
            List.of(
                "shade that triggers, in parts of one sensor",
                Notes.print("%.2f", threshold / shadow)),
            List.of(
                "thinnest shaft that triggers between two sensors, rectangular holes",
                Notes.print("%.1f mm", (gap + threshold / shadow * hole) * 1e3)),
            List.of(
                "the same, round holes of this width",
                Notes.print("%.1f mm", (gap + 2 * hole * deep(threshold / shadow / 2)) * 1e3)),
            List.of("time constant of the average", Notes.print("%.0f ms", average * 1e3)));
    assertEquals(Notes.lines(expected), Notes.lines(Notes.table("what").rows()));
    assertTrue(threshold < shadow, "one shaded sensor triggers");
    assertTrue(3 * gate < 0.5, "a USB socket can feed three gates");
  }

  /**
   * How deep a straight shadow reaches into a round hole, in parts of its width, when it covers
   * this share of it: found by halving from the area of a segment of a circle.
   */
  private static double deep(double share) {
    double least = 0;
    double most = 1;
    for (int i = 0; i < 50; i++) {
      double depth = (least + most) / 2;
      double angle = 2 * Math.acos(1 - 2 * depth);
      if ((angle - Math.sin(angle)) / (2 * Math.PI) < share) {
        least = depth;
      } else {
        most = depth;
      }
    }
    return least;
  }

  private static String partWords(String name) {
    return Notes.table("part").rows().stream()
        .filter(r -> r.get(0).equals(name))
        .map(r -> r.get(1))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no part " + name));
  }

  private static double part(String name) {
    return si(partWords(name));
  }

  private static double forward() {
    Matcher volts =
        Pattern.compile("([0-9.]+) V each").matcher(partWords("emitters in one branch"));
    assertTrue(volts.find());
    return Double.parseDouble(volts.group(1));
  }

  /** The number that a value begins with, in SI. */
  private static double si(String value) {
    Matcher written =
        Pattern.compile("([0-9.]+)(?: ([µmkM]?)(?:[AVΩF]|(?<=m)m).*|\\D.*)?").matcher(value);
    assertTrue(written.matches(), value);
    String prefix = written.group(2) == null ? "" : written.group(2);
    double times =
        switch (prefix) {
          case "µ" -> 1e-6;
          case "m" -> 1e-3;
          case "k" -> 1e3;
          case "M" -> 1e6;
          default -> 1;
        };
    return Double.parseDouble(written.group(1)) * times;
  }

  @Test
  void theDrawingsShowThePartsAndTheMeasuresOfTheText() throws Exception {
    Set<String> twoGates = labels("two-gate-timer.svg");
    for (List<String> part : Notes.table("part").rows()) {
      if (part.get(1).endsWith("Ω") || part.get(1).endsWith("F")) {
        assertTrue(twoGates.contains(part.get(1)), part.toString());
      }
    }
    assertTrue(twoGates.containsAll(Set.of("+5 V", "+3.3 V")), twoGates.toString());
    Set<String> threeGates = labels("three-gate-timer.svg");
    assertTrue(
        threeGates.containsAll(Set.of("304.8 mm", "609.6 mm", "64000", "01796", "05128")),
        threeGates.toString());
    assertTrue(
        threeGates.contains((65_536 - 64_000 + 1_796) + " µs")
            && threeGates.contains((5_128 - 1_796) + " µs"),
        threeGates.toString());
  }

  /** The texts of a drawing, which must have a title and a description. */
  private static Set<String> labels(String drawing) throws Exception {
    Element root =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new ByteArrayInputStream(Notes.text(drawing).getBytes(StandardCharsets.UTF_8)))
            .getDocumentElement();
    for (String name : List.of("title", "desc")) {
      assertFalse(
          root.getElementsByTagName(name).item(0).getTextContent().isBlank(), drawing + " " + name);
    }
    var texts = root.getElementsByTagName("text");
    return IntStream.range(0, texts.getLength())
        .mapToObj(i -> texts.item(i).getTextContent())
        .collect(Collectors.toSet());
  }
}
