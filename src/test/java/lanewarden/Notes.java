package lanewarden;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The pages of {@code hardware-notes}, for tests: their tables, examples and text. */
public final class Notes {
  private static final Path FOLDER = Path.of("hardware-notes");

  private Notes() {}

  /**
   * A table of a page.
   *
   * @param page the file's name
   * @param head the cells of its first row
   * @param rows the cells of the others
   */
  public record Table(String page, List<String> head, List<List<String>> rows) {
    /** What its first column is called, which no other table's is. */
    public String title() {
      return head.get(0);
    }

    /** The cells of one column, from the top. */
    public List<String> column(int column) {
      return rows.stream().map(r -> r.get(column)).toList();
    }
  }

  /** The names of the pages. */
  public static List<String> pages() {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files
          .map(f -> f.getFileName().toString())
          .filter(f -> f.endsWith(".md"))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A file of the folder. */
  public static String text(String name) {
    try {
      return Files.readString(FOLDER.resolve(name));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Whether a path written in a page, from the folder or from the top level, leads to a file. */
  public static boolean leadsSomewhere(String path) {
    return Files.exists(FOLDER.resolve(path)) || Files.exists(Path.of(path));
  }

  /** Every table of every page. */
  public static List<Table> tables() {
    List<Table> tables = new ArrayList<>();
    for (String page : pages()) {
      List<List<String>> open = new ArrayList<>();
      for (String line : (text(page) + "\n\n").lines().toList()) {
        if (line.startsWith("|")) {
          open.add(cells(line));
        } else if (!open.isEmpty()) {
          tables.add(new Table(page, open.get(0), List.copyOf(open.subList(2, open.size()))));
          open.clear();
        }
      }
    }
    return tables;
  }

  /** The tables whose first column has this name. */
  public static List<Table> tables(String title) {
    return tables().stream().filter(t -> t.title().equals(title)).toList();
  }

  /** The one table whose first column has this name. */
  public static Table table(String title) {
    List<Table> found = tables(title);
    if (found.size() != 1) {
      throw new AssertionError(found.size() + " tables are called \"" + title + "\"");
    }
    return found.get(0);
  }

  /** The fenced examples of a page in one language. */
  public static List<String> examples(String page, String language) {
    List<String> examples = new ArrayList<>();
    String[] parts = text(page).split("\n?```", -1);
    for (int i = 1; i < parts.length; i += 2) {
      if (parts[i].startsWith(language + "\n")) {
        examples.add(parts[i].substring(language.length() + 1));
      }
    }
    return examples;
  }

  /** The paragraphs and list items of a page, without headings, tables, examples and code. */
  public static List<String> paragraphs(String page) {
    String prose =
        text(page)
            .replaceAll("(?s)```.*?```", "\n")
            .replaceAll("(?m)^(?:\\||#).*$", "")
            .replaceAll("`[^`]*`", "")
            .replaceAll("(?m)^(?:- |[0-9]+\\. )", "\n");
    return Arrays.stream(prose.split("\n\\s*\n", -1))
        .map(p -> p.replaceAll("\\s+", " ").strip())
        .filter(p -> !p.isEmpty())
        .toList();
  }

  /** A figure as the pages print it. */
  public static String print(String format, Object... figures) {
    return String.format(Locale.ROOT, format, figures);
  }

  /** Rows as the pages write them, so that a failure can be read. */
  public static String lines(List<List<String>> rows) {
    return rows.stream()
        .map(r -> "| " + String.join(" | ", r) + " |")
        .collect(Collectors.joining("\n"));
  }

  private static List<String> cells(String line) {
    String inner = line.strip();
    return Arrays.stream(inner.substring(1, inner.length() - 1).split("\\|", -1))
        .map(String::strip)
        .toList();
  }
}
