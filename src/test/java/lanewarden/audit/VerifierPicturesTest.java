package lanewarden.audit;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import lanewarden.journal.Outcome;
import lanewarden.journal.ProtestFact;
import lanewarden.journal.ProtestFact.Answer;
import lanewarden.journal.ProtestFact.Cause;
import lanewarden.ledger.Role;
import lanewarden.ledger.SigningKey;
import lanewarden.station.SignedPapers;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;

/** Pictures of the verifying page, sound and faulty, for looking at; made on request alone. */
class VerifierPicturesTest {
  @TempDir Path folder;

  @Test
  @EnabledIfSystemProperty(named = "pictures", matches = ".+")
  void draws() throws Exception {
    Path pictures = Files.createDirectories(Path.of(System.getProperty("pictures")));
    Path file = folder.resolve("event.ledger");
    try (ScriptedLedger ledger = DemoSizeLedger.make(file, 1, 7)) {
      ledger.call("777", "Ada Brink", "OC");
      ledger.read("310 ft/s");
      ledger.read("310 ft/s");
      ledger.read("310 ft/s");
      ledger.verdict(Outcome.WITHIN, "mean 300 ft/s");
      ledger.close(null);
      long check = ledger.now().number();
      ledger.say(
          new ProtestFact.ProtestFiled(
              check, Cause.PROTEST, "captain of the Greens", "looked fast"));
      long protest = ledger.head().sequence();
      SigningKey judge = ledger.enrol("Judge Elm", Role.JUDGE);
      ledger.sayAs(
          judge,
          new ProtestFact.ProtestRuled(protest, Answer.DISMISSED, check, "none", "as measured"));
      ledger.say(ProtestFact.CorrectionMade.ofBib(check, "778", "Ada Brink", "misread"));
    }
    Path export = folder.resolve("export");
    new Export(SignedPapers::of).whole(file, export, progress -> {});
    Path entries = export.resolve("entries.jsonl");
    List<String> lines = Files.readAllLines(entries);
    Path faulty = folder.resolve("faulty.jsonl");
    List<String> changed = new ArrayList<>(lines);
    changed.remove(40);
    changed.set(60, changed.get(60).replace(" ft/s", " m/s"));
    changed.set(80, changed.get(81));
    Files.writeString(faulty, String.join("\n", changed) + "\n");
    try (HeadlessBrowser browser = HeadlessBrowser.start(HeadlessBrowser.find().orElseThrow())) {
      for (int[] size : new int[][] {{1280, 800}, {390, 844}}) {
        for (Path each : List.of(entries, faulty)) {
          browser.open(export.resolve("verify.html"), size[0], size[1]);
          browser.choose(each);
          browser.await("document.body.dataset.state === 'done'");
          String name = each.equals(faulty) ? "faulty" : "sound";
          for (String part :
              List.of("choose", "answer-title", "findings-title", "cases-title", "checks-title")) {
            browser.evaluate("document.getElementById('" + part + "').scrollIntoView()");
            Path picture = pictures.resolve("verify-%s-%s-%d.png".formatted(name, part, size[0]));
            assertTrue(Files.size(Files.write(picture, browser.picture())) > 0);
          }
        }
      }
    }
  }
}
