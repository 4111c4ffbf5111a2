package lanewarden.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanewarden.quantity.Sentence;

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
  public List<Sentence> sentences() {
    List<Sentence> sentences = new ArrayList<>(rule.sentences(coverage.who() != Who.NOT_MEASURED));
    if (coverage.who() != Who.EVERYONE) {
      sentences.add(coverage.inWords());
    }
    origin.inWords().ifPresent(sentences::add);
    return sentences;
  }

  /**
   * What an organizer is to know of the rule though it demands nothing, with what to write to have
   * it otherwise: that nothing screens a misread.
   */
  public Optional<Sentence> remark() {
    return coverage.who() == Who.NOT_MEASURED ? Optional.empty() : rule.remark();
  }

  /** Everything that is demanded, and behind it the remark. */
  public List<Sentence> told() {
    List<Sentence> told = new ArrayList<>(sentences());
    remark().ifPresent(told::add);
    return told;
  }

  /** Everything that is demanded in one English text. */
  public String inWords() {
    return Sentence.joined(sentences());
  }

  /** Made-up checks that show what the rule means, each with the rule's own verdict. */
  public List<WorkedCase> workedCases() {
    return WorkedCases.of(rule);
  }
}
