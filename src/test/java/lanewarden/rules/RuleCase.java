package lanewarden.rules;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lanewarden.quantity.Force;
import lanewarden.quantity.Length;
import lanewarden.quantity.Mass;

/** One case of {@code rule-cases.txt}; its form is told there. */
record RuleCase(String id, Map<String, String> lines) {

  private static final int WORD = 9;
  private static final Set<String> WORDS =
      Set.of(
          "source", "status", "shows", "rule", "set-up", "ticks", "shots", "outcome", "reason",
          "follows", "says", "refused");

  static List<RuleCase> all() throws IOException {
    List<RuleCase> cases = new ArrayList<>();
    Path file = Path.of("src/test/resources/lanewarden/rules/rule-cases.txt");
    for (String line : Files.readAllLines(file)) {
      if (line.startsWith("== ")) {
        cases.add(new RuleCase(line.substring(3), new LinkedHashMap<>()));
      } else if (!line.isBlank() && !line.startsWith("#")) {
        String word = line.substring(0, WORD).strip();
        if (!WORDS.contains(word)) {
          throw new IllegalArgumentException("a case has no such line: " + line);
        }
        cases.get(cases.size() - 1).lines().put(word, line.substring(WORD).strip());
      }
    }
    return cases;
  }

  Optional<String> line(String word) {
    return Optional.ofNullable(lines.get(word));
  }

  /** The division's lines as they stand in a rule book. */
  String toml() {
    return String.join("\n", lines.get("rule").split(" \\| ", -1)) + "\n";
  }

  /** The keys its rule uses. */
  Set<String> keys() {
    return toml()
        .lines()
        .map(line -> line.substring(0, line.indexOf(" = ")))
        .collect(Collectors.toSet());
  }

  /** The patterns it shows, with a plus or a minus in front. */
  List<String> shows() {
    return line("shows").stream().flatMap(shows -> Stream.of(shows.split(", ", -1))).toList();
  }

  SetUp setUp() {
    Map<String, String> figures = new LinkedHashMap<>();
    line("set-up")
        .filter(known -> !known.equals("nothing known"))
        .ifPresent(
            known -> {
              for (String figure : known.split("; ", -1)) {
                figures.put(figure.split(" ", 2)[0], figure.split(" ", 2)[1]);
              }
            });
    return new SetUp(
        figures.containsKey("arrow") ? Mass.parse(figures.get("arrow")) : null,
        figures.containsKey("bow") ? Force.parse(figures.get("bow")) : null,
        figures.containsKey("certified") ? Force.parse(figures.get("certified")) : null,
        figures.containsKey("length") ? Length.parse(figures.get("length")) : null,
        figures.containsKey("brace") ? Length.parse(figures.get("brace")) : null);
  }

  Set<String> ticks() {
    return line("ticks").stream()
        .flatMap(ticks -> Arrays.stream(ticks.split("; ", -1)))
        .collect(Collectors.toSet());
  }

  List<Shot> shots() {
    return Cases.shots(line("shots").filter(shots -> !shots.equals("none")).orElse(""));
  }

  @Override
  public String toString() {
    return id;
  }
}
