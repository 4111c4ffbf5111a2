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
  void saysHowMuchOfTheTimeALaneIsTaken() {
    // 2 erlang on 3 servers: two thirds
    Typed typed = run("--competitors 60 --minutes 60 --lanes 3 --shots 4 --seconds 25 --change 20");
    assertTrue(
        typed.lines().contains("busy     a lane is taken 67 % of the time"), typed.toString());
  }

  @Test
  void saysWhatARandomShareFinds() throws Exception {
    // hypergeometric: 1 - C(18,5)/C(20,5) = 1 - (15 * 14)/(20 * 19)
    Typed typed = run("--competitors 20 --minutes 60 --drawn 5 --over 2 --caught 100% --json");
    JsonNode answer = new ObjectMapper().readTree(typed.results());
    assertEquals(1 - 15.0 * 14 / (20 * 19), answer.get("finds").asDouble(), 1e-12);
  }

  @Test
  void saysThatOneLaneCannotCopeAndWhatItFindsAllTheSame() {
    // 3 x 5 s + 10 s are 25 s a check; an hour has 144 of them, and 12.9 s for each of 280
    Typed typed =
        run(
            "--competitors 280 --minutes 60 --lanes 1 --shots 3 --seconds 5 --change 10 --over 1"
                + " --caught 100%");
    assertEquals(0, typed.code(), typed.toString());
    assertEquals(
        """
        check    takes 25 s on a lane; for 280 to be checked in time it may take 13 s
        lanes    1 lane can check 144 in 60 minutes if never idle; for the line not to grow, 2 are needed
        busy     a lane is taken 100 % of the time
        waiting  the line grows as long as archers come
        sample   280 of 280 checked would find at least one of 1 over the limit 100.0 times in 100
        sample   but there is time for 144 only: those find one 51.4 times in 100
        sample   to find one 90 times in 100, draw 252, more than there is time for
        """
            .lines()
            .toList(),
        typed.lines());
  }

  @Test
  void saysWhenNobodyIsToBeFoundAndWhenNobodyCanBe() {
    assertTrue(run("--competitors 20 --minutes 60 --over 0").results().contains("nobody is over"));
    assertTrue(
        run("--competitors 20 --minutes 60 --over 1 --caught 50%")
            .results()
            .contains("sample   not even checking all finds one 90 times in 100"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "--competitors 0 --minutes 60",
        "--competitors 10 --minutes 0",
        "--competitors 10 --minutes NaN",
        "--competitors 10 --minutes 60 --drawn 11",
        "--competitors 10 --minutes 60 --over 11",
        "--competitors 10 --minutes 60 --caught 2",
        "--competitors 10 --minutes 60 --caught 101%",
        "--competitors 10 --minutes 60 --shots 0",
        "--competitors 10 --minutes 60 --seconds fast",
        "--competitors 10 --minutes 60 --change 1e3",
        "--competitors 10 --minutes 60 --lanes 0"
      })
  void aNumberThatMakesNoSenseIsRefusedByTheNameOfItsOption(String typed) {
    Typed refused = run(typed);
    assertEquals(2, refused.code(), refused.toString());
    String[] words = typed.split(" ");
    String wrong = words[words[1].equals("0") ? 0 : words.length - 2];
    assertTrue(refused.talk().contains("why: " + wrong + " is "), refused.talk());
    assertTrue(refused.talk().contains("Correct what is named."), refused.talk());
  }

  @Test
  void allNumbersThatMakeNoSenseAreToldAtOnce() {
    Typed refused = run("--competitors 10 --minutes 0 --lanes 101 --over 11 --caught 0%");
    assertTrue(
        refused
            .talk()
            .contains(
                """
                why: --minutes is "0": write a number more than zero.
                       --lanes is "101": write a whole number, 1 to 100.
                       --over is "11": write a whole number, zero to all competitors.
                       --caught is "0%": write a percentage more than zero, such as 90 %.
                """
                    .stripTrailing()),
        refused.talk());
  }
}
