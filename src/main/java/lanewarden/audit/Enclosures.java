package lanewarden.audit;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import lanewarden.audit.findings.Evidence;
import lanewarden.audit.press.Enclosure;
import lanewarden.audit.press.Enclosure.Relation;
import lanewarden.audit.press.Packed;
import lanewarden.rules.RuleBook;

/** The files that travel inside a report: what whoever doubts it needs, and nothing of ours. */
final class Enclosures {
  /** Packed with the program from its documentation. */
  private static final String FORMAT = "ledger-format.md";

  private Enclosures() {}

  /**
   * The files for this evidence; without the ledger where it kept none of its entries.
   *
   * @param named whether what was typed on the spot, as the settings are, travels inside too
   */
  static List<Enclosure> of(Evidence evidence, boolean named) throws IOException {
    List<Enclosure> files = new ArrayList<>();
    evidence
        .entries()
        .ifPresent(
            entries ->
                files.add(
                    new Enclosure(
                        "entries.txt",
                        "text/plain",
                        "The ledger: every entry that could be read as a compact JWS, a line each",
                        Relation.SOURCE,
                        entries)));
    if (named) {
      evidence
          .openings()
          .papers()
          .forEach(
              paper ->
                  files.add(
                      new Enclosure(
                          paper.file(),
                          "application/toml",
                          paper.name() + ", as signed with " + paper.entries(),
                          Relation.DATA,
                          Packed.of(paper.text()))));
    }
    List<RuleBook> books = evidence.standing().ruleBooks();
    for (int i = 0; i < books.size(); i++) {
      files.add(
          new Enclosure(
              "rule-book-" + (i + 1) + ".toml",
              "application/toml",
              "Rule book, edition " + books.get(i).edition() + ", as it was put in force",
              Relation.DATA,
              Packed.of(books.get(i).text())));
    }
    files.add(
        new Enclosure(
            FORMAT,
            "text/markdown",
            "The format of the ledger, with a script that checks it without this program",
            Relation.DATA,
            Packed.of(format())));
    return List.copyOf(files);
  }

  private static String format() throws IOException {
    try (InputStream in =
        Objects.requireNonNull(
            Enclosures.class.getResourceAsStream(FORMAT), FORMAT + " is missing")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
