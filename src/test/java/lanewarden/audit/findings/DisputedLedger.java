package lanewarden.audit.findings;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.Stream;
import lanewarden.audit.Audited;
import lanewarden.audit.Dispute;
import lanewarden.audit.PrintedReport;
import lanewarden.audit.ScriptedLedger;
import lanewarden.audit.findings.Finding.Kind;
import lanewarden.audit.slip.Slips;
import lanewarden.ledger.SigningKey;
import lanewarden.station.SignedPapers;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A ledger in which a check can be disputed, and what the audit finds in it. */
abstract class DisputedLedger {
  @TempDir Path folder;
  ScriptedLedger ledger;
  Dispute dispute;
  SigningKey judge;
  SigningKey other;

  @BeforeEach
  void open() throws Exception {
    ledger = ScriptedLedger.with(folder.resolve("event.ledger"), ScriptedLedger.RULES);
    dispute = Dispute.in(ledger);
    judge = dispute.judge();
    other = dispute.other();
  }

  @AfterEach
  void close() throws Exception {
    ledger.close();
  }

  Audited audited() throws Exception {
    return Audited.of(ledger.file());
  }

  List<Kind> contradictions() throws Exception {
    return audited().contradictions();
  }

  String only(Kind kind) throws Exception {
    return audited().only(kind);
  }

  String slip(long check) throws Exception {
    Path pdf = folder.resolve("slip.pdf");
    new Slips(Clock.fixed(PrintedReport.MADE, ZoneOffset.UTC), SignedPapers::of)
        .write(ledger.file(), String.valueOf(check), pdf);
    String text = PrintedReport.textOf(pdf);
    assertEquals(List.of(), Stream.of("Thackerby", "glared").filter(text::contains).toList());
    return text;
  }
}
