package lanewarden;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
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

/** The arrows between the rooms, and the fences around the technologies. No exemptions. */
class ArchitectureTest {

  static final JavaClasses HOUSE =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("lanewarden");

  /** Room → the rooms it may import; every room may import itself. */
  private static final Map<String, Set<String>> ARROWS = arrows();

  private static Map<String, Set<String>> arrows() {
    Map<String, Set<String>> table = new LinkedHashMap<>();
    table.put("quantity", Set.of());
    table.put("written", Set.of("quantity"));
    table.put("metrology", Set.of("quantity"));
    table.put("bow", Set.of("quantity", "metrology"));
    table.put("rules", Set.of("quantity", "written", "metrology", "bow"));
    table.put("bench", Set.of("quantity", "written", "metrology", "bow", "rules"));
    table.put("ledger", Set.of());
    table.put("chronograph", Set.of("quantity", "written", "metrology"));
    table.put("roster", Set.of("quantity", "written"));
    table.put("journal", Set.of("quantity", "written", "rules", "ledger", "roster"));
    table.put("station", Set.copyOf(table.keySet()));
    table.put(
        "audit", Set.of("quantity", "metrology", "bow", "rules", "bench", "ledger", "journal"));
    table.put("kiosk", Set.of("station", "audit", "quantity"));
    table.put("command", Set.of("station", "audit", "quantity"));
    return table;
  }

  /** Values that station and audit hand out, which screens and terminal may read. */
  private static final Set<String> VALUES =
      Set.of(
          "lanewarden.bench.Advice",
          "lanewarden.bench.BowMass",
          "lanewarden.bench.Caution",
          "lanewarden.bench.Comparison",
          "lanewarden.bench.ComparisonSheet",
          "lanewarden.bench.ComparisonSheet$Line",
          "lanewarden.bench.ComparisonSheet$Margin",
          "lanewarden.bench.ComparisonSheet$Pair",
          "lanewarden.bench.LeftOut",
          "lanewarden.bench.LimitMargin",
          "lanewarden.bench.PairDifference",
          "lanewarden.bench.PairDifference$Sense",
          "lanewarden.bench.Practice",
          "lanewarden.bench.PracticeBow",
          "lanewarden.bench.PracticeSetUp",
          "lanewarden.bench.PracticeShot",
          "lanewarden.bench.PracticeShot$Word",
          "lanewarden.bench.Rating",
          "lanewarden.bench.Rating$Expected",
          "lanewarden.bench.Series",
          "lanewarden.bench.Showing",
          "lanewarden.bench.Advised",
          "lanewarden.bench.Foretold",
          "lanewarden.bench.Told",
          "lanewarden.bench.Prospect",
          "lanewarden.bench.Prospect$Lacking",
          "lanewarden.bench.Prospect$Measured",
          "lanewarden.bench.Prospect$NotAdmitted",
          "lanewarden.bow.BowLimit$Need",
          "lanewarden.chronograph.Reason",
          "lanewarden.journal.Check",
          "lanewarden.journal.TakenShot",
          "lanewarden.journal.LineStop",
          "lanewarden.journal.Check$GivenVerdict",
          "lanewarden.journal.Fact",
          "lanewarden.journal.Fact$CheckOpened",
          "lanewarden.journal.Fact$CheckClosed",
          "lanewarden.journal.Fact$DrawMade",
          "lanewarden.journal.Fact$LineRefused",
          "lanewarden.journal.Fact$ReadingTaken",
          "lanewarden.journal.Fact$ReadingVoided",
          "lanewarden.journal.Fact$ReadingFlagged",
          "lanewarden.journal.Fact$ReadingKept",
          "lanewarden.journal.Fact$VerdictGiven",
          "lanewarden.journal.Outcome",
          "lanewarden.journal.Occasion",
          "lanewarden.journal.Sequel",
          "lanewarden.journal.Untimely",
          "lanewarden.journal.Docket",
          "lanewarden.journal.Protest",
          "lanewarden.journal.Protest$Given",
          "lanewarden.journal.Correction",
          "lanewarden.journal.Correction$Confirmed",
          "lanewarden.journal.ProtestFact",
          "lanewarden.journal.ProtestFact$ProtestFiled",
          "lanewarden.journal.ProtestFact$ProtestRuled",
          "lanewarden.journal.ProtestFact$CorrectionMade",
          "lanewarden.journal.ProtestFact$Cause",
          "lanewarden.journal.ProtestFact$Answer",
          "lanewarden.journal.ProtestFact$Part",
          "lanewarden.ledger.Head",
          "lanewarden.roster.Competitor",
          "lanewarden.roster.RosterSheet",
          "lanewarden.roster.RosterSheet$Mapped",
          "lanewarden.roster.RosterSheet$Wanted",
          "lanewarden.metrology.Chances",
          "lanewarden.metrology.ChartPoint",
          "lanewarden.metrology.CurvePoint",
          "lanewarden.metrology.Estimate",
          "lanewarden.metrology.Interval",
          "lanewarden.metrology.OperatingCharacteristic$Risks",
          "lanewarden.metrology.Compared",
          "lanewarden.metrology.Guarding",
          "lanewarden.metrology.OutlierTest$Name",
          "lanewarden.metrology.Straying",
          "lanewarden.rules.Because",
          "lanewarden.rules.Worked",
          "lanewarden.rules.Odds",
          "lanewarden.rules.Lapse",
          "lanewarden.rules.Afterwards",
          "lanewarden.rules.Consequence",
          "lanewarden.rules.Demand",
          "lanewarden.rules.Division",
          "lanewarden.rules.Doubt",
          "lanewarden.rules.Doubt$Kind",
          "lanewarden.rules.Phase",
          "lanewarden.rules.Aftermath",
          "lanewarden.rules.Rule",
          "lanewarden.rules.Screening",
          "lanewarden.rules.SetUp",
          "lanewarden.rules.Verdict",
          "lanewarden.rules.WorkedCase",
          "lanewarden.written.FaultTold",
          "lanewarden.written.FileTold",
          "lanewarden.written.CsvTold",
          "lanewarden.written.TomlTold",
          "lanewarden.roster.RosterTold",
          "lanewarden.bench.PracticeTold",
          "lanewarden.rules.BookTold");

