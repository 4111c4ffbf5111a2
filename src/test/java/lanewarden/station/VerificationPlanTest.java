package lanewarden.station;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.OptionalInt;
import lanewarden.written.WrittenRefused;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VerificationPlanTest {
  private static final String STATION =
      "format = 1\nstation = \"A\"\nprofile = \"p.toml\"\ninstrument = \"simulator\"\n";
  private static final String WHOLE =
      "before_opening = true\nevery = 20\nat_end = true\nshots = 5\nmost_bias = \"0.5 %\"\n"
          + "most_spread = \"1 ft/s\"\nreference = \"check bow\"\nspeed = \"296.4 ft/s\"\n";

  private static StationSettings read(String table) throws WrittenRefused {
    return StationSettings.read(
        "station.toml", (STATION + "[verification]\n" + table).getBytes(UTF_8));
  }

  @Test
  void readsBackWhatItWrites() throws Exception {
    StationSettings settings = read(WHOLE);
    assertEquals(OptionalInt.of(20), settings.verification().orElseThrow().every());
    assertEquals(settings, StationSettings.read("station.toml", settings.toToml().getBytes(UTF_8)));
  }

  @Test
  void whatIsLeftOutIsNeverDueAndTakesThreeShots() throws Exception {
    VerificationPlan plan =
        read("most_bias = \"1 %\"\nmost_spread = \"1 %\"\nreference = \"second instrument\"\n")
            .verification()
            .orElseThrow();
    assertEquals(3, plan.shots());
    assertTrue(!plan.beforeOpening() && !plan.atEnd() && plan.every().isEmpty());
  }

  @Test
  void theTableInTheReadmeIsRight() throws Exception {
    String readme = Files.readString(Path.of("README.md"));
    int from = readme.indexOf("[verification]\n");
    String table = readme.substring(from, readme.indexOf("```", from));
    byte[] file = (STATION + table).getBytes(UTF_8);
    assertTrue(StationSettings.read("station.toml", file).verification().isPresent());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "before_opening = true | before_opening = 1 | true or false",
        "shots = 5 | shots = 1 | a whole number from 2 to 20",
        "every = 20 | every = 0 | a whole number from 1 to 10000",
        "reference = \"check bow\" | reference = \"second instrument\" | left out",
        "speed = \"296.4 ft/s\" | # | the speed of the check bow",
        "most_bias = \"0.5 %\" | most_bias = \"0.5\" | most_bias",
        "at_end = true | at_close = true | the unknown key at_close"
      })
  void aFaultIsNamedAtItsPlace(String right, String wrong, String says) {
    WrittenRefused refused =
        assertThrows(WrittenRefused.class, () -> read(WHOLE.replace(right, wrong)));
    assertTrue(String.valueOf(refused.getMessage()).contains(says), refused.getMessage());
  }
}
