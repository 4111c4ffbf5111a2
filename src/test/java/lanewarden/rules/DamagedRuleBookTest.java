package lanewarden.rules;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import lanewarden.written.WrittenFault;
import lanewarden.written.WrittenRefused;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Example books, damaged at random from a seed: each is read or refused, and nothing else. */
class DamagedRuleBookTest {
  private static final int DAMAGES = 60;
  private static final String TOML = "\"'[]{}=#\\.,-_: \t\r\n0123456789eE+%\uFEFF\u0000é🏹";

  static LongStream seeds() {
    return LongStream.rangeClosed(1, 25);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void damagedBookIsReadWholeOrRefusedWithPlaces(long seed) throws IOException {
    Random random = new Random(seed);
    List<Path> books = ExampleBooksTest.books();
    for (int i = 0; i < DAMAGES; i++) {
      Path book = books.get(random.nextInt(books.size()));
      byte[] damaged = Files.readAllBytes(book);
      for (int times = 1 + random.nextInt(4); times > 0; times--) {
        damaged = damage(damaged, random);
      }
      readOrRefuse(damaged);
    }
  }

  private static void readOrRefuse(byte[] bytes) {
    String shown = new String(bytes, StandardCharsets.UTF_8);
    try {
      for (Division division : RuleBook.read("damaged.toml", bytes).divisions()) {
        assertFalse(division.inWords().isBlank(), shown);
      }
    } catch (WrittenRefused refused) {
      int lines = shown.split("\n", -1).length;
      for (WrittenFault fault : refused.faults()) {
        assertTrue(fault.line() >= 1 && fault.line() <= lines, () -> fault + "\n" + shown);
        assertTrue(fault.column() >= 1, () -> fault + "\n" + shown);
        assertFalse(fault.mend().toString().isBlank(), () -> fault + "\n" + shown);
      }
    }
  }

  private static byte[] damage(byte[] bytes, Random random) {
    return switch (random.nextInt(7)) {
      case 0, 1, 2 -> damagedLines(bytes, random);
      case 3 -> Arrays.copyOf(bytes, random.nextInt(bytes.length + 1));
      case 4 -> damagedByte(bytes, random);
      default -> inserted(bytes, random);
    };
  }

  private static byte[] damagedLines(byte[] bytes, Random random) {
    List<String> lines =
        new ArrayList<>(List.of(new String(bytes, StandardCharsets.ISO_8859_1).split("\n", -1)));
    int one = random.nextInt(lines.size());
    int other = random.nextInt(lines.size());
    switch (random.nextInt(3)) {
      case 0 -> lines.remove(one);
      case 1 -> lines.add(other, lines.get(one));
      default -> Collections.swap(lines, one, other);
    }
    return String.join("\n", lines).getBytes(StandardCharsets.ISO_8859_1);
  }

  private static byte[] damagedByte(byte[] bytes, Random random) {
    byte[] damaged = bytes.clone();
    if (damaged.length > 0) {
      damaged[random.nextInt(damaged.length)] = (byte) random.nextInt(256);
    }
    return damaged;
  }

  /** A character that means something in TOML, or that editors leave behind, anywhere. */
  private static byte[] inserted(byte[] bytes, Random random) {
    int[] points = TOML.codePoints().toArray();
    byte[] more =
        Character.toString(points[random.nextInt(points.length)]).getBytes(StandardCharsets.UTF_8);
    int at = random.nextInt(bytes.length + 1);
    byte[] damaged = Arrays.copyOf(bytes, bytes.length + more.length);
    System.arraycopy(bytes, at, damaged, at + more.length, bytes.length - at);
    System.arraycopy(more, 0, damaged, at, more.length);
    return damaged;
  }
}
