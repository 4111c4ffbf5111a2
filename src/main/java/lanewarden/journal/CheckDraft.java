package lanewarden.journal;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import lanewarden.rules.SetUp;

/** The parts of a check that change, while one of them is exchanged. */
final class CheckDraft {
  private final Check from;
  Fact.CheckOpened opened;
  SetUp setUp;
  Set<String> weighed;
  Set<String> ticked;
  List<TakenShot> shots;
  List<Fact.LineRefused> refused;
  boolean wasOver;
  Optional<Check.GivenVerdict> verdict;
  Optional<Fact.CheckClosed> closed;
  boolean inQuestion;

  CheckDraft(Check from) {
    this.from = from;
    this.opened = from.opened();
    this.setUp = from.setUp();
    this.weighed = from.weighed();
    this.ticked = from.ticked();
    this.shots = from.shots();
    this.refused = from.refused();
    this.wasOver = from.wasOver();
    this.verdict = from.verdict();
    this.closed = from.closed();
    this.inQuestion = from.inQuestion();
  }

  Check done() {
    return new Check(
        from.number(),
        opened,
        from.at(),
        from.signer(),
        from.ruleBook(),
        from.phase(),
        setUp,
        weighed,
        ticked,
        shots,
        refused,
        wasOver,
        verdict,
        closed,
        inQuestion);
  }
}
