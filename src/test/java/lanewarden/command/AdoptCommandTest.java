package lanewarden.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import lanewarden.station.PracticeEvent;
import org.junit.jupiter.api.Test;

/** Another rule book comes into force, at the line and without one. */
class AdoptCommandTest extends ClausesRun {
  @Test
  void aScriptsPassphraseIsTakenFromItsNextLineAndNeverTold() throws Exception {
    changeTheRules();
    for (String[] script :
        new String[][] {
          {"adopt the edition was forgotten", "not the passphrase", "status"},
          {"adopt the edition was forgotten", PracticeEvent.PASSPHRASE, "status"},
        }) {
      Typed typed =
          new Typed().typing(script).run(signed("line", "--pace", "0").toArray(String[]::new));
      assertFalse(typed.toString().contains(script[1]), typed.toString());
      assertFalse(typed.talk().contains("NO-SUCH-COMPETITOR"), typed.toString());
      assertEquals(
          script[1].equals(PracticeEvent.PASSPHRASE),
          typed.lines().contains("trouble  over: all is signed"),
          typed.toString());
    }
  }

  @Test
  void anAdoptWithoutAReasonTakesNoPassphraseAndTheRealOneIsNeverTold() throws Exception {
    changeTheRules();
    Typed again =
        script("adopt", "adopt the edition was forgotten", PracticeEvent.PASSPHRASE, "11");
    assertTrue(again.talk().contains("REASON-MISSING"), again.toString());
    assertFalse(again.toString().contains(PracticeEvent.PASSPHRASE), again.toString());
    assertSays(again, "trouble  over: all is signed", "check    11 ");
  }

  @Test
  void aPassphraseBehindAnAdoptThatIsRefusedIsNeitherToldNorObeyed() throws Exception {
    Typed same = script("adopt the edition was forgotten", "", "# as agreed", "close oak", "11");
    assertTrue(same.talk().contains("RULE-BOOK-SAME"), same.toString());
    assertTrue(same.talk().contains("passed over"), same.toString());
    assertSays(same, "check    11 ");
    changeTheRules();
    Typed bare = script("adopt", PracticeEvent.PASSPHRASE, "status");
    assertFalse(bare.toString().contains(PracticeEvent.PASSPHRASE), bare.toString());
    assertFalse(bare.talk().contains("NO-SUCH-COMPETITOR"), bare.toString());
  }

  @Test
  void whoTypesUnseenIsAskedForNoPassphraseInVainAndGoesOnTyping() throws Exception {
    changeTheRules();
    Typed typed = line("adopt", "adopt the edition was forgotten", "11");
    assertTrue(typed.talk().contains("REASON-MISSING"), typed.toString());
    assertSays(typed, "trouble  over: all is signed", "check    11 ");
    assertSays(line("adopt", "end only looked at", "12"), "check    12 ");
  }

  @Test
  void aTroubleIsToldOnOneLineOfPlainWords() throws Exception {
    changeTheRules();
    Typed typed = line("status");
    assertSays(
        typed, "trouble  The rule book in the folder is not the one in force. why: rule-book.toml");
    assertFalse(typed.results().contains("\\u000a"), typed.toString());
  }

  @Test
  void anotherRuleBookOfTheSameEditionIsRemarkedOn() throws Exception {
    Path file = event.path().resolve("rule-book.toml");
    Files.writeString(file, Files.readString(file) + "\n# changed\n");
    assertSays(
        line("adopt a word was added"),
        "trouble  Another rule book is in force, under the same edition. why: Both call themselves"
            + " edition 1,");
    Files.writeString(file, Files.readString(file) + "\n# changed again\n");
    Typed typed =
        new Typed()
            .run(
                "adopt",
                event.path().toString(),
                "--reason",
                "another word",
                "--passphrase-file",
                passphrase.toString(),
                "--json");
    assertEquals(0, typed.code(), typed.toString());
    assertTrue(typed.talk().contains("code: EDITION-SAME"), typed.toString());
    assertEquals(
        "EDITION-SAME", new ObjectMapper().readTree(typed.results()).get("remark").asText());
  }

  @Test
  void adoptWithoutAnythingToReadThePassphraseFromIsAnswered() throws Exception {
    changeTheRules();
    Typed typed =
        new Typed()
            .typing("adopt the edition was forgotten")
            .run(signed("line", "--pace", "0").toArray(String[]::new));
    assertTrue(typed.talk().contains("NO-KEYBOARD"), typed.toString());
  }

  @Test
  void adoptsAtTheLineWithTheOrganizersPassphrase() throws Exception {
    assertTrue(line("adopt because").talk().contains("RULE-BOOK-SAME"));
    changeTheRules();
    Typed typed = line("adopt the edition was forgotten");
    assertSays(typed, "trouble  over: all is signed");
  }

  @Test
  void adoptsWithoutALineFromAKeyThatLiesElsewhere() throws Exception {
    changeTheRules();
    Path key = here.resolve("organizer.key");
    Files.move(event.path().resolve("keys").resolve("organizer.key"), key);
    String[] plain = {
      "adopt",
      event.path().toString(),
      "--reason",
      "the edition was forgotten",
      "--passphrase-file",
      passphrase.toString()
    };
    Typed without = new Typed().run(plain);
    assertEquals(2, without.code(), without.toString());
    assertTrue(without.talk().contains("ORGANIZER-KEY-MISSING"), without.toString());
    List<String> with = new ArrayList<>(List.of(plain));
    with.addAll(List.of("--organizer-key", key.toString()));
    Typed typed = new Typed().run(with.toArray(String[]::new));
    assertEquals(0, typed.code(), typed.toString());
    assertSays(typed, "in force ");
    assertEquals("", typed.talk(), "another edition needs no remark");
  }
}