  /** The rooms that look at what others hand out. */
  static final Set<String> WINDOWS = Set.of("kiosk", "command");

  /** Libraries fenced into rooms: package prefix → rooms that may use it. */
  private static final Map<String, Set<String>> FENCES =
      Map.ofEntries(
          Map.entry("javafx.", Set.of("kiosk", "")),
          Map.entry("java.sql.", Set.of("ledger")),
          Map.entry("javax.sql.", Set.of("ledger")),
          Map.entry("java.awt.", Set.of("audit")),
          Map.entry("javax.swing.", Set.of()),
          Map.entry("com.fasterxml.", Set.of("ledger", "journal", "command")),
          Map.entry("org.sqlite.", Set.of("ledger")),
          Map.entry("org.bouncycastle.", Set.of("ledger", "audit")),
          Map.entry("org.jose4j.", Set.of("ledger")),
          Map.entry("org.apache.commons.statistics.", Set.of("metrology")),
          Map.entry("com.fazecast.", Set.of("chronograph")),
          Map.entry("org.apache.pdfbox.", Set.of("audit")),
          Map.entry("com.samskivert.", Set.of("audit")),
          Map.entry("com.google.zxing.", Set.of("audit")),
          Map.entry("picocli.", Set.of("command")),
          Map.entry("org.tomlj.", Set.of("written")),
          Map.entry("de.siegmar.", Set.of("written", "audit")));

  static Stream<Arguments> rooms() {
    return ARROWS.entrySet().stream().map(e -> Arguments.of(e.getKey(), e.getValue()));
  }

  @ParameterizedTest
  @MethodSource("rooms")
  void roomImportsOnlyTheRoomsItMay(String room, Set<String> allowed) {
    List<String> broken = new ArrayList<>();
    for (JavaClass javaClass : HOUSE) {
      if (!roomOf(javaClass).equals(room)) {
        continue;
      }
      javaClass.getDirectDependenciesFromSelf().stream()
          .filter(d -> d.getTargetClass().getPackageName().startsWith("lanewarden"))
          .filter(d -> !roomOf(d.getTargetClass()).equals(room))
          .filter(d -> !allowed.contains(roomOf(d.getTargetClass())))
          .filter(d -> !(WINDOWS.contains(room) && VALUES.contains(nameOf(d.getTargetClass()))))
          .forEach(d -> broken.add(d.getDescription()));
    }
    assertEquals(List.of(), broken, room + " may import only " + allowed);
  }

