package lanewarden.audit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import lanewarden.audit.wording.Wording;
import lanewarden.journal.Check;
import lanewarden.rules.Division;
import lanewarden.rules.RuleBook;

/**
 * A division with the rule books, one after the other, under which it stayed as it was.
 *
 * @param books at least one, in the order in which they were put in force
 */
record RuleRun(Division division, List<RuleBook> books) {

  RuleRun {
    books = List.copyOf(books);
  }

  /** Every division of these rule books, in the order in which it first stood so. */
  static List<RuleRun> of(List<RuleBook> inOrder) {
    List<Map.Entry<Division, List<RuleBook>>> runs = new ArrayList<>();
    Map<Division, List<RuleBook>> before = Map.of();
    for (RuleBook book : inOrder) {
      Map<Division, List<RuleBook>> now = new LinkedHashMap<>();
      for (Division division : book.divisions()) {
        List<RuleBook> run = before.get(division);
        if (run == null) {
          run = new ArrayList<>();
          runs.add(Map.entry(division, run));
        }
        run.add(book);
        now.put(division, run);
      }
      before = now;
    }
    return runs.stream().map(run -> new RuleRun(run.getKey(), run.getValue())).toList();
  }

  /** The rule book with which the division came to stand so. */
  RuleBook first() {
    return books.get(0);
  }

  /** Whether the division stood so before this rule book already, and still does. */
  boolean goesOnIn(RuleBook book) {
    return books.contains(book) && !first().equals(book);
  }

  /** Those of the checks that it governed. */
  List<Check> governed(List<Check> checks) {
    List<String> hashes = books.stream().map(RuleBook::sha256).toList();
    return checks.stream()
        .filter(c -> hashes.contains(c.ruleBook()))
        .filter(c -> c.opened().division().equals(division.code()))
        .toList();
  }

  /** Which of several rule books they are, in a sentence's part. */
  String inWords() {
    return (books.size() == 1 ? "Rule book " : "Unchanged in the rule books ")
        + books.stream()
            .map(book -> Wording.shortHash(book.sha256()))
            .collect(Collectors.joining(", "));
  }
}
