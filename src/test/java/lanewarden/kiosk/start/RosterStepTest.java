package lanewarden.kiosk.start;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import lanewarden.kiosk.look.Language;
import lanewarden.kiosk.look.Texts;
import lanewarden.roster.RosterSheet;
import org.junit.jupiter.api.Test;

/** What the columns of the roster are called. */
class RosterStepTest {

  /** In the language with letters of its own, so that an English word cannot pass for one of it. */
  @Test
  void everyColumnHasANameInTheLanguageOfTheScreens() {
    for (RosterSheet.Wanted wanted : RosterSheet.wanted()) {
      String name = RosterStep.name(wanted.title(), Texts.in(Language.HEBREW));
      assertFalse(name.matches(".*[a-zA-Z].*"), name);
      assertEquals(
          wanted.title().replace('-', ' '),
          RosterStep.name(wanted.title(), Texts.in(Language.ENGLISH)));
    }
  }

  @Test
  void whatIsNoColumnHasNone() {
    assertThrows(
        IllegalArgumentException.class,
        () -> RosterStep.name("shoe-size", Texts.in(Language.ENGLISH)));
  }
}
