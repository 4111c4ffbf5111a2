package lanewarden.audit;

import lanewarden.journal.Fact;
import lanewarden.journal.ProtestFact;
import lanewarden.journal.ProtestFact.Answer;
import lanewarden.journal.ProtestFact.Cause;
import lanewarden.ledger.Role;
import lanewarden.ledger.SigningKey;

/**
 * A ledger with a judge and a second official beside the one on duty, for disputes.
 *
 * @param judge may rule
 * @param other may confirm what the official on duty corrects
 */
public record Dispute(ScriptedLedger ledger, SigningKey judge, SigningKey other) {

  /** Enrols both. */
  public static Dispute in(ScriptedLedger ledger) throws Exception {
    return new Dispute(
        ledger, ledger.enrol("Judge Elm", Role.JUDGE), ledger.enrol("Wim Ezra", Role.OFFICIAL));
  }

  /** A longbow over by every shot: the rule leaves it to a judge. */
  public long over() throws Exception {
    return ledger.check("401", "Edwin Thackerby", "LB", "58.2 m/s", "58.3 m/s", "58.4 m/s");
  }

  /** A protest against a check. */
  public long file(Cause cause, long check) throws Exception {
    return ledger.say(
        new ProtestFact.ProtestFiled(check, cause, "Edwin Thackerby", "the gate glared"));
  }

  /** A recheck of a longbow under a protest. */
  public long recheck(long protest, String bib, String... speeds) throws Exception {
    return recheckOf("LB", protest, bib, speeds);
  }

  /** The same in another division. */
  public long recheckOf(String division, long protest, String bib, String... speeds)
      throws Exception {
    long number =
        ledger.open(
            new Fact.CheckOpened(
                bib, "Edwin Thackerby", division, 1, null, null, null, null, null, null, protest));
    for (String speed : speeds) {
      ledger.read(speed);
    }
    ledger.verdict();
    ledger.close(null);
    return number;
  }

  /** A ruling, or what somebody signs as one. */
  public long rule(SigningKey key, long protest, Answer answer, long stands) throws Exception {
    return ledger.sayAs(
        key,
        new ProtestFact.ProtestRuled(protest, answer, stands, "may shoot on", "it was within"));
  }
}
