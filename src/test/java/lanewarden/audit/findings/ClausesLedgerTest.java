package lanewarden.audit.findings;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import lanewarden.audit.Audited;
import lanewarden.audit.ScriptedLedger;
import lanewarden.audit.findings.Finding.Kind;
import lanewarden.journal.Fact;
import lanewarden.journal.SetUpStated;
import lanewarden.quantity.Force;
import lanewarden.quantity.Mass;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A ledger under rules with many clauses, for tests of what the audit finds in it. */
abstract class ClausesLedgerTest {
  static final String ROSTER =
      """
      bib,name,division,arrow-mass
      1,Ann,RS,362 gr
      2,Ben,RS,362 gr
      3,Cat,RS,362 gr
      4,Dan,BH,362 gr
      5,Eve,NJ,362 gr
      6,Max,NM,362 gr
      7,Liv,NO,362 gr
      8,Hal,PH,362 gr
      9,Ida,PH,362 gr
      10,Jon,SP,362 gr
      11,Kai,SP,362 gr
      12,Ivo,JU,362 gr
      13,Moe,OU,362 gr
      """;

  static final String RULES =
      """
      format = 1
      [event]
      name = "Clauses"
      edition = "1"
      """
          + division("BH", "least-arrow = \"6 gr/lb\"\nconditions = [\"full draw\"]")
          + division("RS", "who = \"random share\"\nshare = \"50 %\"")
          + division("NJ", "who = \"named by a judge\"\nlapses = [\"another bow\"]")
          + division("PH", "fail-during = \"barred\"")
          + division("NM", "who = \"not measured\"")
          + "[[division]]\ncode = \"NO\"\nname = \"None\"\nlimit = \"none\"\n";

  static String division(String code, String more) {
    return """
        [[division]]
        code = "%s"
        name = "Division %s"
        limit = "300 ft/s"
        tolerance = "none"
        decide = "highest"
        counted = 1
        shots = 2
        voids = 1
        rechecks = 1
        %s
        """
        .formatted(code, code, more);
  }

  @TempDir Path folder;
  ScriptedLedger ledger;

  @BeforeEach
  void open() throws Exception {
    ledger = ScriptedLedger.with(folder.resolve("event.ledger"), RULES, ROSTER);
  }

  @AfterEach
  void close() throws Exception {
    ledger.close();
  }

  final Audited audited() throws Exception {
    return Audited.of(ledger.file());
  }

  final List<Kind> contradictions() throws Exception {
    return audited().contradictions();
  }

  final List<String> words(Kind kind) throws Exception {
    return audited().words(kind);
  }

  final void assertFound(Kind kind, String part) throws Exception {
    String words = audited().only(kind);
    assertTrue(words.contains(part), words);
  }

  final long call(String bib, String division, String grounds) throws Exception {
    int attempt = ledger.standing().checksOf(bib).size() + 1;
    return ledger.open(
        new Fact.CheckOpened(
            bib, name(bib), division, attempt, null, null, null, null, null, grounds, null));
  }

  /** The name that the roster has for a bib. */
  static String name(String bib) {
    return ROSTER
        .lines()
        .map(line -> line.split(","))
        .filter(cells -> cells[0].equals(bib))
        .findFirst()
        .orElseThrow()[1];
  }

  final void state(String arrow, String draw) throws Exception {
    ledger.say(new SetUpStated(ledger.now().number(), Mass.parse(arrow), Force.parse(draw), null));
  }
}
