package lanewarden.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The rule cases of {@code judged-cases.txt}, each with its source there. */
class JudgedCasesTest {

  static List<String> cases() throws IOException {
    return Files.readAllLines(Path.of("src/test/resources/lanewarden/rules/judged-cases.txt"))
        .stream()
        .filter(line -> !line.startsWith("#"))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void givesTheOutcomeAndTheReason(String line) {
    String[] part = line.split(" +\\| ", -1);
    Rule rule =
        Cases.rule(
            part[3],
            part[4],
            part[5],
            Integer.parseInt(part[6]),
            Integer.parseInt(part[7]),
            Integer.parseInt(part[8]));
    Verdict verdict = Cases.judge(rule, Cases.shots(part[9]));
    assertEquals(part[10] + ": " + part[11], verdict.word() + ": " + verdict.reason());
  }
}
