package lanewarden.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OtherQuantitiesTest {

  @ParameterizedTest
  @CsvSource({"350 gr, 350 gr", "22.7 g, 22.7 g", "350 grains, 350 gr"})
  void readsMasses(String written, String printed) {
    assertEquals(printed, Mass.parse(written).toString());
  }

  @ParameterizedTest
  @CsvSource({"60 lbf, 60 lbf", "60 lb, 60 lbf", "60#, 60 lbf", "267 N, 267 N"})
  void readsDrawWeights(String written, String printed) {
    assertEquals(printed, Force.parse(written).toString());
  }

  @Test
  void readsLengthsEnergiesAndMomenta() {
    assertEquals("29 in", Length.parse("29in").toString());
    assertEquals("165 J", Energy.parse("165 J").toString());
    assertEquals("0.6 slug·ft/s", Momentum.parse("0.6 slug·ft/s").toString());
  }

  @Test
  void messageNamesTheUnitsThatAreKnown() {
    QuantityException refused = assertThrows(QuantityException.class, () -> Mass.parse("350 oz"));
    assertEquals("use one of gr, g, kg, lb", refused.mend().toString());
    QuantityException bare = assertThrows(QuantityException.class, () -> Mass.parse("350"));
    assertEquals("add the unit, one of gr, g, kg, lb", bare.mend().toString());
  }
}
