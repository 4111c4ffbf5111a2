package lanewarden.bench;

import java.nio.charset.StandardCharsets;
import lanewarden.rules.Division;
import lanewarden.rules.RuleBook;

/** Rules as an organizer writes them, of an invented event. */
final class Rules {
  private Rules() {}

  /** The mean of three readings decides. */
  static Division mean(String clauses) throws Exception {
    return division(
        "decide = \"mean\"\ncounted = 3\nshots = 4\nvoids = 1\nrechecks = 1\n" + clauses);
  }

  static Division division(String lines) throws Exception {
    String toml =
        "format = 1\n[event]\nname = \"T\"\nedition = \"1\"\n[[division]]\ncode = \"T\"\nname = \"T\"\n"
            + lines;
    return RuleBook.read("test", toml.getBytes(StandardCharsets.UTF_8)).divisions().get(0);
  }
}
