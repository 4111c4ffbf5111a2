package lanewarden.kiosk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import lanewarden.station.KeyOffice;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Officials enrolled, suspended, replaced and readmitted at the open station, by keys alone. */
class PeopleScreenTest {
  private static final String FRESH = "seven slow herons";

  @TempDir Path temp;
  private Booth booth;

  @BeforeEach
  void open() throws Exception {
    booth = new Booth(temp);
  }

  @AfterEach
  void close() {
    booth.close();
  }

  private void answer(String... answers) throws Exception {
    for (String answer : answers) {
      booth.type(answer);
      booth.press(KeyCode.ENTER);
    }
  }

  private List<String> signers() throws Exception {
    return booth.station.proceedings().signers().stream().map(KeyOffice.Official::name).toList();
  }

  @Test
  void judgeIsEnrolledAndSignsInAtOnce() throws Exception {
    booth.press(KeyCode.F3);
    assertTrue(booth.shows("people"));
    booth.press(KeyCode.F2);
    answer("Zora Quist", "2", FRESH, FRESH, BoothEvent.ORGANIZER_PASSPHRASE);
    assertFalse(booth.shows("enrol-panel"), booth.text("form-trouble"));
    KeyOffice.Official zora =
        booth.station.proceedings().signers().stream()
            .filter(one -> one.name().equals("Zora Quist"))
            .findFirst()
            .orElseThrow();
    assertTrue(zora.judge());
    booth.station.signIn("Zora Quist", FRESH.toCharArray());
    booth.settle();
    assertTrue(booth.shows("line"));
  }

  @Test
  void passphraseThatIsNotTypedTheSameTwiceEnrolsNobody() throws Exception {
    booth.press(KeyCode.F3);
    booth.press(KeyCode.F2);
    answer("Zora Quist", "1", FRESH, "seven slow heroes", BoothEvent.ORGANIZER_PASSPHRASE);

    assertTrue(booth.text("form-trouble").contains("PASSPHRASES-DIFFER"));
    assertFalse(signers().contains("Zora Quist"));
  }

  @Test
  void whoIsOnDutyAndSuspendedIsSignedOutAndMayBeReadmitted() throws Exception {
    booth.signIn();
    booth.scan("103");
    booth.press(KeyCode.INSERT);
    booth.press(KeyCode.F3);
    booth.press(KeyCode.DOWN);
    if (!chosen().equals(Booth.OFFICIAL)) {
      booth.press(KeyCode.UP);
    }
    assertEquals(Booth.OFFICIAL, chosen());
    booth.press(KeyCode.F3);
    answer("2", BoothEvent.ORGANIZER_PASSPHRASE);

    assertEquals(Optional.empty(), booth.station.view().official());
    assertTrue(booth.shows("sign-in-screen"));
    assertTrue(booth.text("sign-in-standing").contains("OFFICIAL-SUSPENDED"));
    assertFalse(signers().contains(Booth.OFFICIAL));
    assertTrue(booth.station.view().check().isPresent(), "the check stays at the line");

    booth.press(KeyCode.F3);
    booth.press(KeyCode.F5);
    answer(BoothEvent.ORGANIZER_PASSPHRASE);
    assertTrue(signers().contains(Booth.OFFICIAL), booth.text("form-trouble"));
    booth.press(KeyCode.ESCAPE);
    booth.signIn();
    assertEquals(Optional.of(Booth.OFFICIAL), booth.station.view().official());
  }

  private String chosen() throws Exception {
    return Booth.call(
        () ->
            ((ListView<?>) booth.front.official().lookup("#people-list"))
                        .getSelectionModel()
                        .getSelectedItem()
                    instanceof KeyOffice.Official one
                ? one.name()
                : "");
  }

  @Test
  void officialChangesThePassphraseWithoutTheOrganizer() throws Exception {
    booth.press(KeyCode.F3);
    booth.press(KeyCode.F8);
    answer("1", Booth.PASSPHRASE, FRESH, FRESH);
    assertFalse(booth.shows("change-panel"), booth.text("form-trouble"));
    String first = booth.station.proceedings().signers().get(0).name();
    booth.station.signIn(first, FRESH.toCharArray());
    assertEquals(Optional.of(first), booth.station.view().official());
  }

  @Test
  void everyKeyIsShownWithTheThumbprintThatTheReportNames() throws Exception {
    booth.press(KeyCode.F3);
    String words = Doorstep.words(booth.front.official(), "people");
    for (KeyOffice.Official one : booth.station.proceedings().signers()) {
      assertTrue(words.contains(one.name()), words);
      assertTrue(words.contains("Thumbprint of the key: " + one.thumbprint()), words);
    }
  }

  @Test
  void lostKeyIsReplacedAndOnlyTheNewPassphraseSignsIn() throws Exception {
    booth.press(KeyCode.F3);
    String name = chosen();
    booth.press(KeyCode.F4);
    answer("1", FRESH, FRESH, BoothEvent.ORGANIZER_PASSPHRASE);
    assertFalse(booth.shows("replace-panel"), booth.text("form-trouble"));

    booth.station.signIn(name, FRESH.toCharArray());
    assertEquals(Optional.of(name), booth.station.view().official());
  }

  @Test
  void wrongPassphraseOfTheOrganizerSignsNothing() throws Exception {
    booth.press(KeyCode.F3);
    List<String> before = signers();
    booth.press(KeyCode.F3);
    answer("1", "four grey geese");

    assertTrue(booth.text("form-trouble").contains("KEY-PASSPHRASE"));
    assertEquals(before, signers());
  }
}
