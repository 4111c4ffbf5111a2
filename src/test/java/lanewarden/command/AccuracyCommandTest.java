package lanewarden.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AccuracyCommandTest {
  @TempDir Path here;

  @Test
  void tellsTheBudgetOfTheExample() {
    // Worked out by hand beside the program, from the GUM's formulas (v = L/t)
    Typed typed = new Typed().run("accuracy", "config/station.toml");
    assertEquals(0, typed.code(), typed.toString());
    assertEquals(
        """
        influence     standard     degrees   from
        clock rate    0.0173 ft/s  infinite  clock rate ± 0.01 % (limits)
        gate spacing  0.1421 ft/s  infinite  spacing 609.6 mm ± 0.5 mm (limits)
        gate timing   0.0735 ft/s  infinite  each gate ± 2.000 µs (limits) over 609.6 mm
        clock tick    0.0184 ft/s  infinite  ticks of 1.000 µs over 609.6 mm
        display step  0.0289 ft/s  infinite  display in steps of 0.1 ft/s
        alignment     0.1055 ft/s  infinite  flight up to 2.0° off the line of the gates, reads up to 0.06 % slow
        distance      0.0741 ft/s  infinite  distance ± 0.2 m (limits)
        combined: standard uncertainty 0.2090 ft/s at 300 ft/s; expanded 0.4096 ft/s at 95 % (k = 1.96, infinite degrees of freedom)
        """
            .lines()
            .toList(),
        typed.lines());
  }

  @Test
  void answersAMachineInTheUnitOfTheSpeed() throws Exception {
    Typed typed =
        new Typed().run("accuracy", "config/station.toml", "--speed", "91.44 m/s", "--json");
    JsonNode answer = new ObjectMapper().readTree(typed.results());
    // 0.208977 ft/s and 0.142065 ft/s, see the other test, times 0.3048
    assertEquals("0.0637 m/s", answer.get("standard").asText());
    assertEquals("0.0433 m/s", answer.get("influences").get(1).get("standard").asText());
    assertEquals(1.96, answer.get("factor").asDouble());
    assertTrue(answer.path("degrees").isMissingNode(), typed.results());
  }

  @ParameterizedTest
  @CsvSource({
    "fast, write digits with a decimal point",
    "300, add the unit",
    "0 ft/s, give the speed of an arrow"
  })
  void aSpeedThatMakesNoSenseIsRefused(String speed, String mend) {
    Typed typed = new Typed().run("accuracy", "config/station.toml", "--speed", speed);
    assertEquals(2, typed.code());
    assertTrue(typed.talk().contains(mend), typed.talk());
  }

  @Test
  void settingsThatSayNothingOfItAreRefusedWithWhatToAdd() throws Exception {
    Path plain =
        Files.writeString(
            here.resolve("station.toml"),
            "format = 1\nstation = \"A\"\nprofile = \"p.toml\"\ninstrument = \"simulator\"\n");
    Typed typed = new Typed().run("accuracy", here.toString());
    assertEquals(2, typed.code());
    assertTrue(typed.talk().contains("Add a section [accuracy]"), typed.talk());
    assertEquals(2, new Typed().run("accuracy", plain + ".not").code());
  }
}
