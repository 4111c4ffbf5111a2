package lanewarden.kiosk.look;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javafx.css.Stylesheet;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The binary form of a stylesheet, which the toolkit takes in its place, is that of its text. */
class StylesheetTest {
  @TempDir private Path folder;

  @ParameterizedTest
  @EnumSource
  void binaryFormIsThatOfTheText(Theme theme) throws Exception {
    for (String address : theme.stylesheets()) {
      Path text = Path.of(URI.create(address));
      Path binary = Path.of(URI.create(address.replaceFirst("\\.css$", ".bss")));
      assertTrue(Files.exists(binary), () -> "the build makes " + binary);
      Path anew = folder.resolve("anew.bss");
      Stylesheet.convertToBinary(text.toFile(), anew.toFile());
      List<String> rules = rules(anew);
      assertFalse(rules.isEmpty());
      assertEquals(rules, rules(binary), text::toString);
    }
  }

  /** The bytes differ with what a toolkit met before. */
  private static List<String> rules(Path binary) throws IOException {
    return Stylesheet.loadBinary(binary.toUri().toURL()).getRules().stream()
        .map(rule -> rule.getSelectors() + " " + rule.getDeclarations())
        .toList();
  }
}
