package lanewarden.kiosk.audit;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import lanewarden.audit.AuditReport;
import lanewarden.audit.AuditSummary;
import lanewarden.audit.findings.Finding;
import lanewarden.audit.seal.Seal;
import lanewarden.audit.slip.SlipSearch;
import lanewarden.audit.slip.Slips;
import lanewarden.journal.Fact;
import lanewarden.journal.Outcome;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.look.Wording;
import lanewarden.kiosk.protest.DocketLine;
import lanewarden.kiosk.protest.DocketWords;
import lanewarden.station.Budget;
import lanewarden.station.LedgerInspection;
import lanewarden.station.Trouble;

/**
 * What errands over a ledger found, in words; what was looked for and not found is said too.
 *
 * @param dockets how protests and corrections read
 */
record LedgerWords(Texts texts, DocketWords dockets) {

  /** A ledger that was verified. */
  Ending verified(LedgerInspection found) {
    Ending.Lines lines =
        new Ending.Lines().fact(texts.of("records.told.ledger", found.ledger().toAbsolutePath()));
    tell(found, lines);
    return new Ending(found.sound(), verdict(found), lines.all());
  }

  /** A ledger that was made of exported entries, unless they are not sound. */
  Ending broughtIn(LedgerInspection found) {
    boolean made = Files.exists(found.ledger());
    Ending.Lines lines = new Ending.Lines();
    if (made) {
      lines.fact(texts.of("records.told.made", found.ledger().toAbsolutePath()));
    } else {
      lines.wrong(texts.of("records.told.not-made"));
    }
    tell(found, lines);
    return new Ending(found.sound(), verdict(found), lines.all());
  }

  /** Every protest and every correction, which an unsound ledger does not prove. */
  Ending docket(LedgerInspection found) {
    Ending.Lines lines = new Ending.Lines().fact(texts.of("records.told.ledger", found.ledger()));
    if (!found.sound()) {
      lines.wrong(texts.of("records.told.docket-unproved"));
    }
    for (DocketLine line : dockets.docket(found.docket())) {
      if (line.open()) {
        lines.open(line.spoken());
      } else {
        lines.fact(line.spoken());
      }
    }
    int protests = found.docket().protests().size();
    int corrections = found.docket().corrections().size();
    String told =
        protests + corrections == 0
            ? texts.of("records.docket.none")
            : texts.of("records.docket.told", protests, corrections);
    return new Ending(
        found.sound(),
        found.sound() ? told : texts.of("records.unsound", found.faults().size()),
        lines.all());
  }

  /** A slip that was written. */
  Ending written(Slips.Written slip, Path pdf) {
    return new Ending(
        true,
        texts.of("records.reported", pdf.getFileName()),
        new Ending.Lines()
            .fact(texts.of("records.told.file", pdf))
            .fact(texts.of("records.told.slip", slip.check(), slip.outcome()))
            .fact(texts.of("records.told.code", slip.text()))
            .all());
  }

  /** A draw that was signed. */
  Ending drawn(Fact.DrawMade draw) {
    return new Ending(
        true,
        texts.of("records.drawn", draw.division(), draw.drawn().size(), draw.pool().size()),
        new Ending.Lines()
            .good(texts.of("records.told.to-check", String.join(", ", draw.drawn())))
            .fact(texts.of("records.told.digits", draw.seed()))
            .all());
  }

  private String verdict(LedgerInspection found) {
    return found.sound()
        ? texts.of("records.sound", found.entries())
        : texts.of("records.unsound", found.faults().size());
  }

  private void tell(LedgerInspection found, Ending.Lines lines) {
    if (found.sound()) {
      lines.good(texts.of("records.told.no-fault"));
    }
    found.faults().forEach(fault -> lines.wrong(texts.of("records.told.fault", fault.words())));
    if (found.compared() > 0) {
      lines.fact(texts.of("records.told.compared", found.compared()));
    } else {
      lines.open(texts.of("records.told.no-head"));
    }
    found.station().ifPresent(name -> lines.fact(texts.of("records.told.station", name)));
    lines.fact(texts.of("records.told.entries", found.entries()));
    found.head().ifPresent(head -> lines.fact(texts.of("records.told.head", head)));
    found
        .organizer()
        .ifPresent(thumbprint -> lines.fact(texts.of("records.told.organizer", thumbprint)));
    found
        .officials()
        .forEach(
            one -> lines.fact(texts.of("records.told.official", one.name(), one.thumbprint())));
  }

