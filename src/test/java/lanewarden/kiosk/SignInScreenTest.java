package lanewarden.kiosk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import javafx.scene.control.PasswordField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Signing in, worked by keys alone. */
class SignInScreenTest {
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

  @Test
  void arrowKeyPassphraseAndEnterSignTheSecondOfficialIn() throws Exception {
    booth.signIn();

    assertEquals(Booth.OFFICIAL, booth.station.view().official().orElseThrow());
    assertTrue(booth.shows("line"));
  }

  @Test
  void theNamesStandInARowAndArrowKeysAlongItPickThem() throws Exception {
    booth.press(KeyCode.RIGHT);
    booth.type(Booth.PASSPHRASE);
    booth.press(KeyCode.LEFT);
    booth.press(KeyCode.ENTER);
    assertEquals(
        Booth.OFFICIAL,
        booth.station.view().official().orElseThrow(),
        "behind what was typed, the arrow moves in it and picks nobody else");
  }

  @Test
  void wrongPassphraseIsToldInItsPlaceAndTheFieldIsEmptyAgain() throws Exception {
    booth.type("four grey geese");
    booth.press(KeyCode.ENTER);

    assertTrue(booth.text("sign-in-trouble").contains("KEY-PASSPHRASE"));
    assertEquals("", booth.text("passphrase"));
    assertFalse(booth.shows("line"));
  }

  @Test
  void wrongPassphraseDoesNotKeepTheRightOneOut() throws Exception {
    booth.type("four grey geese");
    booth.press(KeyCode.ENTER);
    booth.signIn();

    assertTrue(booth.shows("line"));
  }

  @Test
  void hintOfADemonstrationIsShown() throws Exception {
    assertTrue(booth.text("hint").contains(Booth.PASSPHRASE));
  }

  @Test
  void passphraseIsNeverShownInClear() throws Exception {
    assertEquals(
        PasswordField.class,
        Booth.call(() -> booth.front.official().lookup("#passphrase").getClass()));
  }

  @Test
  void leavingIsOneKey() throws Exception {
    booth.press(KeyCode.F12);

    assertTrue(booth.windows.left);
  }
}
