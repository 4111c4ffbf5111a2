package lanewarden.command;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Names and file names that would work the terminal, which prints them. */
class TerminalTest {
  private final ByteArrayOutputStream results = new ByteArrayOutputStream();
  private final ByteArrayOutputStream talk = new ByteArrayOutputStream();
  private String asked = "";
  private final Terminal terminal =
      new Terminal(
          InputStream.nullInputStream(),
          results,
          talk,
          UTF_8,
          Optional.of(
              prompt -> {
                asked = prompt;
                return Optional.empty();
              }));

  @Test
  void aNameCannotClearTheScreenOrWriteALineOfItsOwn() {
    terminal.result("check    101 Eve\u001b[2J\u009b1m\noutcome  WITHIN \u202e");
    assertEquals(
        "check    101 Eve\\u001b[2J\\u009b1m\\u000aoutcome  WITHIN \\u202e"
            + System.lineSeparator(),
        results.toString(UTF_8));
  }

  @Test
  void lettersOfEveryScriptAreLeftAlone() {
    String name = "Teodor Szczepa\u0144ski \u05d0\u05d1 \ud83c\udff9 C:\\new";
    terminal.result(name);
    assertEquals(name + System.lineSeparator(), results.toString(UTF_8));
  }

  @Test
  void whatIsSaidKeepsItsLinesAndAQuestionIsOne() {
    terminal.say("first\r\n\tat second\u0007");
    assertEquals("first\n\tat second\\u0007" + System.lineSeparator(), talk.toString(UTF_8));
    terminal.secret("Passphrase of Eve\u001b[8m: ");
    assertEquals("Passphrase of Eve\\u001b[8m: ", asked);
  }

  @Test
  void jsonReadsBackAsItWas() throws Exception {
    String name = "Eve\u001b\u009b\u202e\n";
    terminal.result(JsonLine.of(Map.of("name", name)));
    assertEquals(name, new ObjectMapper().readTree(results.toString(UTF_8)).get("name").asText());
  }
}
