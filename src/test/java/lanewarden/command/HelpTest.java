package lanewarden.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class HelpTest {

  static Set<String> commands() {
    return new Typed().table().names();
  }

  @ParameterizedTest
  @MethodSource("commands")
  void everyCommandSaysHowItIsUsed(String command) {
    Typed typed = new Typed().run(command, "--help");
    assertEquals(0, typed.code(), typed.toString());
    assertTrue(typed.results().startsWith("Usage: lanewarden " + command), typed.toString());
    assertEquals("", typed.talk());
  }

  @Test
  void theProgramListsItsCommandsAndExitCodes() {
    Typed typed = new Typed().run("--help");
    assertEquals(0, typed.code());
    assertTrue(typed.results().contains("verify"), typed.toString());
    assertTrue(typed.results().contains("3 a proof or verification failed"), typed.toString());
  }

  @Test
  void saysItsNameAndVersion() {
    Typed typed = new Typed().run("--version");
    assertEquals("Lanewarden under test", typed.results().strip());
  }

  @ParameterizedTest
  @EnumSource(LineWord.class)
  void theHelpOfTheLineListsEveryWord(LineWord word) {
    String help = new Typed().run("line", "--help").results();
    assertTrue(help.contains("\n  " + word.name().toLowerCase(java.util.Locale.ROOT)), help);
  }

  @ParameterizedTest
  @ValueSource(strings = {"lign", "line", "verify --hed 1", "demo --pace slow", "listen"})
  void wrongUsageIsAnsweredWithFourLinesAndExitCode2(String typedLine) {
    Typed typed = new Typed().run(typedLine.split(" "));
    assertEquals(2, typed.code(), typed.toString());
    assertEquals("", typed.results());
    assertEquals(4, typed.talk().strip().lines().count(), typed.talk());
    assertTrue(typed.talk().contains("--help"), typed.talk());
  }
}
