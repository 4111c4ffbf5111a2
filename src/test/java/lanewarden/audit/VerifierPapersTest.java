package lanewarden.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import lanewarden.journal.Fact;
import lanewarden.journal.FrameFact;
import lanewarden.station.SignedPapers;
import org.junit.jupiter.api.Test;

/** What the page tells of rule books, rosters, seals and sign-ins, and of who signed them. */
class VerifierPapersTest extends PageInBrowser {
  private Told verified(Path file) throws Exception {
    new Export(SignedPapers::of).whole(file, folder.resolve("export"), p -> {});
    return openText(Files.readString(folder.resolve("export/entries.jsonl")));
  }

  /** An official's rule book, an archer over the organizer's limit, and the old book again. */
  @Test
  void everyRuleBookIsToldWithItsSignerAndOneThatTheOrganizerDidNotSignIsAFault() throws Exception {
    Path file = folder.resolve("event.ledger");
    long loose;
    long back;
    long late;
    try (ScriptedLedger ledger = ScriptedLedger.with(file, ScriptedLedger.RULES)) {
      loose =
          ledger.say(
              ScriptedLedger.ruleBook(
                  ScriptedLedger.RULES.replace("300 ft/s", "350 ft/s"), "because"));
      ledger.check("101", "Marta Olesund", "OC", "340 ft/s", "340 ft/s", "340 ft/s");
      ledger.adopt(ScriptedLedger.RULES, "back");
      back = ledger.head().sequence();
      late = ledger.say(ScriptedLedger.roster(ScriptedLedger.ROSTER + "8,Una Ost,OC,362 gr\n"));
    }
    Told told = verified(file);
    String official = ScriptedLedger.OFFICIAL;
    assertEquals(
        List.of(
            "Entry %d puts a rule book in force, but not with the organizer’s key: %s signed it."
                .formatted(loose, official)),
        told.faults());
    assertTrue(told.answers().get(0).startsWith("✕Not sound: 1 fault"), told.toString());
    assertTrue(
        told.answers().stream().anyMatch(answer -> answer.startsWith("✕1 verdict follows only")),
        told.toString());
    List<String> papers =
        texts("#papers li").stream().filter(words -> !words.contains("the line opened")).toList();
    assertEquals(5, papers.size(), papers.toString());
    assertTrue(papers.get(0).endsWith("signed by the organizer."), papers.get(0));
    assertTrue(
        papers
            .get(2)
            .endsWith(
                "signed by %s. It changes limit of OC from \"300 ft/s\" to \"350 ft/s\". Reason given: “because”."
                    .formatted(official)),
        papers.get(2));
    assertTrue(papers.get(3).startsWith("Entry " + back + ", 2026-05-30 "), papers.get(3));
    assertTrue(papers.get(3).contains("signed by the organizer. It changes limit of OC from"));
    assertTrue(
        papers.get(4).startsWith("Entry " + late) && papers.get(4).contains("the roster"),
        papers.get(4));
  }

  @Test
  void aSealAndASignInThatAreNotTheSignersAreTold() throws Exception {
    Path file = folder.resolve("event.ledger");
    long seal;
    long in;
    try (ScriptedLedger ledger = ScriptedLedger.with(file, ScriptedLedger.RULES)) {
      seal = ledger.say(new FrameFact.ReportSealAdopted("MIIB"));
      in = ledger.say(new Fact.OfficialSignedIn("Tobin Marsh"));
    }
    Told told = verified(file);
    assertEquals(
        List.of(
            "Entry %d states the seal of reports, but not with the organizer’s key: %s signed it."
                .formatted(seal, ScriptedLedger.OFFICIAL)),
        told.faults());
    assertEquals(
        List.of(
            "Entry %d: “Tobin Marsh” signed in with a key that was enrolled for “%s”."
                .formatted(in, ScriptedLedger.OFFICIAL)),
        told.findings());
    assertTrue(told.answers().get(1).startsWith("✕1 contradiction:"), told.toString());
  }

  @Test
  void anOpeningWithOtherPapersIsToldWithWhatItChanges() throws Exception {
    Path file = folder.resolve("event.ledger");
    long narrow;
    try (ScriptedLedger ledger = ScriptedLedger.bare(file)) {
      ledger.adopt(ScriptedLedger.RULES);
      String profile = Files.readString(Path.of("config/profiles/gate-timer.toml"));
      Fact first = new Fact.StationOpened("gate timer", profile, "Lanewarden 0.9.0");
      ledger.say(first);
      ledger.say(first);
      narrow =
          ledger.say(
              new Fact.StationOpened(
                  "gate timer", profile.replace("500 ft/s", "296 ft/s"), "Lanewarden 0.9.0"));
    }
    verified(file);
    List<String> lines =
        texts("#papers li").stream().filter(words -> words.contains("the line opened")).toList();
    assertEquals(2, lines.size(), lines.toString());
    assertTrue(
        lines.get(0).endsWith("gate timer, signed by " + ScriptedLedger.OFFICIAL + "."),
        lines.get(0));
    assertTrue(lines.get(1).startsWith("Entry " + narrow + ", "), lines.get(1));
    assertTrue(
        lines
            .get(1)
            .endsWith(
                "It changes, in the sentence profile: sentence.most from \"500 ft/s\" to \"296 ft/s\"."),
        lines.get(1));
  }

  /** Two tables of which each takes what the other said: the lines are the same ones. */
  @Test
  void valuesExchangedBetweenTwoTablesAreToldAndNewCommentsAreCalledSo() throws Exception {
    Path file = folder.resolve("event.ledger");
    try (ScriptedLedger ledger = ScriptedLedger.bare(file)) {
      String profile = Files.readString(Path.of("config/profiles/gate-timer.toml"));
      ledger.say(new Fact.StationOpened("gate timer", profile, "Lanewarden 0.9.0"));
      ledger.say(new Fact.StationOpened("gate timer", "# ours\n" + profile, "Lanewarden 0.9.0"));
      ledger.say(
          new Fact.StationOpened(
              "gate timer",
              profile
                  .replace("means = \"ft/s\"", "means = \"x\"")
                  .replace("means = \"m/s\"", "means = \"ft/s\"")
                  .replace("means = \"x\"", "means = \"m/s\""),
              "Lanewarden 0.9.0"));
      ledger.say(new Fact.StationOpened("gate timer", "most = 1.5", "Lanewarden 0.9.0"));
    }
    verified(file);
    List<String> lines = texts("#papers li");
    assertTrue(
        lines.get(1).endsWith("in the sentence profile: nothing but order, comments or layout."),
        lines.get(1));
    assertTrue(
        lines
            .get(2)
            .endsWith(
                "unit[1].means from \"ft/s\" to \"m/s\", unit[2].means from \"m/s\" to \"ft/s\"."),
        lines.get(2));
    assertTrue(lines.get(3).contains("something that this page cannot name"), lines.get(3));
  }
}
