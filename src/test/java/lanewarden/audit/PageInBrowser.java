package lanewarden.audit;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;

/** The page that verifies an export, in a real browser that opens it from the disk. */
abstract class PageInBrowser {
  @TempDir static Path shared;
  static HeadlessBrowser browser;
  private static Path page;

  @TempDir Path folder;

  @BeforeAll
  static void start() throws Exception {
    Optional<Path> found = HeadlessBrowser.find();
    Assumptions.assumeTrue(
        found.isPresent(), "not run: there is no Chromium on the path to open the page in");
    page = Files.writeString(shared.resolve("verify.html"), VerifierPage.html());
    browser = HeadlessBrowser.start(found.get());
  }

  @AfterAll
  static void stop() throws Exception {
    if (browser != null) {
      browser.close();
    }
  }

  /** What the page says. */
  record Told(List<String> answers, List<String> faults, List<String> findings) {}

  final Told open(List<String> lines) throws Exception {
    return openText(String.join("\n", lines) + "\n");
  }

  final Told openText(String text) throws Exception {
    browser.open(page, 1280, 800);
    browser.choose(Files.writeString(folder.resolve("entries.jsonl"), text));
    browser.await("['done', 'refused'].includes(document.body.dataset.state)");
    return told();
  }

  static Told told() throws Exception {
    return new Told(texts("#answers li"), texts("#faults li"), texts("#findings li"));
  }

  static List<String> texts(String selector) throws Exception {
    JsonNode found =
        browser.evaluate(
            "[...document.querySelectorAll('%s')].map(one => one.textContent)".formatted(selector));
    List<String> texts = new ArrayList<>();
    found.forEach(text -> texts.add(text.asText()));
    return texts;
  }
}
