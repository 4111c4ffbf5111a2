package lanewarden.kiosk;

import static lanewarden.kiosk.RecordsScreenTest.answer;
import static lanewarden.kiosk.RecordsScreenTest.told;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.List;
import java.util.Optional;
import javafx.scene.input.KeyCode;
import lanewarden.station.KeyOffice;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The organizer's key on a stick, as the organizer is told to keep it: every act finds it there.
 */
class OrganizersKeyTest {
  private static final String FRESH = "seven slow herons";
  private static final String WORDS = BoothEvent.ORGANIZER_PASSPHRASE;

  @TempDir Path temp;
  private Booth booth;
  private Path stick;

  @BeforeEach
  void open() throws Exception {
    booth = new Booth(temp);
    stick = Files.createDirectory(temp.resolve("stick")).resolve("organizer.key");
    Files.move(booth.folder.organizerKey(), stick);
  }

  @AfterEach
  void close() {
    booth.close();
  }

  private void people(KeyCode act) throws Exception {
    booth.press(KeyCode.F3);
    booth.press(act);
  }

  private List<String> signers() throws Exception {
    return booth.station.proceedings().signers().stream().map(KeyOffice.Official::name).toList();
  }

  private String trouble() throws Exception {
    return booth.text("form-trouble");
  }

  private void typeInto(String field, String text) throws Exception {
    booth.focusField(field);
    booth.type(text);
  }

  @Test
  void officialIsEnrolledAndTheNextFormHasThePlaceAlready() throws Exception {
    people(KeyCode.F2);
    answer(booth, stick.toString(), "Zora Quist", "1", FRESH, FRESH, WORDS);
    assertFalse(booth.shows("enrol-panel"), trouble());
    assertTrue(signers().contains("Zora Quist"));

    booth.press(KeyCode.F3);
    assertEquals(stick.toString(), booth.fieldText("form-organizer-key"));
    answer(booth, "1", WORDS);
    assertFalse(booth.shows("suspend-panel"), trouble());
    booth.press(KeyCode.F5);
    answer(booth, WORDS);
    assertFalse(booth.shows("readmit-panel"), trouble());
    booth.press(KeyCode.F4);
    answer(booth, "1", FRESH, FRESH, WORDS);
    assertFalse(booth.shows("replace-panel"), trouble());
    assertEquals(4, signers().size());
  }

  @Test
  void theStickItselfCanBeChosenInsteadOfTheFileOnIt() throws Exception {
    booth.windows.chosen.add(stick.getParent());
    people(KeyCode.F3);
    booth.touch("choose-organizer-key");
    answer(booth, "1", WORDS);
    assertFalse(booth.shows("suspend-panel"), trouble());
    assertEquals(2, signers().size());
  }

  @Test
  void whereTheKeyIsInItsPlaceNothingMoreIsAsked() throws Exception {
    Files.move(stick, booth.folder.organizerKey());
    people(KeyCode.F3);
    assertTrue(booth.shows("suspend-panel"));
    assertFalse(booth.shows("form-organizer-key"));
  }

  @Test
  void keyThatIsTakenAwayWhileItsFormIsOpenIsThenAskedForThere() throws Exception {
    Files.move(stick, booth.folder.organizerKey());
    people(KeyCode.F3);
    booth.type("1");
    booth.press(KeyCode.ENTER);
    Files.move(booth.folder.organizerKey(), stick);
    answer(booth, WORDS);
    assertTrue(trouble().contains("ORGANIZER-KEY-MISSING"), trouble());
    answer(booth, stick.toString(), WORDS);
    assertFalse(booth.shows("suspend-panel"), trouble());
    assertEquals(2, signers().size());
  }

