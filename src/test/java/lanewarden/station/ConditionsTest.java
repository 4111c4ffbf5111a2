package lanewarden.station;

import static lanewarden.station.PracticeLine.codeOf;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import lanewarden.journal.Fact;
import lanewarden.journal.Outcome;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class ConditionsTest extends ClausesTest {

  @BeforeEach
  void callWhoHasConditions() throws Exception {
    line.station.call("31");
  }

  private CheckView view() {
    return line.station.view().check().orElseThrow();
  }

  @Test
  void theVerdictWaitsForTheTicksAndTakesNoFurtherShotMeanwhile() throws Exception {
    line.shoot("290 ft/s", "291 ft/s");
    assertEquals(Optional.empty(), line.outcome());
    assertEquals(1, line.check().shots().size());
    assertEquals("not asked for", line.check().refused().get(0).reason());
    assertFalse(view().takesShots());
    line.station.officiating().tick("full draw");
    assertEquals(List.of("4 yd from the instrument"), view().unticked());
    assertEquals(Optional.empty(), line.outcome());
    line.station.officiating().tick("4 yd from the instrument");
    assertEquals(Optional.of(Outcome.WITHIN), line.outcome());
  }

  @Test
  void ticksBeforeTheShotLetTheVerdictFallWithTheReading() throws Exception {
    line.station.officiating().tickAll();
    assertEquals(2, line.facts(Fact.ConditionTicked.class).size());
    assertTrue(view().takesShots());
    line.shoot("290 ft/s");
    assertEquals(Optional.of(Outcome.WITHIN), line.outcome());
  }

  @Test
  void onlyWhatTheRuleNamesIsTickedAndOnce() throws Exception {
    assertEquals("NO-SUCH-CONDITION", codeOf(() -> line.station.officiating().tick("half draw")));
    line.station.officiating().tick("full draw");
    assertEquals("NO-SUCH-CONDITION", codeOf(() -> line.station.officiating().tick("full draw")));
    line.station.officiating().tickAll();
    assertEquals("NO-SUCH-CONDITION", codeOf(line.station.officiating()::tickAll));
  }

  @Test
  void nothingIsTickedWhenTheCheckIsDecided() throws Exception {
    line.shoot("290 ft/s");
    line.station.officiating().declareLastVoid("a bird");
    line.shoot("290 ft/s");
    line.station.officiating().declareLastVoid("a bird again");
    assertEquals(Optional.of(Outcome.NOT_DECIDED), line.outcome());
    assertEquals("ALREADY-DECIDED", codeOf(line.station.officiating()::tickAll));
  }
}
