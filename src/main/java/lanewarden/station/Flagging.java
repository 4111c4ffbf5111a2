package lanewarden.station;

import java.util.List;
import java.util.stream.Stream;
import lanewarden.journal.Check;
import lanewarden.journal.Fact;
import lanewarden.journal.TakenShot;
import lanewarden.rules.Division;
import lanewarden.rules.Doubt;

/**
 * What the rule finds to speak against readings of a check, as far as the ledger has not got it.
 */
final class Flagging {

  private Flagging() {}

  /** On a check as it will stand. */
  static List<Fact> on(Check check, Division division) {
    return check.doubts(division.rule()).stream().flatMap(doubt -> flag(check, doubt)).toList();
  }

  private static Stream<Fact> flag(Check check, Doubt doubt) {
    TakenShot shot = check.shots().get(doubt.shot());
    return shot.isFlagged(doubt.kind())
        ? Stream.empty()
        : Stream.of(
            new Fact.ReadingFlagged(
                check.number(), shot.sequence(), doubt.kind().word(), doubt.words()));
  }
}
