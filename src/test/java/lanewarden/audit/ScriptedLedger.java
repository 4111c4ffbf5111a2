package lanewarden.audit;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import lanewarden.journal.Check;
import lanewarden.journal.Fact;
import lanewarden.journal.FactJson;
import lanewarden.journal.Outcome;
import lanewarden.journal.Standing;
import lanewarden.ledger.Draft;
import lanewarden.ledger.Entry;
import lanewarden.ledger.Head;
import lanewarden.ledger.Ledger;
import lanewarden.ledger.LedgerException;
import lanewarden.ledger.Role;
import lanewarden.ledger.SigningKey;
import lanewarden.quantity.Mass;
import lanewarden.quantity.Speed;
import lanewarden.rules.Consequence;
import lanewarden.rules.Rule;
import lanewarden.rules.RuleBook;
import lanewarden.rules.Verdict;
import lanewarden.written.Fingerprint;
import org.jspecify.annotations.Nullable;

/** A real ledger, written fact by fact as a test needs it, honest or not. */
public final class ScriptedLedger implements AutoCloseable {
  public static final Instant START = Instant.parse("2026-05-30T07:30:00Z");
  public static final String OFFICIAL = "Ottoline Vantreese";

  /** One division a rule: mean of three, and a longbow where the first within passes. */
  public static final String RULES =
      """
      format = 1
      [event]
      name = "Hollow Oak Three-Day"
      edition = "2026-1"
      [[division]]
      code = "OC"
      name = "Open compound"
      limit = "300 ft/s"
      tolerance = "3 %"
      decide = "mean"
      counted = 3
      shots = 5
      voids = 1
      rechecks = 1
      [[division]]
      code = "LB"
      name = "Longbow"
      limit = "58 m/s"
      tolerance = "none"
      decide = "first within"
      counted = 3
      shots = 3
      voids = 0
      rechecks = 0
      """;

  /** Whom the tests call, unless they bring a roster of their own. */
  public static final String ROSTER =
      """
      bib,name,division,arrow-mass
      7,Ada Brink,OC,362 gr
      101,Marta Olesund,OC,362 gr
      102,Jun Takemizu,OC,362 gr
      103,Ingeborg Hollin,OC,362 gr
      201,Ann Longbow,LB,362 gr
      301,Ines Tveit,LB,362 gr
      401,Edwin Thackerby,LB,362 gr
      402,Solveig Brattlie,LB,362 gr
      777,Ada Brink,OC,362 gr
      901,Nobody Ruled,ZZ,362 gr
      """;

  /** An instrument that writes a speed as people do, one a line. */
  public static final String PROFILE =
      """
      format = 1
      name = "gate timer"
      [port]
      baud = 9600
      data_bits = 8
      parity = "none"
      stop_bits = 1
      flow = "none"
      [line]
      terminator = "\\r\\n"
      longest = 80
      silence_ms = 250
      quiet_ms = 300
      [sentence]
      pattern = '(?<speed>[0-9.]+) (?<unit>ft/s|m/s)'
      checksum = "none"
      least = "10 ft/s"
      most = "900 ft/s"
      apart_ms = 100
      [[unit]]
      word = "ft/s"
      means = "ft/s"
      [[unit]]
      word = "m/s"
      means = "m/s"
      """;

  private final StepClock clock = new StepClock(START);
  private final SigningKey organizer = SigningKey.generate(new SecureRandom());
  private final SigningKey official = SigningKey.generate(new SecureRandom());
  private final Standing standing = new Standing();
  private final Path file;
  private Ledger ledger;
  private long check;

  private ScriptedLedger(Path file) throws Exception {
    this.file = file;
    this.ledger = Ledger.create(file, "Range East", organizer, clock, clock::nanos);
  }

  /** A ledger with one official on duty at an open line, and this rule book adopted. */
  public static ScriptedLedger with(Path file, String rules) throws Exception {
    return with(file, rules, ROSTER);
  }

  /** The same for other competitors. */
  public static ScriptedLedger with(Path file, String rules, String roster) throws Exception {
    ScriptedLedger made = bare(file);
    made.adopt(rules);
    made.openLine(roster);
    return made;
  }

