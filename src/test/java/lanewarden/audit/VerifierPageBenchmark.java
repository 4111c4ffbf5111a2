package lanewarden.audit;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.time.Duration;
import java.util.HexFormat;

/**
 * How fast the page verifies in a real browser, and for how long it ever does not answer.
 *
 * <p>Argument: how many entries; 50,000 if none.
 */
final class VerifierPageBenchmark {
  private static final Duration PATIENCE = Duration.ofMinutes(10);
  private static final double NANOS = 1e9;

  private VerifierPageBenchmark() {}

  public static void main(String[] arguments) throws Exception {
    int most = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 50_000;
    Path folder = Files.createTempDirectory("lanewarden-verifier");
    Path page = Files.writeString(folder.resolve("verify.html"), VerifierPage.html());
    Path file = Files.write(folder.resolve("entries.jsonl"), checks(most).lines());
    try (HeadlessBrowser browser = HeadlessBrowser.start(HeadlessBrowser.find().orElseThrow())) {
      browser.open(page, 1280, 800);
      browser.evaluate(
          "window.longest = 0; window.frame = performance.now();"
              + "(function look() { const now = performance.now();"
              + "window.longest = Math.max(window.longest, now - window.frame);"
              + "window.frame = now; requestAnimationFrame(look); })();"
              + "window.task = 0; new PerformanceObserver(seen => seen.getEntries().forEach(one =>"
              + " window.task = Math.max(window.task, one.duration)))"
              + ".observe({ entryTypes: ['longtask'] });");
      long start = System.nanoTime();
      browser.choose(file);
      browser.await("!document.getElementById('found').hidden", PATIENCE);
      double verified = (System.nanoTime() - start) / NANOS;
      browser.await("['done', 'refused'].includes(document.body.dataset.state)", PATIENCE);
      double shown = (System.nanoTime() - start) / NANOS;
      System.out.printf(
          "%d entries, %d bytes: verified in %.1f s, all shown in %.1f s,"
              + " longest without a frame %.0f ms, longest task %.0f ms: %s%n",
          most,
          Files.size(file),
          verified,
          shown,
          browser.evaluate("window.longest").asDouble(),
          browser.evaluate("window.task").asDouble(),
          browser.evaluate("document.getElementById('answers').innerText").asText());
    }
    Files.delete(file);
    Files.delete(page);
    Files.delete(folder);
  }

  private static HandSignedEntries checks(int most) throws Exception {
    HandSignedEntries.Signer root = HandSignedEntries.Signer.make();
    HandSignedEntries entries = new HandSignedEntries();
    String rules = ScriptedLedger.RULES;
    byte[] digest =
        MessageDigest.getInstance("SHA-256").digest(rules.getBytes(StandardCharsets.UTF_8));
    String hash = HexFormat.of().formatHex(digest);
    String text = rules.replace("\\", "\\\\").replace("\"", "\\\"").replace("\n", "\\n");
    entries.sign(root, "ledger-opened", "{\"organizer\":" + root.jwk() + "}");
    entries.sign(
        root,
        "rule-book-adopted",
        "{\"file\":\"rules.toml\",\"sha256\":\"%s\",\"text\":\"%s\"}".formatted(hash, text));
    int written = 2;
    while (written + 6 <= most) {
      int check = written + 1;
      entries.sign(
          root,
          "check-opened",
          "{\"bib\":\"%d\",\"name\":\"Archer %d\",\"division\":\"OC\",\"attempt\":1}"
              .formatted(check, check));
      for (int shot = 1; shot <= 3; shot++) {
        entries.sign(
            root,
            "reading-taken",
            ("{\"check\":%d,\"shot\":%d,\"speed\":\"29%d.4 ft/s\",\"raw\":\"JFBM\",\"source\":"
                    + "\"serial port\",\"instrument\":\"gate timer\"}")
                .formatted(check, shot, shot));
      }
      entries.sign(
          root,
          "verdict-given",
          ("{\"check\":%d,\"ruleBook\":\"%s\",\"outcome\":\"within\",\"reason\":\"mean 292.4 ft/s\","
                  + "\"readings\":[%d,%d,%d]}")
              .formatted(check, hash, check + 1, check + 2, check + 3));
      entries.sign(root, "check-closed", "{\"check\":%d}".formatted(check));
      written += 6;
    }
    return entries;
  }
}
