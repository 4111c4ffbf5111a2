package lanewarden.audit;

import java.util.ArrayList;
import java.util.List;
import lanewarden.audit.findings.Evidence;
import lanewarden.audit.wording.Cell;
import lanewarden.journal.Check;
import lanewarden.journal.Fact;
import lanewarden.journal.SecondReading;
import lanewarden.journal.TakenShot;
import org.jspecify.annotations.Nullable;

/** The readings of a ledger as an exported table, a row each. */
final class ReadingTable {
  private static final List<String> HEADINGS =
      List.of(
          "reading",
          "check",
          "shot",
          "taken (UTC)",
          "bib",
          "division",
          "speed",
          "speed (unit)",
          "counts",
          "source",
          "name",
          "standard uncertainty",
          "standard uncertainty (unit)",
          "why void",
          "why let count",
          "in doubt",
          "instrument",
          "line",
          "bytes (base64)",
          "second instrument",
          "second speed",
          "second speed (unit)");

  private final Evidence evidence;

  ReadingTable(Evidence evidence) {
    this.evidence = evidence;
  }

  /** The rows, headings first. */
  List<List<String>> rows() {
    List<List<String>> rows = new ArrayList<>();
    rows.add(HEADINGS);
    for (Check check : evidence.standing().checks()) {
      for (TakenShot shot : check.shots()) {
        rows.add(Cell.row(taken(check, shot), told(check, shot)));
      }
    }
    return rows;
  }

  private static List<String> taken(Check check, TakenShot shot) {
    Fact.ReadingTaken reading = shot.reading();
    return Cell.row(
        List.of(
            String.valueOf(shot.sequence()),
            String.valueOf(check.number()),
            String.valueOf(reading.shot()),
            Cell.time(reading.at()),
            Cell.text(check.opened().bib()),
            Cell.text(check.opened().division())),
        Cell.quantity(reading.speed()),
        List.of(counts(shot), Cell.text(reading.source())));
  }

  private static String counts(TakenShot shot) {
    if (!shot.stands()) {
      return "void";
    }
    if (!shot.counts()) {
      return "impossible";
    }
    return shot.isSettled() ? "yes" : "in doubt";
  }

  private static List<String> told(Check check, TakenShot shot) {
    Fact.ReadingTaken reading = shot.reading();
    Fact.@Nullable ReadingVoided voided = shot.voided();
    Fact.@Nullable ReadingKept kept = shot.kept();
    @Nullable SecondReading second = reading.second();
    return Cell.row(
        List.of(Cell.text(check.opened().name())),
        Cell.quantity(reading.uncertainty()),
        List.of(
            Cell.text(voided == null ? null : voided.reason()),
            Cell.text(kept == null ? null : kept.reason()),
            Cell.text(String.join("; ", shot.flags().stream().map(f -> f.words()).toList())),
            Cell.text(reading.instrument()),
            Cell.text(reading.line()),
            Cell.text(reading.raw()),
            Cell.text(second == null ? null : second.instrument())),
        Cell.quantity(second == null ? null : second.speed()));
  }
}
