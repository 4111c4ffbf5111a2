package lanewarden.chronograph;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChecksumTest {
  /** NMEA 0183 framing checksum (XOR between $ and *): sentences in wide circulation. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "GPGGA,123519,4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,, | 47",
        "GPGLL,5300.97914,N,00259.98174,E,125926,A | 28"
      })
  void exclusiveOrIsThatOfNmea0183(String covered, String checksum) {
    assertEquals(checksum, Checksum.XOR.hex(covered));
  }

  /** Own arithmetic: '0' + '1' = 0x30 + 0x31 = 0x61; 256 is 0 again. */
  @Test
  void sumIsModulo256() {
    assertEquals("61", Checksum.SUM.hex("01"));
    assertEquals("00", Checksum.SUM.hex("\u0080\u0080"));
    assertEquals("01", Checksum.SUM.hex("\u00FF\u0002"));
  }

  @Test
  void aByteSentTwiceVanishesInTheExclusiveOrButNotInTheSum() {
    assertEquals("00", Checksum.XOR.hex("77"));
    assertEquals("6E", Checksum.SUM.hex("77"));
  }
}
