package lanewarden.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.security.SecureRandom;
import lanewarden.ledger.Enrolled;
import lanewarden.ledger.Role;
import lanewarden.ledger.SigningKey;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class KeyHoldersTest {
  private final KeyHolders holders = new KeyHolders();
  private final SigningKey lost = SigningKey.generate(new SecureRandom());
  private final SigningKey fresh = SigningKey.generate(new SecureRandom());
  private final SigningKey another = SigningKey.generate(new SecureRandom());

  private void enrol(SigningKey key, String name) {
    holders.note(new Enrolled(name, key.publicKey(), 2, Role.OFFICIAL));
  }

  private boolean areOne(SigningKey one, SigningKey other) {
    return holders.mayBeOne(one.thumbprint(), other.thumbprint());
  }

  @Test
  void keysOfOneNameAreOnePersons() {
    enrol(lost, "Bert Offi");
    enrol(another, "Judy Elm");
    enrol(fresh, "Bert Offi");
    assertTrue(areOne(lost, fresh));
    assertTrue(areOne(lost, lost));
    assertFalse(areOne(lost, another));
  }

  @Test
  void aKeyThatGetsAnotherNameStaysItsHolders() {
    enrol(lost, "Bert Offi");
    enrol(fresh, "Bert Offi");
    enrol(another, "Judy Elm");
    enrol(another, "Bert Offi");
    assertTrue(areOne(another, lost), "the name joins them");
    assertTrue(areOne(another, fresh));
  }

  @Test
  void keysThatNobodyEnrolledAreNobodysTogether() {
    assertFalse(areOne(lost, fresh));
    assertTrue(areOne(lost, lost));
  }

  /** Names that no two officials have at a time, since one key file would be theirs. */
  @ParameterizedTest
  @CsvSource({
    "Bert Offi, bert  offi, true",
    "Bert Offi, 'Bert-Offi.', true",
    "Jos\u00e9 Orr, Jose\u0301 Orr, true",
    "Bert Offi, B\u200bert Of\u00adfi, true",
    "Bert Offi, \u202eBert\u2060 O\u200dffi\ufe0f, true",
    "Jos\u00e9 Orr, Jose\u034f\u0301 Orr, true",
    "Bert Offi, B\u0435rt Offi, false",
    "Bert Offi, Berta Offi, false",
    "Jos\u00e9 Orr, Jose Orr, false"
  })
  void oneNameIsOnePersonsHoweverItIsWritten(String name, String other, boolean one) {
    enrol(lost, name);
    enrol(fresh, other);
    assertEquals(one, areOne(lost, fresh));
  }

  @Test
  void theOrganizersKeyShowsNobodyToBeSomebodyElse() {
    enrol(lost, "Bert Offi");
    holders.organizer(another.thumbprint());
    assertTrue(areOne(another, lost));
    assertTrue(areOne(lost, another));
  }
}
