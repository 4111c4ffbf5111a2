import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javafx.css.CssParser;
import javafx.css.Stylesheet;

/**
 * Puts beside each stylesheet of a folder what the toolkit makes of it, which it takes instead: to
 * read the text would cost a tenth of the program's start. Run by the build, with the toolkit on
 * the class path.
 *
 * <p>Argument: the folder with the {@code .css} files.
 */
public final class BinaryStyles {
  private static final String TEXT = ".css";
  private static final String BINARY = ".bss";

  private BinaryStyles() {}

  /** Ends with a message where a stylesheet has a fault, which the toolkit would pass over. */
  public static void main(String[] arguments) throws IOException {
    for (Path text : stylesheets(Path.of(arguments[0]))) {
      String name = String.valueOf(text.getFileName());
      Path binary = text.resolveSibling(name.substring(0, name.length() - TEXT.length()) + BINARY);
      Stylesheet.convertToBinary(text.toFile(), binary.toFile());
      if (!CssParser.errorsProperty().isEmpty()) {
        Files.deleteIfExists(binary);
        System.err.println(text + ": " + CssParser.errorsProperty());
        System.exit(1);
      }
    }
  }

  private static List<Path> stylesheets(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(file -> file.toString().endsWith(TEXT)).sorted().toList();
    }
  }
}