  /** A roster is adopted, the official comes on duty, and the line opens. */
  public void openLine(String roster) throws Exception {
    say(roster(roster));
    say(new Fact.OfficialSignedIn(OFFICIAL));
    say(new Fact.StationOpened("gate timer", PROFILE, "Lanewarden 0.1.0"));
  }

  /** A ledger with one official and nothing else. */
  public static ScriptedLedger bare(Path file) throws Exception {
    ScriptedLedger made = new ScriptedLedger(file);
    made.ledger.enrol(made.organizer, made.official.publicKey(), OFFICIAL);
    for (Entry entry : made.ledger.entries()) {
      made.standing.apply(entry);
    }
    return made;
  }

  /** A roster, with the hash of its bytes. */
  public static Fact.RosterAdopted roster(String text) {
    return new Fact.RosterAdopted(
        "roster.csv", Fingerprint.sha256(text.getBytes(StandardCharsets.UTF_8)), text);
  }

  public void adopt(String rules) throws Exception {
    adopt(rules, null);
  }

  /** The organizer puts a rule book in force. */
  public void adopt(String rules, String reason) throws Exception {
    sign(organizer, List.of(ruleBook(rules, reason)));
  }

  /** A rule book, with the hash of its bytes. */
  public static Fact.RuleBookAdopted ruleBook(String rules, @Nullable String reason)
      throws Exception {
    byte[] utf8 = rules.getBytes(StandardCharsets.UTF_8);
    String hash = RuleBook.read("rule-book.toml", utf8).sha256();
    return new Fact.RuleBookAdopted("rule-book.toml", hash, rules, reason);
  }

  /** Signs a fact and folds it. */
  public long say(Fact fact) throws Exception {
    return sign(List.of(fact)).get(0);
  }

  /** Signs facts in one transaction and folds them. */
  List<Long> sign(List<Fact> facts) throws Exception {
    return sign(official, facts);
  }

  /** Signs a fact with the organizer's key and folds it. */
  long signAsOrganizer(Fact fact) throws Exception {
    return sign(organizer, List.of(fact)).get(0);
  }

  private List<Long> sign(SigningKey key, List<Fact> facts) throws Exception {
    List<Long> numbers = new ArrayList<>();
    for (Entry entry : ledger.append(key, facts.stream().map(FactJson::draft).toList())) {
      standing.apply(entry);
      numbers.add(entry.sequence());
    }
    return numbers;
  }

  /** Enrols somebody beside the first official. */
  public SigningKey enrol(String name, Role role) throws Exception {
    SigningKey key = SigningKey.generate(new SecureRandom());
    standing.apply(ledger.enrol(organizer, key.publicKey(), name, role));
    return key;
  }

  /** Gives somebody another key in the place of one that was lost. */
  public void suspend(SigningKey key, String reason) throws Exception {
    standing.apply(ledger.suspend(organizer, key.publicKey(), reason));
  }

  /** Enrols a key that was suspended. */
  public void enrolAgain(SigningKey key, String name, Role role) throws Exception {
    standing.apply(ledger.enrol(organizer, key.publicKey(), name, role));
  }

  public SigningKey replace(SigningKey old, String reason) throws Exception {
    SigningKey key = SigningKey.generate(new SecureRandom());
    for (Entry entry : ledger.replace(organizer, old.publicKey(), key.publicKey(), reason)) {
      standing.apply(entry);
    }
    return key;
  }

  /** Somebody else signs a fact. */
  public long sayAs(SigningKey key, Fact fact) throws Exception {
    return sign(key, List.of(fact)).get(0);
  }

  /** Signs whatever it is, without folding it. */
  long signRaw(String kind, String body) throws Exception {
    return ledger
        .append(official, List.of(new Draft(kind, body.getBytes(StandardCharsets.UTF_8))))
        .get(0)
        .sequence();
  }

  /** Calls a competitor, with the attempt that is next. */
  public long call(String bib, String name, String division) throws Exception {
    return call(bib, name, division, Mass.parse("362 gr"));
  }

