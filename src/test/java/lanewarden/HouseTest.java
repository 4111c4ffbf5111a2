package lanewarden;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The house rules that a compiler does not check. */
class HouseTest {

  private static final int LONGEST_FILE = 400;

  private static List<Path> sources(String root) throws IOException {
    try (Stream<Path> files = Files.walk(Path.of(root))) {
      List<Path> sources = files.filter(f -> f.toString().endsWith(".java")).toList();
      assertTrue(sources.size() > 10, "the sources are where this test looks");
      return sources;
    }
  }

  @Test
  void noFileIsTooLongToReadInOneSitting() throws IOException {
    List<String> tooLong = new ArrayList<>();
    for (String root : List.of("src/main/java", "src/test/java")) {
      for (Path file : sources(root)) {
        if (Files.readAllLines(file).size() > LONGEST_FILE) {
          tooLong.add(file.toString());
        }
      }
    }
    assertEquals(List.of(), tooLong);
  }

  @Test
  void everyPackageSaysItsJob() throws IOException {
    Set<Path> unsaid = new TreeSet<>();
    for (Path file : sources("src/main/java")) {
      Path note = file.resolveSibling("package-info.java");
      if (!Files.exists(note) || !Files.readString(note).startsWith("/**")) {
        unsaid.add(file.getParent());
      }
    }
    assertEquals(Set.of(), unsaid);
  }

  @Test
  void topLevelIsAsAgreed() throws IOException {
    Set<String> agreed =
        Set.of(
            "pom.xml",
            "README.md",
            "DEVELOPERS.md",
            "LICENSE",
            "src",
            "config",
            "hardware-notes",
            "demo-data",
            "target");
    try (Stream<Path> entries = Files.list(Path.of("."))) {
      Set<String> others =
          entries
              .map(p -> p.getFileName().toString())
              // What a killed program leaves half made begins with a point too
              .filter(n -> !n.startsWith(".") || n.startsWith(".lanewarden"))
              .filter(n -> !agreed.contains(n))
              .collect(Collectors.toCollection(TreeSet::new));
      assertEquals(Set.of(), others);
    }
  }

  @Test
  void everyStartOfTheProgramHasTheSameFlags() throws IOException {
    Matcher pom =
        Pattern.compile("<program.flags>([^<]+)</program.flags>")
            .matcher(Files.readString(Path.of("pom.xml")));
    assertTrue(pom.find(), "the build says with which flags the program is started");
    String installed =
        Pattern.compile("\"(-XX:[+A-Z][A-Za-z0-9=]+)\"")
            .matcher(Files.readString(Path.of("src/packaging/BuildImage.java")))
            .results()
            .map(flag -> flag.group(1))
            .collect(Collectors.joining(" "));
    assertEquals(installed, pom.group(1));
  }
}
