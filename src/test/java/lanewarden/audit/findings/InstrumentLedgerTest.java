package lanewarden.audit.findings;

import java.nio.file.Path;
import java.util.List;
import lanewarden.audit.Audited;
import lanewarden.audit.ScriptedLedger;
import lanewarden.audit.findings.Finding.Kind;
import lanewarden.journal.Fact;
import lanewarden.quantity.Speed;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A ledger in which the instrument is verified, for tests of what the audit finds about that. */
public abstract class InstrumentLedgerTest {
  static final Speed BOW = Speed.parse("296.4 ft/s");
  protected static final String[] GOOD = {"296.0 ft/s", "296.5 ft/s", "296.9 ft/s"};
  protected static final String[] OFF = {"299.0 ft/s", "299.1 ft/s", "299.2 ft/s"};

  @TempDir Path folder;
  protected ScriptedLedger ledger;

  @BeforeEach
  void open() throws Exception {
    ledger = ScriptedLedger.with(folder.resolve("event.ledger"), ScriptedLedger.RULES);
  }

  @AfterEach
  void close() throws Exception {
    ledger.close();
  }

  List<Finding> findings() throws Exception {
    return Audited.of(ledger.file()).findings();
  }

  List<Kind> kinds() throws Exception {
    return Audited.of(ledger.file()).kinds();
  }

  String words(Kind kind) throws Exception {
    return Audited.of(ledger.file()).only(kind);
  }

  void plan(boolean beforeOpening, Integer every, boolean atEnd) throws Exception {
    ledger.say(new Fact.VerificationPlanned(beforeOpening, every, atEnd));
  }

  long begin() throws Exception {
    return begin(3, "1 ft/s", "1 ft/s");
  }

  long begin(int shots, String mostBias, String mostSpread) throws Exception {
    return ledger.say(
        new Fact.VerificationBegan("on request", "check bow", shots, mostBias, mostSpread, BOW));
  }

  protected long shots(String... speeds) throws Exception {
    return shots(begin(), speeds);
  }

  long shots(long round, String... speeds) throws Exception {
    for (int i = 0; i < speeds.length; i++) {
      shot(round, i + 1, speeds[i], BOW);
    }
    return round;
  }

  void shot(long round, int number, String speed, Speed reference) throws Exception {
    ledger.say(
        new Fact.VerificationShot(
            round,
            number,
            Speed.parse(speed),
            ScriptedLedger.bytes(speed),
            "serial port",
            "gate timer",
            ledger.instant(),
            reference,
            null));
  }

  protected long verify(boolean passed, String... speeds) throws Exception {
    long round = shots(speeds);
    ledger.say(new Fact.VerificationEnded(round, passed, "as computed", null));
    return round;
  }

  long hold(Long by, Long... checks) throws Exception {
    return ledger.say(new Fact.LineHeld(by, "the stand was knocked", List.of(checks)));
  }

  long marta() throws Exception {
    return ledger.check("101", "Marta Olesund", "OC", "302 ft/s", "301 ft/s", "300 ft/s");
  }

  long edwin() throws Exception {
    return ledger.check("401", "Edwin Thackerby", "LB", "57.9 m/s");
  }
}
