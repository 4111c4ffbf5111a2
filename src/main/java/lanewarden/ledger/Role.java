package lanewarden.ledger;

import java.util.Optional;
import java.util.stream.Stream;

/** What the organizer enrolled somebody as. */
public enum Role {
  /** Signs what happens at the station; an enrolment that names no role. */
  OFFICIAL(""),
  /** An official who may rule on protests too. */
  JUDGE("judge");

  private final String word;

  Role(String word) {
    this.word = word;
  }

  /** The word in an enrolment; blank where none stands there. */
  String word() {
    return word;
  }

  /** The role of a word; an official where this format knows no such role. */
  static Role ofWord(Optional<String> word) {
    return Stream.of(values())
        .filter(role -> Optional.of(role.word).equals(word))
        .findFirst()
        .orElse(OFFICIAL);
  }
}
