package lanewarden.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class BelongingTest {
  private static final long ENTRY = 77;

  private static Stream<RecordComponent> named(Class<?> kind, String component) {
    return Stream.of(kind.getRecordComponents()).filter(one -> one.getName().equals(component));
  }

  private static Object told(Fact fact, RecordComponent component) throws Exception {
    return component.getAccessor().invoke(fact);
  }

  /** Told from the records themselves, so that a kind to come cannot be forgotten. */
  @Test
  void everyKindOfEntryThatNamesACheckBelongsToIt() throws Exception {
    Set<Class<?>> naming =
        FactJsonTest.leaves(Fact.class)
            .filter(kind -> named(kind, "check").findAny().isPresent())
            .collect(Collectors.toSet());
    assertTrue(naming.size() > 10, naming.toString());
    for (Fact fact : Facts.ofEveryKind().toList()) {
      for (RecordComponent check : named(fact.getClass(), "check").toList()) {
        assertEquals(
            Optional.ofNullable(told(fact, check)), Belonging.check(ENTRY, fact), fact.toString());
        naming.remove(fact.getClass());
      }
    }
    assertEquals(Set.of(), naming, "kinds without an example");
  }

  @Test
  void anOpeningBelongsToTheCheckThatItOpensAndWhatNamesNoneToNone() {
    assertEquals(Optional.of(ENTRY), Belonging.check(ENTRY, Facts.opened("101", 1)));
    assertEquals(Optional.of(ENTRY), Belonging.check(ENTRY, Facts.recheck("101", 50)));
    assertEquals(Optional.empty(), Belonging.check(ENTRY, new Fact.OfficialSignedIn("Ada Holt")));
  }

  /** A list of checks is of all of them. */
  @Test
  void everyKindOfEntryThatListsChecksBelongsToAllOfThem() throws Exception {
    int lists = 0;
    for (Fact fact : Facts.ofEveryKind().toList()) {
      for (RecordComponent checks : named(fact.getClass(), "checks").toList()) {
        assertEquals(
            told(fact, checks), List.copyOf(Belonging.checks(ENTRY, fact, new Standing())));
        lists++;
      }
    }
    assertEquals(2, lists);
  }

  @Test
  void whatIsSignedBesideTheLineIsNoActAtIt() {
    assertTrue(Belonging.isAtTheLine(new Fact.ReadingFlagged(3, 4, "jump", "far apart")));
    assertTrue(Belonging.isAtTheLine(Facts.opened("101", 1)));
    assertFalse(Belonging.isAtTheLine(Facts.refused(3L)));
    assertFalse(Belonging.isAtTheLine(ProtestFact.CorrectionMade.ofDivision(3, "OC", "late")));
    assertFalse(Belonging.isAtTheLine(new Fact.StationClosed(null)));
  }
}
