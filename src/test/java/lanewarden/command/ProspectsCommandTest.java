package lanewarden.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import lanewarden.bench.Caution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProspectsCommandTest {
  private static final String RULES = "src/test/resources/lanewarden/kiosk/clauses.toml";

  @Test
  void everyDivisionSaysWhatAwaitsTheSetUp() {
    Typed typed =
        new Typed()
            .run("prospects", RULES, "--arrow", "350", "--speed", "282", "--draw-weight", "60");
    assertEquals(0, typed.code(), typed.toString());
    for (String words :
        new String[] {
          "BH  Bowhunter\n  Not admitted: arrow mass 350 gr, at least 6 gr/lb × 60 lbf = 360 gr.",
          "LA  Light arrows\n  Passes without a shot; no limit applies",
          "NJ  Barebow\n  To be measured; up to 280 ft/s passes. The first check is passed",
          "A forecast, not a verdict. " + Caution.paragraph()
        }) {
      assertTrue(typed.results().contains(words), words + " in " + typed);
    }
  }

  @Test
  void aMachineGetsTheChances() throws Exception {
    Typed typed =
        new Typed()
            .run(
                "prospects",
                RULES,
                "--arrow",
                "360 gr",
                "--shots",
                "377.5: 272, 273 271",
                "--shots",
                "350 gr: 284 283 285 ft/s",
                "--division",
                "NJ",
                "--json");
    assertEquals(0, typed.code(), typed.toString());
    JsonNode answer = new ObjectMapper().readTree(typed.results());
    JsonNode division = answer.get("divisions").get(0);
    assertEquals("measured", division.get("prospect").asText());
    double within = division.get("within").asDouble();
    assertTrue(within > 0.2 && within < 0.95, typed.results());
    assertTrue(answer.get("setUp").toString().contains("noise and is not used"), typed.results());
    assertEquals(Caution.values().length, answer.get("cautions").size());
    assertEquals("A forecast, not a verdict.", answer.get("noVerdict").asText());
    assertTrue(answer.get("supposed").asText().startsWith("Supposed of the check"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--arrow 350|BROUGHT-UNREADABLE",
        "--arrow 350 --speed 280 --shots 350:280|BROUGHT-UNREADABLE",
        "--arrow 350 --speed quick|BROUGHT-UNREADABLE",
        "--arrow 350 --shots 350;280|BROUGHT-UNREADABLE",
        "--arrow 350 --shots 0:280|BROUGHT-UNREADABLE",
        "--arrow 350 --shots 350:280..1|BROUGHT-UNREADABLE",
        "--arrow 350 --speed 280 --draw-curve 7in|BROUGHT-UNREADABLE",
        "--arrow 400 --shots 22.7:280,281|BROUGHT-UNREADABLE",
        "--arrow heavy --speed 280|SET-UP-UNREADABLE",
        "--arrow 350 --speed 280 --scatter wide|BROUGHT-UNREADABLE"
      })
  void whatCannotBeReadIsToldWithItsMend(String options, String code) {
    Typed typed = new Typed().run(("prospects " + RULES + " " + options).split(" ", -1));
    assertEquals(2, typed.code(), typed.toString());
    assertTrue(typed.talk().contains(code), typed.toString());
  }
}
