package lanewarden.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import lanewarden.journal.Fact;
import lanewarden.journal.SetUpStated;
import lanewarden.quantity.Force;
import lanewarden.quantity.Mass;
import lanewarden.rules.Division;
import lanewarden.rules.RuleBook;
import lanewarden.station.SignedPapers;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page's own arithmetic against the program's, over every clause of the example rule books. */
class VerifierClausesTest {
  private static final int CHECKS_A_DIVISION = 12;

  @TempDir Path folder;

  @Test
  void thePageComesToTheSameOutcomesAsTheProgram() throws Exception {
    Optional<Path> found = HeadlessBrowser.find();
    Assumptions.assumeTrue(
        found.isPresent(), "not run: there is no Chromium on the path to open the page in");
    List<Path> books = new ArrayList<>();
    try (Stream<Path> files = Files.list(Path.of("config/rule-books"))) {
      books.addAll(files.sorted().toList());
    }
    books.add(Path.of("config/rule-book.toml"));
    Set<String> outcomes = new TreeSet<>();
    try (HeadlessBrowser browser = HeadlessBrowser.start(found.get())) {
      for (Path book : books) {
        Path export = shoot(book);
        browser.open(export.resolve("verify.html"), 1280, 800);
        browser.choose(export.resolve("entries.jsonl"));
        browser.await("['done', 'refused'].includes(document.body.dataset.state)");
        compare(book, browser, outcomes);
      }
    }
    assertEquals(
        Set.of("✓ within", "✕ over", "? not decided", "– not admitted"), outcomes, "all were shot");
  }

  private static void compare(Path book, HeadlessBrowser browser, Set<String> outcomes)
      throws Exception {
    JsonNode rows =
        browser.evaluate(
            "[...document.querySelectorAll('#checks tbody tr')].map(row =>"
                + " [...row.cells].slice(7).map(cell => cell.firstChild.textContent)"
                + ".concat(row.textContent))");
    assertTrue(rows.size() > 0, book + " gave no verdict");
    for (JsonNode row : rows) {
      assertEquals(row.get(0).asText(), row.get(1).asText(), book + ": " + row.get(2).asText());
      outcomes.add(row.get(0).asText());
    }
    String answers = browser.evaluate("document.getElementById('answers').textContent").asText();
    assertTrue(answers.startsWith("✓Sound"), answers);
    assertEquals(
        "",
        browser.evaluate("document.getElementById('findings').textContent").asText(),
        "" + book);
  }

  /** Every division of a rule book shot with speeds about its limit; the program's verdicts. */
  private Path shoot(Path file) throws Exception {
    Random random = new Random(20260501);
    RuleBook book = RuleBook.read(file.toString(), Files.readAllBytes(file));
    String name = String.valueOf(file.getFileName());
    Path export = folder.resolve(name + "-export");
    Path ledgerFile = folder.resolve(name + ".ledger");
    try (ScriptedLedger ledger = ScriptedLedger.with(ledgerFile, Files.readString(file))) {
      for (Division division : book.divisions()) {
        for (int i = 0; i < CHECKS_A_DIVISION && division.rule().checksAnything(); i++) {
          shoot(ledger, division, division.code() + i, random);
        }
      }
    }
    new Export(SignedPapers::of).whole(ledgerFile, export, progress -> {});
    return export;
  }

  private static void shoot(ScriptedLedger ledger, Division division, String bib, Random random)
      throws Exception {
    long check = ledger.call(bib, "Archer " + bib, division.code(), null);
    ledger.say(
        new SetUpStated(
            check,
            Mass.parse((250 + random.nextInt(250)) + " gr"),
            Force.parse((30 + random.nextInt(45)) + " lbf"),
            random.nextBoolean() ? Force.parse("48 lbf") : Force.parse("200 N")));
    for (String condition : division.rule().conditions()) {
      ledger.say(new Fact.ConditionTicked(check, condition));
    }
    ledger.verdict();
    double middle =
        division
            .rule()
            .fastest(ledger.now().setUp())
            .map(most -> most.value().doubleValue())
            .orElse(200.0);
    double level = middle * (0.99 + 0.02 * random.nextDouble());
    for (int shot = 0; shot < 8 && ledger.now().outcome().isEmpty(); shot++) {
      double speed = level * (1 + 0.006 * random.nextGaussian());
      String unit = random.nextInt(6) == 0 ? "m/s" : division.rule().unit().symbol();
      double shown =
          unit.equals(division.rule().unit().symbol()) ? speed : speed * 0.3048; // as typed
      long reading = ledger.read(String.format(Locale.ROOT, "%.1f %s", shown, unit));
      if (random.nextInt(5) == 0) {
        ledger.declareVoid(reading, "a twig in the way");
      } else {
        for (var doubt : ledger.now().doubts(division.rule())) {
          if (doubt.isOpen()) {
            long asked = ledger.now().shots().get(doubt.shot()).sequence();
            ledger.say(new Fact.ReadingKept(check, asked, "seen to be a clean shot"));
          }
        }
      }
      ledger.verdict();
    }
    ledger.close(null);
  }
}
