package lanewarden.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlanCommandTest {

  private static Typed run(String typed) {
    return new Typed().run(("plan " + typed).split(" "));
  }

  @Test
  void saysHowLongArchersWait() throws Exception {
    // 60 archers in 60 minutes, 2 minutes each, 3 lanes: 2 erlang on 3 servers wait 4 times in 9
    // (Erlang C, seen), then 120 s / (3 - 2) of waiting for those who wait.
    Typed typed =
        run("--competitors 60 --minutes 60 --lanes 3 --shots 4 --seconds 25 --change 20 --json");
    assertEquals(0, typed.code(), typed.toString());
    JsonNode answer = new ObjectMapper().readTree(typed.results());
    assertEquals(4.0 / 9, answer.get("waitProbability").asDouble(), 1e-12);
    assertEquals(4.0 / 9 * 120, answer.get("waitSeconds").asDouble(), 1e-9);
  }

  @Test
  void saysWhatARandomShareFinds() throws Exception {
    // hypergeometric: 1 - C(18,5)/C(20,5) = 1 - (15 * 14)/(20 * 19)
    Typed typed = run("--competitors 20 --minutes 60 --drawn 5 --over 2 --json");
    JsonNode answer = new ObjectMapper().readTree(typed.results());
    assertEquals(1 - 15.0 * 14 / (20 * 19), answer.get("finds").asDouble(), 1e-12);
  }

  @Test
  void saysThatOneLaneCannotCope() {
    Typed typed = run("--competitors 280 --minutes 60");
    assertEquals(0, typed.code(), typed.toString());
    assertTrue(typed.results().contains("the line grows as long as archers come"), typed.results());
    assertTrue(typed.results().contains("which needs 6 lane(s)"), typed.results());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "--competitors 0 --minutes 60",
        "--competitors 10 --minutes 0",
        "--competitors 10 --minutes 60 --drawn 11",
        "--competitors 10 --minutes 60 --over 11",
        "--competitors 10 --minutes 60 --caught 2",
        "--competitors 10 --minutes 60 --lanes 0"
      })
  void aNumberThatMakesNoSenseIsRefused(String typed) {
    Typed refused = run(typed);
    assertEquals(2, refused.code(), refused.toString());
    assertTrue(refused.talk().contains("Correct that number."), refused.talk());
  }
}
