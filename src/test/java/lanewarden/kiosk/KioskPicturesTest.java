package lanewarden.kiosk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import lanewarden.kiosk.look.Language;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Draws every screen for eyes to look at, only when asked: {@code mvn test -Dtest=KioskPicturesTest
 * -Dpictures=target/pictures}; with {@code -Dpictures.only=protest,line} only these, which takes
 * less long. {@code -Dpictures.language=de,he} draws them in these languages and {@code
 * -Dpictures.language=all} in every one, each in a folder of its own; {@code -Dpictures.text=200}
 * with larger text, {@code -Dpictures.themes=day,sunlight} not in every theme.
 */
@EnabledIfSystemProperty(named = "pictures", matches = ".+")
class KioskPicturesTest {

  /** What is drawn, in one go each. */
  enum Play {
    LINE(20),
    CROWDED(2),
    PROVING(9),
    CLAUSES(15),
    INSTRUMENT(8),
    PROTEST(15),
    PEOPLE(8),
    RECORDS(10),
    PROSPECTS(5),
    SETUPS(11),
    CHECKUP(4),
    START(30);

    private final int screens;

    Play(int screens) {
      this.screens = screens;
    }

    private void draw(Sketchbook book, int width, int height) throws Exception {
      switch (this) {
        case LINE -> new KioskPictures(book).play(width, height);
        case CROWDED -> new KioskPictures(book).playCrowded(width, height);
        case PROVING -> new KioskPictures(book).playProving(width, height);
        case CLAUSES -> new KioskPictures(book).playClauses(width, height);
        case INSTRUMENT -> new KioskPictures(book).playInstrument(width, height);
        case PEOPLE -> new PeoplePictures(book).play(width, height);
        case RECORDS -> new RecordsPictures(book).play(width, height);
        case PROSPECTS -> new ProspectsPictures(book).play(width, height);
        case SETUPS -> new SetUpsPictures(book).play(width, height);
        case CHECKUP -> new CheckUpPictures(book).play(width, height);
        case START -> new StartPictures(book).play(width, height);
        case PROTEST -> new ProtestPictures(book).play(width, height);
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Play.class)
  void drawsEveryScreenInEveryThemeSizeAndLanguage(Play play) throws Exception {
    String only = System.getProperty("pictures.only", "");
    assumeTrue(
        only.isBlank() || List.of(only.split(",")).contains(play.name().toLowerCase(Locale.ROOT)));
    String asked = System.getProperty(Sketchbook.LANGUAGE, "en");
    try {
      for (String tag : tags(asked)) {
        System.setProperty(Sketchbook.LANGUAGE, tag);
        Path all = Path.of(System.getProperty("pictures"));
        draw(play, tag.equals(asked) ? all : all.resolve(tag));
      }
    } finally {
      System.setProperty(Sketchbook.LANGUAGE, asked);
    }
  }

  private static List<String> tags(String asked) {
    return asked.equals("all")
        ? Arrays.stream(Language.values()).map(Language::tag).toList()
        : List.of(asked.split(","));
  }

  private static void draw(Play play, Path all) throws Exception {
    Path folder = Files.createDirectories(all.resolve(play.name().toLowerCase(Locale.ROOT)));
    play.draw(new Sketchbook(folder), 1280, 800);
    play.draw(new Sketchbook(folder), 1920, 1080);

    List<Path> files;
    try (Stream<Path> drawn = Files.list(folder)) {
      files = drawn.filter(f -> f.toString().endsWith(".png")).toList();
    }
    assertTrue(
        files.size() >= 2 * Sketchbook.perScreen() * play.screens, files.size() + " pictures");
    for (Path file : files) {
      BufferedImage picture = ImageIO.read(file.toFile());
      assertEquals(
          file.toString().contains("1920x1080") ? 1920 : 1280, picture.getWidth(), file.toString());
    }
  }
}
