package lanewarden.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lanewarden.quantity.Percent;
import lanewarden.quantity.Speed;
import lanewarden.written.WrittenRefused;
import org.junit.jupiter.api.Test;

class RuleBookTest {

  private static RuleBook read(String path) throws IOException, WrittenRefused {
    return RuleBook.read(path, Files.readAllBytes(Path.of(path)));
  }

  @Test
  void readsTheExampleToCopy() throws Exception {
    RuleBook book = read("config/rule-book.toml");
    assertEquals("Example Meadow Open", book.event());
    assertEquals("2026-1", book.edition());
    assertEquals(
        List.of(
            new Division(
                "OC",
                "Open compound",
                asking(
                    "10 ft/s",
                    Cases.rule(
                        Speed.parse("300 ft/s"),
                        new Tolerance.Share(Percent.parse("3 %")),
                        new ShotPlan(3, 5, 1),
                        new Decision.Mean(),
                        1)),
                Coverage.everyone(),
                new Origin(null, null, null, null)),
            new Division(
                "TR",
                "Traditional",
                Cases.rule(
                    Speed.parse("70 m/s"),
                    new Tolerance.None(),
                    new ShotPlan(3, 4, 1),
                    new Decision.WithinCount(2),
                    0),
                Coverage.everyone(),
                new Origin(null, null, null, null))),
        book.divisions());
  }

  /** The same rule, in which the official is asked about a jump. */
  private static Rule asking(String jump, Rule rule) {
    return new Rule(
        rule.speed(),
        rule.energy(),
        rule.equipment(),
        rule.shooting()
            .map(
                how ->
                    new Shooting(
                        how.plan(),
                        how.decision(),
                        how.treatment(),
                        how.spread(),
                        new Screening(Optional.of(Speed.parse(jump)), Optional.empty()))),
        rule.aftermath(),
        rule.conditions());
  }

  @Test
  void demoEventTriesEveryWayToDecide() throws Exception {
    List<Division> divisions = read("demo-data/rule-book.toml").divisions();
    assertEquals(
        List.of("Mean", "Highest", "Median", "FirstWithin", "WithinCount"),
        divisions.stream()
            .map(d -> d.rule().shooting().orElseThrow().decision().getClass().getSimpleName())
            .toList());
    assertEquals(
        "ft/s ft/s m/s m/s ft/s",
        divisions.stream().map(d -> d.rule().unit().symbol()).collect(Collectors.joining(" ")));
  }

  @Test
  void divisionIsFoundByItsExactCode() throws Exception {
    RuleBook book = read("demo-data/rule-book.toml");
    assertEquals("Longbow", book.division("LB").orElseThrow().name());
    assertEquals(Optional.empty(), book.division("lb"));
  }

  @Test
  void textAndHashAreThoseOfTheFile() throws Exception {
    byte[] bytes = Files.readAllBytes(Path.of("config/rule-book.toml"));
    for (byte[] file : List.of(bytes, withByteOrderMark(bytes))) {
      RuleBook book = RuleBook.read("rule-book.toml", file);
      byte[] text = book.text().getBytes(StandardCharsets.UTF_8);
      assertEquals(HexFormat.of().formatHex(file), HexFormat.of().formatHex(text));
      assertEquals(
          HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(text)),
          book.sha256());
    }
  }

  private static byte[] withByteOrderMark(byte[] bytes) {
    return ("\uFEFF" + new String(bytes, StandardCharsets.UTF_8)).getBytes(StandardCharsets.UTF_8);
  }

  @Test
  void everyKeyOfADivisionIsAsked() throws Exception {
    String whole = Files.readString(Path.of("config/rule-book.toml"));
    for (String key :
        List.of(
            "code",
            "name",
            "limit",
            "tolerance",
            "decide",
            "counted",
            "shots",
            "voids",
            "rechecks")) {
      String without =
          Stream.of(whole.split("\n", -1))
              .filter(line -> !line.startsWith(key + " ="))
              .collect(Collectors.joining("\n"));
      assertFalse(accepts(without), key);
    }
  }

  private static boolean accepts(String toml) {
    try {
      RuleBook.read("test", toml.getBytes(StandardCharsets.UTF_8));
      return true;
    } catch (WrittenRefused e) {
      return false;
    }
  }
}
