package lanewarden.kiosk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/**
 * Draws every screen for eyes to look at, only when asked: {@code mvn test -Dtest=KioskPicturesTest
 * -Dpictures=target/pictures}.
 */
class KioskPicturesTest {

  @Test
  @EnabledIfSystemProperty(named = "pictures", matches = ".+")
  void drawsEveryScreenInEveryThemeAndSize() throws Exception {
    Path folder = Path.of(System.getProperty("pictures"));
    KioskPictures.draw(folder);
    assertDrawn(folder, 2 * 3 * 15);
  }

  @Test
  @EnabledIfSystemProperty(named = "pictures", matches = ".+")
  void drawsTheInstrumentInEveryThemeAndSize() throws Exception {
    Path folder = Path.of(System.getProperty("pictures"));
    KioskPictures.drawInstrument(folder);
    assertDrawn(folder, 2 * 3 * 8);
  }

  private static void assertDrawn(Path folder, int least) throws Exception {
    List<Path> files;
    try (Stream<Path> all = Files.list(folder)) {
      files = all.filter(f -> f.toString().endsWith(".png")).toList();
    }
    assertTrue(files.size() >= least, files.size() + " pictures");
    for (Path file : files) {
      BufferedImage picture = ImageIO.read(file.toFile());
      assertEquals(
          file.toString().contains("1920x1080") ? 1920 : 1280, picture.getWidth(), file.toString());
    }
  }
}