  @ParameterizedTest
  @MethodSource("rooms")
  void roomHasAJobAndAFrontDoor(String room, Set<String> allowed) {
    assertFalse(
        HOUSE.stream().noneMatch(c -> roomOf(c).equals(room)),
        room + " has no class: an empty room");
  }

  @Test
  void everyPackageBelongsToARoom() {
    Set<String> strangers =
        HOUSE.stream()
            .filter(c -> !roomOf(c).isEmpty() && !ARROWS.containsKey(roomOf(c)))
            .map(JavaClass::getName)
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(Set.of(), strangers);
  }

  @Test
  void roomsFormNoCircle() {
    slices().matching("lanewarden.(*)..").should().beFreeOfCycles().check(HOUSE);
  }

  @Test
  void libraryStaysBehindItsFence() {
    List<String> broken = new ArrayList<>();
    for (JavaClass javaClass : HOUSE) {
      String room = roomOf(javaClass);
      javaClass.getDirectDependenciesFromSelf().stream()
          .filter(d -> outsideFence(room, d.getTargetClass().getName()))
          .forEach(d -> broken.add(d.getDescription()));
    }
    assertEquals(List.of(), broken, "a library is used outside its room");
  }

  private static boolean outsideFence(String room, String target) {
    return FENCES.entrySet().stream()
        .anyMatch(f -> target.startsWith(f.getKey()) && !f.getValue().contains(room));
  }

  @Test
  void quantityKnowsOnlyTheJdk() {
    onlyJdkAnd("quantity", Set.of("org.jspecify"));
  }

  @Test
  void viewModelsKnowNoSceneNodes() {
    noClasses()
        .that()
        .haveSimpleNameEndingWith("ViewModel")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("javafx.scene..")
        .because("a view-model is tested without a toolkit")
        .allowEmptyShould(true)
        .check(HOUSE);
  }

  @Test
  void clockAndRandomnessEnterThroughConstructors() {
    List<String> broken = new ArrayList<>();
    for (JavaClass javaClass : HOUSE) {
      if (roomOf(javaClass).isEmpty()) {
        continue;
      }
      Stream.concat(
              javaClass.getCodeUnitCallsFromSelf().stream(),
              javaClass.getCodeUnitReferencesFromSelf().stream())
          .filter(a -> bringsTimeOrChance(a.getTarget()))
          .forEach(a -> broken.add(a.getDescription()));
    }
    assertEquals(List.of(), broken, "take a clock or a source of randomness in the constructor");
  }

  /** Whether a call makes a clock tick or dice roll that nobody handed in. */
  private static boolean bringsTimeOrChance(AccessTarget target) {
    String owner = target.getOwner().getName();
    String member = target.getName();
    return switch (owner) {
      case "java.time.Clock" -> member.startsWith("system") || member.startsWith("tick");
      case "java.lang.System" -> member.equals("currentTimeMillis") || member.equals("nanoTime");
      case "java.lang.Math" -> member.equals("random");
      case "java.util.UUID" -> member.equals("randomUUID");
      case "java.util.Date", "java.util.GregorianCalendar" -> member.equals("<init>");
      case "java.util.Random", "java.util.SplittableRandom" ->
          target.getFullName().endsWith("<init>()");
      case "java.security.SecureRandom" ->
          member.equals("<init>") || member.startsWith("getInstance");
      case "java.util.concurrent.ThreadLocalRandom" -> true;
      default -> owner.startsWith("java.time.") && member.equals("now");
    };
  }

  private static void onlyJdkAnd(String room, Set<String> also) {
    Set<String> foreign =
        HOUSE.stream()
            .filter(c -> roomOf(c).equals(room))
            .flatMap(c -> c.getDirectDependenciesFromSelf().stream())
            .map(d -> d.getTargetClass().getPackageName())
            .filter(p -> !p.isEmpty() && !p.startsWith("java."))
            .filter(p -> !p.startsWith("lanewarden." + room))
            .filter(p -> also.stream().noneMatch(p::startsWith))
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(Set.of(), foreign, room + " knows only the JDK and " + also);
  }

  /** The name of a class, or of what an array holds. */
  static String nameOf(JavaClass javaClass) {
    return javaClass.getBaseComponentType().getName();
  }

  static String roomOf(JavaClass javaClass) {
    String[] parts = javaClass.getPackageName().split("\\.", -1);
    return parts.length > 1 ? Arrays.asList(parts).get(1) : "";
  }
}
