package lanewarden.written;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lanewarden.quantity.Sentence;

/**
 * What is expected of a folder of faulty files: {@code faults.txt} beside them, a line a fault with
 * file, line, column, expected, found and mend between bars.
 */
public final class FaultTable {
  private static final Pattern ABOUT_A_KEY =
      Pattern.compile(
          "(?:(?<table>[\\w.]+)(?:\\[(?<nth>\\d+)])?\\.)?(?<key>[\\w-]+)(?:\\[(?<item>\\d+)])?"
              + " to be (?<expected>.*)");

  private final Path folder;
  private final Map<String, List<WrittenFault>> faults = new LinkedHashMap<>();

  /** Reads the table of a folder below {@code src/test/resources}. */
  public FaultTable(String folder) throws IOException {
    this.folder = Path.of("src/test/resources", folder);
    for (String line : Files.readAllLines(this.folder.resolve("faults.txt"))) {
      if (line.isBlank() || line.startsWith("#")) {
        continue;
      }
      String[] part = line.split(" \\| ", -1);
      Matcher about = ABOUT_A_KEY.matcher(part[3]);
      boolean key = about.matches();
      WrittenFault fault =
          new WrittenFault(
              part[0],
              Integer.parseInt(part[1]),
              Integer.parseInt(part[2]),
              key ? place(about) : null,
              Sentence.verbatim(key ? about.group("expected") : part[3]),
              Sentence.verbatim(part[4]),
              Sentence.verbatim(part[5]));
      faults.computeIfAbsent(part[0], file -> new ArrayList<>()).add(fault);
    }
  }

  /** The same faults as far as their English goes, in which they are compared. */
  public static List<WrittenFault> inEnglish(List<WrittenFault> faults) {
    return faults.stream()
        .map(
            fault ->
                new WrittenFault(
                    fault.file(),
                    fault.line(),
                    fault.column(),
                    fault.place(),
                    Sentence.verbatim(fault.expected().toString()),
                    Sentence.verbatim(fault.found().toString()),
                    Sentence.verbatim(fault.mend().toString())))
        .toList();
  }

  private static KeyPlace place(Matcher about) {
    String table = about.group("table");
    String nth = about.group("nth");
    String item = about.group("item");
    return new KeyPlace(
        new TablePath(table, nth == null ? 0 : Integer.parseInt(nth)),
        about.group("key"),
        item == null ? 0 : Integer.parseInt(item));
  }

  /** The names of the files that have a line in the table. */
  public List<String> files() {
    return List.copyOf(faults.keySet());
  }

  /** The names of the faulty files that lie in the folder. */
  public List<String> filesThere() throws IOException {
    TreeSet<String> names = new TreeSet<>();
    try (var paths = Files.list(folder)) {
      paths.map(path -> path.getFileName().toString()).forEach(names::add);
    }
    names.remove("faults.txt");
    return List.copyOf(names);
  }

  /** The bytes of a faulty file. */
  public byte[] bytes(String file) throws IOException {
    return Files.readAllBytes(folder.resolve(file));
  }

  /** Every fault expected in a file, in order. */
  public List<WrittenFault> expected(String file) {
    return faults.getOrDefault(file, List.of());
  }
}
