package lanewarden.metrology;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lanewarden.quantity.Percent;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PublicDrawTest {
  private static final Path PAGE = Path.of("src/site/markdown/public-draw.md");
  private static final String SEED = "4 2 6 1 3  5 5 2 1 6  3 1 4 4 2  6 3 5 1 2";
  private static final Percent FIFTH = Percent.parse("20 %");

  @TempDir Path folder;

  /** The command of the page, run by GNU sha256sum. */
  @Test
  void hashIsTheOneThatThePageMakesByHand() {
    PublicDraw draw = PublicDraw.of(SEED, FIFTH, List.of("17"));
    assertEquals("42613552163144263512", draw.seed());
    assertEquals(
        List.of(
            new PublicDraw.Place(
                "17", "3b1b88171e0cdea339921480b1207648b0611df82bb55fb2777a6aee00c74420")),
        draw.order());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "42613552163144263512",
        "4,2,6,1,3,5,5,2,1,6,3,1,4,4,2,6,3,5,1,2",
        "42613\n55216\r\n31442\t63512",
        "42613-55216/31442:63512.;"
      })
  void sameDigitsAreTheSameSeedHoweverWritten(String seed) {
    List<String> bibs = bibs(30);
    assertEquals(
        PublicDraw.of(SEED, FIFTH, bibs).order(), PublicDraw.of(seed, FIFTH, bibs).order());
  }

  @ParameterizedTest
  @CsvSource({
    "20 %, 41, 9",
    "20 %, 40, 8",
    "7 %, 100, 7",
    "0.1 %, 5, 1",
    "100 %, 12, 12",
    "12.5 %, 8, 1"
  })
  void shareIsRoundedUpExactly(String share, int competitors, int drawn) {
    assertEquals(
        drawn, PublicDraw.of(SEED, Percent.parse(share), bibs(competitors)).drawn().size());
  }

  @Test
  void orderOfTheRosterDoesNotMatter() {
    List<String> bibs = new ArrayList<>(bibs(50));
    PublicDraw draw = PublicDraw.of(SEED, FIFTH, bibs);
    Collections.shuffle(bibs, new Random(1));
    assertEquals(draw.order(), PublicDraw.of(SEED, FIFTH, bibs).order());
    assertEquals(
        new HashSet<>(bibs),
        draw.order().stream().map(PublicDraw.Place::bib).collect(Collectors.toSet()));
    assertEquals(draw.order().stream().limit(10).map(PublicDraw.Place::bib).toList(), draw.drawn());
  }

  /** A fifth of 2000 draws is 400 with a standard deviation of 17.9; 4.5 of them are 80. */
  @Test
  void everyCompetitorIsDrawnEquallyOften() {
    int[] drawn = new int[20];
    Random dice = new Random(5);
    for (int i = 0; i < 2000; i++) {
      for (String bib : PublicDraw.of(thrown(dice), FIFTH, bibs(20)).drawn()) {
        drawn[Integer.parseInt(bib) - 1]++;
      }
    }
    for (int count : drawn) {
      assertEquals(400, count, 80);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "4261355216314426351",
        "4 2 6 1 3",
        "42613552163144263512x",
        "\u0664\u0662\u0666\u0661\u0663\u0665\u0665\u0662\u0661\u0666"
            + "\u0663\u0661\u0664\u0664\u0662\u0666\u0663\u0665\u0661\u0662"
      })
  void refusesSeedThatIsTooShortOrNotDigits(String seed) {
    IllegalArgumentException refused =
        assertThrows(
            IllegalArgumentException.class, () -> PublicDraw.of(seed, FIFTH, List.of("1")));
    assertTrue(String.valueOf(refused.getMessage()).contains(";"), refused.getMessage());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " ", " 7", "7 ", "7\n8", "7\r8"})
  void refusesBibThatWouldReadDifferentlyInAList(String bib) {
    assertThrows(
        IllegalArgumentException.class, () -> PublicDraw.of(SEED, FIFTH, List.of("1", bib)));
  }

  @Test
  void refusesNobodyTwiceOrAShareThatIsNone() {
    assertThrows(IllegalArgumentException.class, () -> PublicDraw.of(SEED, FIFTH, List.of()));
    assertThrows(
        IllegalArgumentException.class, () -> PublicDraw.of(SEED, FIFTH, List.of("7", "7")));
    for (String share : List.of("0 %", "100.1 %")) {
      assertThrows(
          IllegalArgumentException.class,
          () -> PublicDraw.of(SEED, Percent.parse(share), List.of("7")));
    }
  }

  @ParameterizedTest
  @CsvSource({"1, 100", "2, 1", "7, 33", "41, 20", "98, 7"})
  void scriptOfThePageDrawsTheSame(int competitors, String share) throws Exception {
    assumeShell();
    List<String> bibs = new ArrayList<>(bibs(competitors));
    bibs.add("B-" + competitors);
    bibs.add("Z\u00fc 3\\n%s");
    String seed = thrown(new Random(competitors));
    assertEquals(
        PublicDraw.of(seed, Percent.parse(share + " %"), bibs).drawn(),
        script(seed, share, bibs).lines().toList());
  }

  @Test
  void scriptOfThePageRefusesAShortSeed() throws Exception {
    assumeShell();
    assertEquals("the seed needs 20 digits", script("4 2 6", "20", List.of("1")).strip());
  }

  private String script(String seed, String share, List<String> bibs) throws Exception {
    String page = Files.readString(PAGE);
    int start = page.indexOf("```sh\n") + "```sh\n".length();
    Path script = folder.resolve("draw.sh");
    Files.writeString(script, page.substring(start, page.indexOf("\n```", start) + 1));
    Path input = folder.resolve("bibs.txt");
    Files.writeString(input, String.join("\n", bibs) + "\n");
    Process process =
        new ProcessBuilder("sh", script.toString(), seed, share)
            .redirectInput(input.toFile())
            .redirectErrorStream(true)
            .start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertTrue(process.waitFor(60, TimeUnit.SECONDS));
    return said;
  }

  private static void assumeShell() throws InterruptedException {
    try {
      Assumptions.assumeTrue(
          new ProcessBuilder("sh", "-c", "command -v sha256sum cut sort head wc tr")
                  .redirectErrorStream(true)
                  .start()
                  .waitFor()
              == 0,
          "not run: the script needs a POSIX shell with sha256sum");
    } catch (IOException none) {
      Assumptions.abort("not run: there is no sh on the path");
    }
  }

  private static List<String> bibs(int count) {
    return IntStream.rangeClosed(1, count).mapToObj(Integer::toString).toList();
  }

  private static String thrown(Random dice) {
    return IntStream.range(0, 20)
        .mapToObj(i -> Integer.toString(1 + dice.nextInt(6)))
        .collect(Collectors.joining(" "));
  }
}