  public long call(String bib, String name, String division, Mass arrow) throws Exception {
    int attempt = standing.past(bib).all().size() + 1;
    return open(new Fact.CheckOpened(bib, name, division, attempt, arrow, null));
  }

  /** Opens a check of the test's own making. */
  public long open(Fact.CheckOpened opening) throws Exception {
    check = say(opening);
    return check;
  }

  /** Takes a reading from the port, without a verdict. */
  public long read(String speed) throws Exception {
    return take(speed, "serial port");
  }

  public long take(String speed, String source) throws Exception {
    return say(
        new Fact.ReadingTaken(
            check,
            now().shots().size() + 1,
            Speed.parse(speed),
            bytes(speed),
            source,
            "gate timer",
            clock.instant(),
            null));
  }

  /** The bytes in which its instrument sends a speed, as a reading keeps them. */
  public static String bytes(String speed) {
    return Base64.getEncoder().encodeToString((speed + "\r\n").getBytes(StandardCharsets.UTF_8));
  }

  public long declareVoid(long reading, String reason) throws Exception {
    return say(new Fact.ReadingVoided(check, reading, reason));
  }

  /** Signs what the rule gives, if it decides. */
  public void verdict() throws Exception {
    Verdict verdict = now().judgedBy(rule());
    if (verdict.ends()) {
      verdict(
          Outcome.of(verdict),
          verdict.reason(),
          rule().aftermath().follows(verdict, now().phase()).orElse(null));
    }
  }

  /** The rule that governs the check at hand. */
  public Rule rule() {
    return standing
        .ruleBook(now().ruleBook())
        .orElseThrow()
        .division(now().opened().division())
        .orElseThrow()
        .rule();
  }

  /** Signs a verdict of the test's own making that nothing follows. */
  public long verdict(Outcome outcome, String reason) throws Exception {
    return verdict(outcome, reason, null);
  }

  public long verdict(Outcome outcome, String reason, Consequence follows) throws Exception {
    return say(
        new Fact.VerdictGiven(check, now().ruleBook(), outcome, reason, now().standing(), follows));
  }

  public void close(String reason) throws Exception {
    say(new Fact.CheckClosed(check, reason));
  }

  /** A whole honest check. */
  public long check(String bib, String name, String division, String... speeds) throws Exception {
    long number = call(bib, name, division);
    for (String speed : speeds) {
      read(speed);
    }
    verdict();
    close(null);
    return number;
  }

  public Check now() {
    return standing.checks().stream().filter(c -> c.number() == check).findFirst().orElseThrow();
  }

  public Standing standing() {
    return standing;
  }

  public Head head() {
    return ledger.head();
  }

  public Path file() {
    return file;
  }

  String organizerThumbprint() {
    return organizer.thumbprint();
  }

  String officialThumbprint() {
    return official.thumbprint();
  }

  public SigningKey organizer() {
    return organizer;
  }

  /** The key of the first official. */
  public SigningKey official() {
    return official;
  }

  /** What the station's clock shows now. */
  public Instant instant() {
    return clock.instant();
  }

  /** Sets the station's clock. */
  public void setClock(Instant to) {
    clock.set(to);
  }

  @Override
  public void close() throws LedgerException {
    ledger.close();
  }

  /** The program ends and runs anew. */
  public void reopen() throws Exception {
    ledger.close();
    ledger = Ledger.open(file, clock, clock::nanos);
  }

  /** Closes it, and changes one character in the middle of a stored entry. */
  void tamperWith(long entry) throws Exception {
    byte[] jws =
        ledger.entries().stream()
            .filter(e -> e.sequence() == entry)
            .findFirst()
            .orElseThrow()
            .jws();
    close();
    String stored = new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1);
    String honest = new String(jws, StandardCharsets.ISO_8859_1);
    int at = stored.indexOf(honest) + honest.length() - 20;
    char other = stored.charAt(at) == 'A' ? 'B' : 'A';
    String changed = stored.substring(0, at) + other + stored.substring(at + 1);
    Files.write(file, changed.getBytes(StandardCharsets.ISO_8859_1));
  }
}
