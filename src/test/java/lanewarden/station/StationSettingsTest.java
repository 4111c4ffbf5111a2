package lanewarden.station;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import lanewarden.metrology.ErrorSource;
import lanewarden.written.WrittenFault;
import lanewarden.written.WrittenRefused;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StationSettingsTest {
  private static final String FIRST =
      """
      format = 1
      station = "North gate"
      profile = "gate-timer.toml"
      instrument = "serial"
      port = "COM3"
      """;

  private static StationSettings read(String text) throws WrittenRefused {
    return StationSettings.read("station.toml", text.getBytes(UTF_8));
  }

  /** The faults in one line each: place, what was expected, what was found, what to do. */
  private static List<String> faults(String tables) {
    return assertThrows(WrittenRefused.class, () -> read(FIRST + tables)).faults().stream()
        .map(StationSettingsTest::line)
        .toList();
  }

  private static String line(WrittenFault fault) {
    return fault.line() + " " + fault;
  }

  private static String example() throws Exception {
    return Files.readString(Path.of("config/station.toml"));
  }

  /** The example with its sections [second] and [verification] in use. */
  private static String inSeries() throws Exception {
    String text = example();
    int from = text.indexOf("#[second]");
    return text.substring(0, from) + text.substring(from).replaceAll("(?m)^#(?=\\S)", "");
  }

  @Test
  void theExampleReadsAsItIsAndWithASecondInstrument() throws Exception {
    StationSettings plain = read(example());
    assertEquals(7, plain.accuracy().orElseThrow().sources().size());
    assertEquals("3 m", plain.place().orElseThrow().distance().toString());
    assertEquals(Optional.empty(), plain.second());
    SecondInstrument second = read(inSeries()).second().orElseThrow();
    assertEquals("/dev/ttyUSB1", second.port());
    assertEquals(Duration.ofSeconds(1), second.within());
    assertEquals(Optional.empty(), plain.verification());
    assertTrue(read(inSeries()).verification().orElseThrow().beforeOpening());
    assertEquals(Optional.empty(), plain.timeStamp());
    assertEquals("https://stamps.example/tsa", read(inSeries()).timeStamp().orElseThrow());
  }

  @Test
  void theExampleShowsWhatIsStatedForTheWholeToo() throws Exception {
    String text =
        example()
            .replaceAll("(?m)^(spacing|clock|gate).*\n", "")
            .replaceAll("(?m)^#(?=stated)", "");
    assertTrue(
        read(text).accuracy().orElseThrow().sources().stream()
            .anyMatch(ErrorSource.StatedAccuracy.class::isInstance),
        text);
  }

  @Test
  void readsBackWhatItWrites() throws Exception {
    StationSettings settings = read(inSeries());
    assertEquals(settings, read(settings.toToml()));
    StationSettings stated =
        read(
            FIRST
                + "[accuracy]\nstated = \"2 ft/s\"\nstated_covers = \"k = 2.5\"\n"
                + "alignment = \"0.25 °\"\n[place]\ndistance = \"9.5 ft\"\n");
    assertEquals(stated, read(stated.toToml()));
    StationSettings fine =
        read(
            FIRST
                + "[accuracy]\nspacing = \"1 ft\"\nclock_tick = \"63 ns\"\n"
                + "gate_jitter = \"0.5 us\"\ngate_jitter_covers = \"limits\"\n");
    assertEquals(fine, read(fine.toToml()));
    assertFalse(new StationSettings("A", "p", fine.kind(), "COM1").toToml().contains("["));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\u0001',
      value = {
        "[time_stamp];url = \"stamps.example\"|write it with http:// or https:// in front",
        "[time_stamp]|url",
        "[accuracy]|at least one thing known of the instrument's errors",
        "[accuracy];display_step = \"0.1 ft/s\";aligment = \"2°\"|did you mean alignment?",
        "[accuracy];display_step = \"0 ft/s\"|a speed above zero",
        "[accuracy];display_step = 0.1|write it in double quotes",
        "[accuracy];stated = \"1 %\"|add stated_covers = …",
        "[accuracy];stated = \"1 %\";stated_covers = \"mostly\"|write \"limits\" if no error is ever",
        "[accuracy];stated = \"0 %\";stated_covers = \"limits\"|write how large it can be",
        "[accuracy];stated_covers = \"limits\";display_step = \"1 ft/s\"|there is no stated",
        "[accuracy];stated = \"1 %\";stated_covers = \"limits\";clock_rate = \"1 %\"|left out: stated covers it",
        "[accuracy];spacing = \"1 ft\";display_step = \"1 ft/s\"|needs it",
        "[accuracy];clock_tick = \"1 µs\"|add spacing = …",
        "[accuracy];spacing = \"1 ft\";clock_tick = \"62.5 ns\"|round it up",
        "[accuracy];spacing = \"1 ft\";clock_tick = \"1 s\"|then ns, µs or ms",
        "[accuracy];spacing = \"1 ft\";spacing_error = \"0.3 ms\";spacing_error_covers = \"limits\"|0.3 ms",
        "[accuracy];spacing = \"1 ft\";spacing_error = \"1 ft\";spacing_error_covers = \"limits\"|a length less than spacing, 1 ft",
        "[accuracy];spacing = \"30 cm\";spacing_error = \"3 m\";spacing_error_covers = \"k = 2\"|check both figures and their units",
        "[accuracy];distance_error = \"3 m\";distance_error_covers = \"limits\";[place];distance = \"3 m\"|a length less than the distance, 3 m",
        "[accuracy];display_stp = \"0.1 ft/s\"|did you mean display_step?",
        "[accuracy];colour = \"red\"|the unknown key colour",
        "[accuracy];alignment = \"60°\"|up to 45°",
        "[accuracy];alignment = 2|write it in double quotes",
        "[accuracy];distance_error = \"0.1 m\";distance_error_covers = \"limits\"|add [place] with the distance",
        "[place]|add distance = …",
        "[place];distance = \"0 m\"|measure it",
        "[place];distance = \"3 m\";air_density = \"1.2\"|a density such as",
        "[place];distance = \"3 m\";drag_coefficient = \"0\"|a number above zero",
        "[place];distance = \"3 m\";shaft_diameter = \"7 m\"|3 mm to 15 mm, found \"7 m\"",
        "[place];distance = \"3 m\";shaft_diameter = \"0.7 mm\"|3 mm to 15 mm, found \"0.7 mm\"",
        "[place];distance = \"3 km\"|distance",
        "[place];distance = \"300 m\"|at most 100 m, found \"300 m\"",
        "[place];distance = \"3 m\";drag_coefficient = \"18\"|0.1 to 10, found \"18\"",
        "[place];distance = \"3 m\";air_density = \"120 kg/m³\"|0.5 to 1.5, found \"120 kg/m³\"",
        "[accuracy];stated = \"50 %\";stated_covers = \"limits\"|at most 10 % or 30 ft/s, found \"50 %\"",
        "[accuracy];stated = \"40 ft/s\";stated_covers = \"limits\"|at most 10 % or 30 ft/s, found \"40 ft/s\"",
        "[accuracy];clock_rate = \"11 %\";clock_rate_covers = \"limits\"|at most 10 %, found \"11 %\"",
        "[accuracy];display_step = \"100 ft/s\"|at most 30 ft/s, found \"100 ft/s\"",
        "[accuracy];spacing = \"609 m\";clock_tick = \"1 µs\"|1 cm to 20 m, found \"609 m\"",
        "[accuracy];spacing = \"609 mm\";clock_tick = \"2 ms\"|at most 1 ms, found \"2 ms\"",
        "[second];profile = \"p\";instrument = \"serial\";port = \"COM4\";agree = \"0 %\";within_ms = 500|a share or a speed above zero",
        "[second];profile = \"p\";instrument = \"serial\";port = \"COM4\";agree = \"100 %\";within_ms = 500|at most 10 % or 30 ft/s, found \"100 %\"",
        "[second]|add agree = …",
        "[second];profile = \"p\";instrument = \"simulator\";agree = \"1 %\";within_ms = 500|a simulated instrument confirms no arrow",
        "[second];profile = \"p\";instrument = \"serial\";port = \"COM3\";agree = \"1 %\";within_ms = 500|another port than the first",
        "[second];profile = \"../p\";instrument = \"serial\";port = \"COM4\";agree = \"1 %\";within_ms = 500|without a path",
        "[second];profile = \"p\";instrument = \"serial\";port = \"COM4\";agree = \"1\";within_ms = 500|agree",
        "[second];profile = \"p\";instrument = \"serial\";port = \"COM4\";agree = \"1 %\";within_ms = 0|from 1 to 10000"
      })
  void whatIsWrongIsSaidOnceWithItsMend(String tables, String said) {
    List<String> faults = faults(tables.replace(';', '\n') + "\n");
    assertTrue(faults.stream().anyMatch(fault -> fault.contains(said)), faults.toString());
    boolean whole = tables.equals("[second]");
    assertEquals(whole ? 4 : 1, faults.size(), faults.toString());
  }
}
