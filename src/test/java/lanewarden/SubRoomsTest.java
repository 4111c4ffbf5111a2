package lanewarden;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static lanewarden.ArchitectureTest.HOUSE;
import static lanewarden.ArchitectureTest.WINDOWS;
import static lanewarden.ArchitectureTest.nameOf;
import static lanewarden.ArchitectureTest.roomOf;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.tngtech.archunit.core.domain.JavaClass;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The arrows between the sub-rooms of a room. No exemptions. */
class SubRoomsTest {

  /** Sub-room of the audit → what else of the house it may import; never the audit above it. */
  private static final Map<String, String> AUDIT_ARROWS =
      Map.of(
          "audit.press", "quantity",
          "audit.seal", "ledger",
          "audit.printing", "",
          "audit.wording", "quantity metrology bow rules journal",
          "audit.findings",
              "quantity metrology rules ledger journal audit.press audit.seal audit.wording",
          "audit.slip", "rules bench ledger journal audit.press audit.wording audit.findings",
          "audit.comparison", "quantity metrology rules bench audit.press audit.wording");

  /**
   * What the windows may import of those sub-rooms; what they open to each other is not for all.
   */
  private static final Set<String> AUDIT_DOORS =
      Set.of(
          "lanewarden.audit.press.Progress",
          "lanewarden.audit.seal.Seal",
          "lanewarden.audit.seal.TimeStampAuthority",
          "lanewarden.audit.findings.Finding",
          // How a check reads is one thing, in a report and in a terminal
          "lanewarden.audit.wording.CheckRow",
          "lanewarden.audit.wording.Wording",
          "lanewarden.audit.printing.Printers",
          "lanewarden.audit.printing.PrintRefused",
          "lanewarden.audit.slip.Slips",
          "lanewarden.audit.slip.Slips$Written",
          "lanewarden.audit.slip.SlipRefused",
          "lanewarden.audit.slip.SlipRefused$Nature",
          "lanewarden.audit.slip.SlipSearch",
          "lanewarden.audit.slip.SlipSearch$Found",
          "lanewarden.audit.comparison.ComparisonPaper");

  static Stream<Arguments> auditSubRooms() {
    return AUDIT_ARROWS.entrySet().stream()
        .map(e -> Arguments.of(e.getKey(), Set.of(e.getValue().split(" "))));
  }

  @ParameterizedTest
  @MethodSource("auditSubRooms")
  void auditSubRoomImportsOnlyWhatItMay(String subRoom, Set<String> allowed) {
    List<JavaClass> inside = HOUSE.stream().filter(c -> pathOf(c).equals(subRoom)).toList();
    assertFalse(inside.isEmpty(), subRoom + " has no class: an empty sub-room");
    List<String> broken = new ArrayList<>();
    for (JavaClass javaClass : inside) {
      javaClass.getDirectDependenciesFromSelf().stream()
          .filter(d -> d.getTargetClass().getPackageName().startsWith("lanewarden"))
          .filter(d -> !pathOf(d.getTargetClass()).equals(subRoom))
          .filter(d -> !allowed.contains(pathOf(d.getTargetClass())))
          .forEach(d -> broken.add(d.getDescription()));
    }
    assertEquals(List.of(), broken, subRoom + " may import only " + allowed);
  }

  @Test
  void auditSubRoomsFormNoCircle() {
    slices().matching("lanewarden.audit.(*)..").should().beFreeOfCycles().check(HOUSE);
  }

  @Test
  void windowsUseOnlyTheDoorsOfTheAuditsSubRooms() {
    Set<String> others =
        HOUSE.stream()
            .filter(c -> WINDOWS.contains(roomOf(c)))
            .flatMap(c -> c.getDirectDependenciesFromSelf().stream())
            .filter(d -> pathOf(d.getTargetClass()).startsWith("audit."))
            .filter(d -> !AUDIT_DOORS.contains(nameOf(d.getTargetClass())))
            .map(d -> d.getDescription())
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(Set.of(), others);
  }

  @Test
  void everySubRoomOfTheAuditSaysWhatItMayImport() {
    Set<String> others =
        HOUSE.stream()
            .map(SubRoomsTest::pathOf)
            .filter(p -> p.startsWith("audit.") && !AUDIT_ARROWS.containsKey(p))
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(Set.of(), others);
  }

  @Test
  void kioskHasOneSubRoomForEachTask() {
    Set<String> agreed =
        Set.of(
            "look",
            "desk",
            "signin",
            "line",
            "board",
            "trouble",
            "audit",
            "rulebook",
            "instrument",
            "protest",
            "people",
            "form",
            "setups",
            "checkup",
            "sound",
            "start");
    Set<String> others =
        HOUSE.stream()
            .map(JavaClass::getPackageName)
            .filter(p -> p.startsWith("lanewarden.kiosk."))
            .map(p -> p.substring("lanewarden.kiosk.".length()))
            .filter(p -> !agreed.contains(p))
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(Set.of(), others, "a sub-room of the kiosk is one task of a person");
  }

  /** The package below the house's own: a room, or a sub-room as {@code audit.press}. */
  private static String pathOf(JavaClass javaClass) {
    return javaClass.getPackageName().replaceFirst("^lanewarden\\.?", "");
  }
}