  /** A report that was made, and the folder beside it. */
  Ending reported(
      AuditReport.Written written, Path pdf, Optional<Seal> seal, Optional<Path> verifier) {
    Ending.Lines lines = new Ending.Lines().fact(texts.of("records.told.file", pdf));
    verifier.ifPresent(folder -> lines.fact(texts.of("records.told.folder", folder)));
    lines.fact(
        seal.map(one -> texts.of("records.told.seal", one.fingerprint()))
            .orElseGet(() -> texts.of("records.told.no-seal")));
    AuditSummary summary = written.summary();
    tell(summary, lines);
    tell(summary.outcomes(), lines);
    lines.fact(texts.of("records.told.undecided", summary.withoutVerdict(), summary.inQuestion()));
    tell(summary.findings(), lines);
    boolean fine = summary.sound() && summary.contradictions().isEmpty();
    return new Ending(
        fine,
        texts.of(fine ? "records.reported" : "records.reported.wrong", pdf.getFileName()),
        lines.all(),
        written.withoutTimeStamp().map(Trouble::noTimeStamp));
  }

  /** The same, and printed. */
  Ending printed(Ending made, String printer) {
    return made.with(
        Ending.Weight.GOOD, texts.of("records.told.printed-on", printer), made.trouble());
  }

  /** The same, and not printed. */
  Ending notPrinted(Ending made, Trouble missed) {
    return made.with(
        Ending.Weight.WRONG, texts.of("records.told.not-printed"), Optional.of(missed));
  }

  /** An export that was written. */
  Ending exported(AuditSummary summary, Path folder) {
    Ending.Lines lines = new Ending.Lines().fact(texts.of("records.told.folder", folder));
    tell(summary, lines);
    return new Ending(
        summary.sound(),
        texts.of(
            summary.sound() ? "records.exported" : "records.exported.wrong", folder.getFileName()),
        lines.all());
  }

  private void tell(AuditSummary summary, Ending.Lines lines) {
    if (summary.sound()) {
      lines.good(texts.of("records.told.no-fault"));
    }
    summary.faults().forEach(fault -> lines.wrong(texts.of("records.told.fault", fault)));
    lines.fact(
        texts.of(
            "records.told.figures", summary.entries(), summary.checks(), summary.competitors()));
  }

  private void tell(Map<Outcome, Integer> outcomes, Ending.Lines lines) {
    lines.fact(
        texts.of(
            "records.told.outcomes",
            outcomes.entrySet().stream()
                .map(
                    one ->
                        texts.of(
                            "records.told.outcome",
                            Wording.outcome(one.getKey(), texts),
                            one.getValue()))
                .collect(Collectors.joining(", "))));
  }

  private void tell(List<Finding> findings, Ending.Lines lines) {
    boolean follows = findings.stream().noneMatch(Finding::isContradiction);
    if (follows) {
      lines.good(texts.of("records.told.no-contradiction"));
    }
    if (findings.isEmpty()) {
      lines.good(texts.of("records.told.no-finding"));
    }
    for (Finding finding : findings) {
      String words =
          texts.of("records.told.finding", finding.heading(), finding.words(), of(finding));
      if (finding.isContradiction()) {
        lines.wrong(words);
      } else {
        lines.open(words);
      }
    }
  }

  private String of(Finding finding) {
    return finding.entries().isEmpty()
        ? texts.of("records.told.no-entry")
        : texts.of(
            "records.told.entry-numbers",
            finding.entries().stream().map(String::valueOf).collect(Collectors.joining(", ")));
  }

  /** A slip that was looked up. */
  Ending found(SlipSearch.Found found) {
    Ending.Lines lines = new Ending.Lines();
    lines.fact(
        found
            .bib()
            .map(bib -> texts.of("records.told.check", found.check(), bib))
            .orElseGet(() -> texts.of("records.told.no-check", found.check())));
    found.printed().ifPresent(word -> lines.fact(texts.of("records.told.printed", word)));
    found.now().ifPresent(word -> lines.fact(texts.of("records.told.now", word)));
    found.troubles().forEach(words -> lines.wrong(texts.of("records.told.fault", words)));
    if (found.troubles().isEmpty()) {
      lines.good(texts.of("records.told.fits"));
    }
    String words =
        found.stands()
            ? "records.slip.stands"
            : found.troubles().isEmpty() ? "records.slip.corrected" : "records.slip.foreign";
    return new Ending(found.stands(), texts.of(words), lines.all());
  }

  private String degrees(Budget.Influence influence) {
    return influence.degrees().isPresent()
        ? String.valueOf(influence.degrees().getAsLong())
        : texts.of("records.told.endless");
  }

  /** What makes a reading uncertain. */
  Ending budget(Budget budget) {
    Ending.Lines lines = new Ending.Lines();
    for (Budget.Influence influence : budget.influences()) {
      lines.fact(
          texts.of(
              "records.told.influence",
              influence.name(),
              influence.standard(),
              degrees(influence),
              influence.words()));
    }
    return new Ending(true, budget.total(), lines.all());
  }
}
