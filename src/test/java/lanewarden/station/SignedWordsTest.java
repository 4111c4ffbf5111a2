package lanewarden.station;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import lanewarden.journal.Check;
import lanewarden.journal.Fact;
import org.junit.jupiter.api.Test;

/** A verdict is signed in words, and has its figures only where the rule still says the same. */
class SignedWordsTest extends ClausesTest {

  private CheckView over() throws Exception {
    line.station.call("71");
    line.shoot("303.1 ft/s");
    return line.station.view().check().orElseThrow();
  }

  private static CheckView signed(CheckView view, String reason) {
    Check c = view.check();
    Check.GivenVerdict given = c.verdict().orElseThrow();
    Fact.VerdictGiven fact = given.fact();
    Fact.VerdictGiven other =
        new Fact.VerdictGiven(
            fact.check(), fact.ruleBook(), fact.outcome(), reason, fact.readings(), fact.follows());
    Check check =
        new Check(
            c.number(),
            c.opened(),
            c.at(),
            c.signer(),
            c.ruleBook(),
            c.phase(),
            c.setUp(),
            c.weighed(),
            c.ticked(),
            c.shots(),
            c.refused(),
            c.wasOver(),
            Optional.of(
                new Check.GivenVerdict(given.sequence(), given.at(), given.signer(), other)),
            c.closed(),
            c.inQuestion());
    return new CheckView(check, view.division(), view.rechecksLeft());
  }

  @Test
  void whatTheRuleStillSaysHasItsFigures() throws Exception {
    CheckView view = over();
    assertFalse(view.why().isVerbatim());
    assertEquals(view.check().verdict().orElseThrow().fact().reason(), view.words());
  }

  @Test
  void whatAnotherVersionSignedInOtherWordsStandsAsItWasSigned() throws Exception {
    CheckView before = signed(over(), "303.1 ft/s is more than 300 ft/s");
    assertTrue(before.why().isVerbatim());
    assertEquals("303.1 ft/s is more than 300 ft/s", before.words());
  }
}
