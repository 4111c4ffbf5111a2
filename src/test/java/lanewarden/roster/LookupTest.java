package lanewarden.roster;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.charset.StandardCharsets;
import java.util.stream.Collectors;
import lanewarden.written.WrittenRefused;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Finding a competitor by what an official types. */
class LookupTest {
  private static final String ROSTER =
      """
      bib,name,division
      112,Åse Bjørkly,OC
      11,Ana Brisk,OC
      21,Łucja O'Dowrane,OC
      30,Ben Ana-Coldwater,OC
      A11,Jürgen Straßner,OC
      42,Zoë Anavari,OC
      """;

  private static String found(String typed, int most) {
    try {
      return Roster.read("roster.csv", ROSTER.getBytes(StandardCharsets.UTF_8))
          .search(typed, most)
          .stream()
          .map(Competitor::bib)
          .collect(Collectors.joining(" "));
    } catch (WrittenRefused e) {
      throw new IllegalStateException(e);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "'1',112 11", // bibs that start so, in the order of the roster
    "'11',11 112", // the very bib first
    "' 11 ',11 112",
    "'a1',A11",
    "'a',A11 112 11 30 42", // a bib before names
    "'ana',11 30 42", // every part of a name
    "'ANA b',11 30", // every typed word
    "'ase',112",
    "'bjork',112",
    "'bjørk',112",
    "'lucja',21",
    "'Ł',21",
    "'dowrane',21",
    "'o''d',21",
    "'o dowrane',21",
    "'strassn',A11",
    "'jurgen',A11",
    "'zoe',42",
  })
  void findsByBibFirstAndThenByParts(String typed, String bibs) {
    assertEquals(bibs, found(typed, 10));
  }

  @Test
  void decomposedAccentsAreTheSameAsComposedOnes() {
    assertEquals("42", found("zoe\u0308", 10));
  }

  @ParameterizedTest
  @CsvSource({"''", "'   '", "'-'", "nobody", "'ana nobody'"})
  void findsNobodyWhereNobodyIsMeant(String typed) {
    assertEquals("", found(typed, 10));
  }

  @Test
  void answersWithNoMoreThanAskedFor() {
    assertEquals("A11 112", found("a", 2));
    assertEquals("", found("a", 0));
  }

  @Test
  void negativeLengthIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> found("a", -1));
  }
}
