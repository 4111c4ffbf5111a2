package lanewarden.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import lanewarden.journal.FrameFact;
import lanewarden.station.SignedPapers;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whether the page that verifies an export sees what was done while the line was not clear. */
class VerifierStopTest extends PageInBrowser {
  @TempDir Path folder;

  @Test
  void whatWasTakenWhileTheLineWasNotClearIsFoundAndNothingElse() throws Exception {
    long reading;
    long stop;
    try (ScriptedLedger ledger =
        ScriptedLedger.with(folder.resolve("event.ledger"), ScriptedLedger.RULES)) {
      long first = ledger.say(new FrameFact.LineStopped(null));
      ledger.say(new FrameFact.LineStopped("somebody is forward"));
      ledger.say(new FrameFact.LineCleared(first));
      ledger.check("301", "Ines Tveit", "LB", "57.9 m/s");
      ledger.call("401", "Edwin Thackerby", "LB");
      stop = ledger.say(new FrameFact.LineStopped("lane not clear"));
      reading = ledger.read("57.9 m/s");
      ledger.say(new FrameFact.LineCleared(stop));
      ledger.verdict();
      ledger.close(null);
    }
    new Export(SignedPapers::of)
        .whole(folder.resolve("event.ledger"), folder.resolve("export"), p -> {});
    Told told = open(List.of(Files.readString(folder.resolve("export/entries.jsonl")).split("\n")));
    assertEquals(
        List.of(
            "Entry "
                + reading
                + ": a reading was taken although the line was not clear since entry "
                + stop
                + "."),
        told.findings());
  }
}