  @Test
  void organizersPassphraseIsChangedOnTheStickWithTheSealInTheFolder() throws Exception {
    people(KeyCode.F8);
    booth.type(String.valueOf(signers().size() + 1));
    typeInto("form-organizer-key", stick.toString());
    typeInto("form-now", WORDS);
    booth.press(KeyCode.ENTER);
    answer(booth, FRESH, FRESH);
    assertFalse(booth.shows("change-panel"), trouble());

    KeyOffice office = booth.station.keyOffice(new SecureRandom());
    office.organizer(Optional.of(stick), FRESH.toCharArray());
    booth.press(KeyCode.ESCAPE);
    booth.press(KeyCode.F8);
    booth.press(KeyCode.F8);
    RecordsScreenTest.choose(booth, "1");
    answer(booth, "2", FRESH);
    assertTrue(booth.text("errand-words").startsWith("Made"), trouble());
  }

  @Test
  void officialChangesAPassphraseAndLeavesThePlaceOpen() throws Exception {
    people(KeyCode.F8);
    answer(booth, "1", Booth.PASSPHRASE, FRESH, FRESH);
    assertFalse(booth.shows("change-panel"), trouble());
  }

  @Test
  void ruleBookComesIntoForce() throws Exception {
    booth.press(KeyCode.F10);
    booth.focusField("field-limit");
    booth.type("305 ft/s");
    booth.press(KeyCode.F5);
    long before = booth.station.view().head().sequence();
    booth.press(KeyCode.F10);
    answer(booth, stick.toString(), "The limit was a slip", WORDS);
    assertFalse(booth.shows("adopt-panel"), trouble());
    assertEquals(before + 1, booth.station.view().head().sequence());
  }

  @Test
  void sealOfReportsIsMade() throws Exception {
    Files.delete(booth.folder.reportSeal());
    booth.press(KeyCode.F8);
    booth.press(KeyCode.F10);
    answer(booth, stick.toString(), WORDS);
    assertTrue(told(booth).contains("Certificate of the seal"), trouble());
  }

  @Test
  void fileThatIsNoKeyAndAnOfficialsKeyAreToldApartAndNothingTypedIsLost() throws Exception {
    Path letter = Files.writeString(temp.resolve("letter.txt"), "Dear all");
    long before = booth.station.view().head().sequence();
    people(KeyCode.F2);
    answer(booth, letter.toString(), "Zora Quist", "2", FRESH, FRESH, WORDS);
    assertTrue(trouble().contains("KEY-DAMAGED"), trouble());
    assertEquals(letter.toString(), booth.fieldText("form-organizer-key"));
    assertEquals("Zora Quist", booth.fieldText("form-name"));
    assertEquals("", booth.fieldText("form-organizer"), "a passphrase never stays");

    Path officials = booth.folder.organizerKey().resolveSibling("wanda-okafor-lind.key");
    typeInto("form-organizer-key", officials.toString());
    booth.press(KeyCode.ENTER);
    answer(booth, FRESH, FRESH, WORDS);
    assertTrue(trouble().contains("NOT-ORGANIZER"), trouble());
    assertFalse(Files.exists(officials.resolveSibling(officials.getFileName() + ".wrong")));

    typeInto("form-organizer-key", stick.toString());
    booth.press(KeyCode.ENTER);
    answer(booth, FRESH, FRESH, WORDS);
    assertFalse(booth.shows("enrol-panel"), trouble());
    assertEquals(before + 1, booth.station.view().head().sequence(), "signed once");
  }

  @Test
  void stickThatWasPulledOutIsToldAndTheFormGoesOnWhenItIsBack() throws Exception {
    people(KeyCode.F3);
    answer(booth, stick.toString());
    booth.type("1");
    booth.press(KeyCode.ENTER);
    Path pulled = Files.move(stick, temp.resolve("in the pocket"));
    answer(booth, WORDS);
    assertTrue(trouble().contains("ORGANIZER-KEY-MISSING"), trouble());
    assertTrue(trouble().contains(stick.toString()), trouble());
    assertEquals(stick.toString(), booth.fieldText("form-organizer-key"));

    Files.move(pulled, stick);
    answer(booth, WORDS);
    assertFalse(booth.shows("suspend-panel"), trouble());
  }
}
