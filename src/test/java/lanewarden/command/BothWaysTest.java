package lanewarden.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;

/**
 * What is done at the kiosk can be done with a command and the other way round, as the page says
 * that people read: it names every command, option, word and act that there is, and no other.
 */
class BothWaysTest {
  private static final Path PAGE = Path.of("src/site/markdown/both-ways.md");
  private static final Path TEXTS = Path.of("src/main/resources/lanewarden/kiosk/texts.properties");
  private static final Pattern COMMAND = Pattern.compile("`([^`]+)`( at the line)?");
  private static final Pattern SCREEN = Pattern.compile("\\*([^*]+)\\*");

  /** What a key does or leads to; not why it does not just now. */
  private static final Pattern ACT =
      Pattern.compile("act\\..*|way\\.(?!barred)(?!.*-(first|busy)$).*");

  private static final Set<String> OF_EVERY_COMMAND = Set.of("--help", "--version");

  /** What there is on one side, and what the page says of it. */
  private record Told(Set<String> commands, Set<String> words, Set<String> screens) {}

  private List<List<String>> rows = List.of();
  private Told told = new Told(Set.of(), Set.of(), Set.of());

  @BeforeEach
  void read() throws IOException {
    rows =
        Files.readAllLines(PAGE).stream()
            .filter(line -> line.startsWith("| ") && !line.startsWith("| what |"))
            .map(line -> Arrays.stream(line.substring(1).split("\\|")).map(String::strip).toList())
            .toList();
    Set<String> commands = new TreeSet<>();
    Set<String> words = new TreeSet<>();
    Set<String> screens = new TreeSet<>();
    for (List<String> row : rows) {
      COMMAND
          .matcher(row.get(2))
          .results()
          .forEach(
              found -> {
                if (found.group(2) == null) {
                  commands.addAll(commands(found.group(1)));
                } else {
                  words.add(found.group(1));
                }
              });
      SCREEN.matcher(row.get(1)).results().forEach(found -> screens.add(found.group(1)));
    }
    told = new Told(commands, words, screens);
  }

  /** A command and each of its options with it. */
  private static List<String> commands(String written) {
    String[] parts = written.split(" ");
    List<String> all = new ArrayList<>(List.of(parts[0]));
    Arrays.stream(parts)
        .filter(part -> part.startsWith("--"))
        .map(option -> parts[0] + " " + option)
        .forEach(all::add);
    return all;
  }

  private static Properties texts() throws IOException {
    Properties texts = new Properties();
    texts.load(Files.newBufferedReader(TEXTS));
    return texts;
  }

  private static String shown(Object text) {
    return new MessageFormat(text.toString(), Locale.ENGLISH).format(new Object[0]);
  }

  @Test
  void everyRowSaysWhatAndHowOnEitherSide() {
    assertTrue(rows.size() > 40, "rows: " + rows.size());
    for (List<String> row : rows) {
      assertEquals(3, row.size(), row.toString());
      assertTrue(row.stream().noneMatch(String::isBlank), row.toString());
    }
  }

  @Test
  void namesEveryCommandAndOptionAndNoOther() {
    Set<String> there = new TreeSet<>();
    Map<String, CommandLine> all = new Typed().table().whole().getSubcommands();
    all.forEach(
        (name, command) -> {
          there.add(name);
          for (OptionSpec option : command.getCommandSpec().options()) {
            if (Stream.of(option.names()).noneMatch(OF_EVERY_COMMAND::contains)) {
              there.add(name + " " + option.longestName());
            }
          }
        });
    assertEquals(there, told.commands());
  }

  @Test
  void namesEveryWordOfTheLineAndNoOther() {
    assertEquals(
        Stream.of(LineWord.values())
            .map(word -> word.name().toLowerCase(Locale.ROOT))
            .collect(Collectors.toCollection(TreeSet::new)),
        told.words());
  }

  @Test
  void everyScreenAndKeyIsCalledAsItIsShown() throws IOException {
    Set<String> shown =
        texts().values().stream().map(BothWaysTest::shown).collect(Collectors.toSet());
    Set<String> unknown = new TreeSet<>(told.screens());
    unknown.removeAll(shown);
    assertEquals(Set.of(), unknown);
  }

  @Test
  void namesEveryActOfTheScreens() throws IOException {
    Set<String> acts =
        texts().entrySet().stream()
            .filter(text -> ACT.matcher(text.getKey().toString()).matches())
            .map(text -> shown(text.getValue()))
            .collect(Collectors.toCollection(TreeSet::new));
    acts.removeAll(told.screens());
    assertEquals(Set.of(), acts);
  }

  @Test
  void theReadMeNamesWhatRecordsLookInto() throws IOException {
    Properties texts = texts();
    String records =
        Files.readAllLines(Path.of("README.md")).stream()
            .filter(line -> line.contains("At the kiosk *Records* (F8)"))
            .findFirst()
            .orElseThrow();
    for (String key : List.of("records.check", "act.chart")) {
      assertTrue(records.contains("*" + shown(texts.get(key)) + "*"), key);
    }
  }
}
