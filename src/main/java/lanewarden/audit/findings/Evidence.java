package lanewarden.audit.findings;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lanewarden.audit.press.Packed;
import lanewarden.audit.wording.CheckRow;
import lanewarden.audit.wording.FigureWorth;
import lanewarden.audit.wording.Openings;
import lanewarden.audit.wording.ProtestSheet;
import lanewarden.journal.Check;
import lanewarden.journal.Standing;
import lanewarden.ledger.Verification;
import lanewarden.rules.Division;

/**
 * Everything a report rests on: what verification found, and what the entries amount to.
 *
 * @param findings the gravest first
 * @param contradictions those of each check by itself, by its number
 * @param signed how many entries each key signed, by thumbprint
 * @param faulty the numbers of the entries that are not sound
 * @param openings how the line was opened
 * @param seals the keys that seal reports
 * @param practices the practice days that were kept
 * @param entries every entry that could be read, a line each; nothing where they are not to be kept
 * @param clock how far its clock can be trusted
 * @param first time of the first entry that could be read
 * @param last time of the last one
 */
public record Evidence(
    Verification verification,
    Standing standing,
    List<Finding> findings,
    Map<Long, List<Finding>> contradictions,
    Map<String, Integer> signed,
    Set<Long> faulty,
    Openings openings,
    Seals seals,
    Practices practices,
    Optional<Packed> entries,
    ClockSheet clock,
    Optional<Instant> first,
    Optional<Instant> last) {

  /** Copies the lists and the maps. */
  public Evidence {
    findings = List.copyOf(findings);
    contradictions = Map.copyOf(contradictions);
    signed = Map.copyOf(signed);
    faulty = Set.copyOf(faulty);
  }

  /**
   * What of the ledger's contradictions bears on a check by itself: on its entries, on the rule
   * book that it was judged by, or on a correction of it.
   */
  public List<Finding> contradictions(Check check) {
    return contradictions.getOrDefault(check.number(), List.of());
  }

  /** Who signs with which key, by thumbprint. */
  public Map<String, String> names() {
    return names(verification);
  }

  static Map<String, String> names(Verification verification) {
    Map<String, String> byKey = new LinkedHashMap<>();
    verification.organizer().ifPresent(key -> byKey.put(key, "the organizer"));
    verification.officials().forEach(o -> byKey.put(o.thumbprint(), o.name()));
    return byKey;
  }

  /** The division that a check was shot in, by the rule book that governs it. */
  public Optional<Division> division(Check check) {
    return standing
        .ruleBook(check.ruleBook())
        .flatMap(book -> book.division(check.opened().division()));
  }

  /** A check as a row of the report. */
  public CheckRow row(Check check) {
    return CheckRow.of(
        check,
        FigureWorth.of(check, division(check).map(Division::rule), openings),
        names(),
        faulty,
        ProtestSheet.notes(standing, check));
  }
}
