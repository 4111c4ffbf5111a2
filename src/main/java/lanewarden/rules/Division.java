package lanewarden.rules;

import java.util.ArrayList;
import java.util.List;

/**
 * A group of competitors under one rule.
 *
 * @param code short and unique in the rule book, as the roster names it
 * @param name as people say it
 * @param coverage who of it is checked
 * @param origin where the rule comes from
 */
public record Division(String code, String name, Rule rule, Coverage coverage, Origin origin) {

  /** Everything that is demanded, in plain sentences made from the rule itself. */
  public List<String> sentences() {
    List<String> sentences = new ArrayList<>(rule.sentences(coverage.who() != Who.NOT_MEASURED));
    if (coverage.who() != Who.EVERYONE) {
      sentences.add(coverage.inWords());
    }
    origin.inWords().ifPresent(sentences::add);
    return sentences;
  }

  /** The same in one text. */
  public String inWords() {
    return String.join(" ", sentences());
  }

  /** Made-up checks that show what the rule means, each with the rule's own verdict. */
  public List<WorkedCase> workedCases() {
    return WorkedCases.of(rule);
  }
}
