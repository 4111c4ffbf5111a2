package lanewarden.journal;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import lanewarden.quantity.Force;
import lanewarden.quantity.Length;
import lanewarden.quantity.Mass;
import lanewarden.quantity.Speed;
import lanewarden.rules.Consequence;
import lanewarden.rules.Phase;
import lanewarden.rules.RuleBook;
import lanewarden.rules.SetUp;
import lanewarden.written.WrittenRefused;

/** One fact of every kind, in an order in which a line could have produced them. */
public final class Facts {

  static final String RULES =
      """
      format = 1
      [event]
      name = "Hollow Oak Three-Day"
      edition = "2026-1"
      [[division]]
      code = "OC"
      name = "Open compound"
      limit = "300 ft/s"
      tolerance = "none"
      decide = "highest"
      counted = 2
      shots = 4
      voids = 1
      rechecks = 1
      """;

  private Facts() {}

  static Fact.RuleBookAdopted ruleBook() {
    try {
      RuleBook book = RuleBook.read("rule-book.toml", RULES.getBytes(StandardCharsets.UTF_8));
      return new Fact.RuleBookAdopted("rule-book.toml", book.sha256(), book.text());
    } catch (WrittenRefused e) {
      throw new AssertionError(e);
    }
  }

  static Fact.CheckOpened opened(String bib, int attempt) {
    return new Fact.CheckOpened(
        bib, "Nell Ashby", "OC", attempt, Mass.parse("350.5 gr"), Force.parse("60 lbf"));
  }

  /** A recheck under a protest. */
  static Fact.CheckOpened recheck(String bib, long protest) {
    return new Fact.CheckOpened(
        bib, "Nell Ashby", "OC", 1, null, null, null, null, null, null, protest);
  }

  static Fact.ReadingTaken reading(long check, int shot, String speed) {
    return new Fact.ReadingTaken(
        check,
        shot,
        Speed.parse(speed),
        "MzAwLjENCg==",
        "serial port",
        "Gate timer on /dev/ttyUSB0",
        Book.NOON.plusMillis(17),
        "0042");
  }

  static Fact.VerdictGiven verdict(long check, Outcome outcome, List<Long> readings) {
    return new Fact.VerdictGiven(check, ruleBook().sha256(), outcome, "highest 300.1", readings);
  }

  static Fact.LineRefused refused(Long check) {
    return new Fact.LineRefused(
        check, "MzANCg==", "torn", "Half a line.", "serial port", "Gate timer", Book.NOON);
  }

  /** At least one of every kind. */
  public static Stream<Fact> ofEveryKind() {
    return Stream.of(
        ruleBook(),
        new Fact.RosterAdopted("roster.csv", "00ff", "bib,name,division\n1,\"Ünal, Ö\",OC\n"),
        new Fact.RuleBookAdopted("rule-book.toml", "00ff", RULES, "the limit was misprinted"),
        new FrameFact.ReportSealAdopted("MIIBnTCCAUOgAwIBAgIQ"),
        new Fact.DrawMade(
            "OC", "4 1 5 2, thrown at the gate", "50 %", List.of("1", "2"), List.of("2")),
        new Fact.StationOpened("Gate timer", "format = 1\n", "Lanewarden 0.1.0"),
        new Fact.StationOpened(
            "Near and Far",
            "format = 1\n",
            "Lanewarden 0.1.0",
            "format = 1 # far",
            "station = \"A\"",
            List.of("display step: 0.0289 ft/s"),
            new Place(
                Length.parse("3.00 m"),
                Length.parse("7 mm"),
                new BigDecimal("1.80"),
                new BigDecimal("1.2"))),
        new Fact.OfficialSignedIn("Ada Holt"),
        new Fact.PhaseBegan(Phase.DURING),
        new Fact.PhaseBegan(Phase.BEFORE, "begun by mistake"),
        opened("101", 1),
        new Fact.CheckOpened(
            "103",
            "Wim Ezra",
            "OC",
            2,
            null,
            null,
            Force.parse("62 lbf"),
            Length.parse("29.25 in"),
            Length.parse("180 mm"),
            "another bow",
            null),
        new SetUpStated(3, Mass.parse("352.5 gr"), Force.parse("61 lbf"), null),
        new SetUpStated(3, null, null, Force.parse("270 N")),
        new SetUpStated(3, null, null, null, Length.parse("74 cm"), Length.parse("7 in")),
        new SetUpStated(
            3, Mass.parse("352.5 gr"), null, null, null, null, List.of(SetUp.ARROW_MASS)),
        new Fact.ConditionTicked(3, "full draw"),
        new Fact.CheckOpened("102", "Piet Ory", "OC", 1, null, null),
        reading(3, 1, "300.10 ft/s"),
        new Fact.ReadingTaken(
            3, 2, Speed.parse("91.5 m/s"), "", "typed", "keyboard", Book.NOON, null),
        new Fact.ReadingTaken(
            3,
            3,
            Speed.parse("300.1 ft/s"),
            "",
            "serial port",
            "Near",
            Book.NOON,
            null,
            Speed.parse("0.4321 ft/s"),
            new SecondReading(Speed.parse("91.5 m/s"), "MzANCg==", "Far")),
        refused(3L),
        refused(null),
        new Fact.ReadingFlagged(3, 4, "jump", "shot 2: 286 ft/s is 13.0 ft/s from shot 1"),
        new Fact.ReadingKept(3, 4, "the shot was seen"),
        new Fact.ReadingVoided(3, 4, "sun on the sensor, \"seen\" by both"),
        verdict(3, Outcome.NOT_DECIDED, List.of(4L, 5L)),
        new Fact.VerdictGiven(
            3, "00ff", Outcome.OVER, "highest 301", List.of(4L), Consequence.BARRED),
        new Fact.CheckClosed(3, null),
        new Fact.CheckClosed(3, "string broke"),
        new Fact.LinkChanged("lost", "The cable is out.", Book.NOON),
        new FrameFact.OfficialSignedOut("Ada Holt"),
        new FrameFact.OfficialSignedOut("Ada Holt", "nothing was done for 10 min"),
        new FrameFact.ClockStepped(new BigDecimal("-3600.250"), Book.NOON),
        new FrameFact.HeadWitnessed("South gate", "17-0123456789ab"),
        new FrameFact.LineStopped(null),
        new FrameFact.LineStopped("somebody is forward of the line"),
        new FrameFact.LineCleared(43),
        new FrameFact.PracticeKept(
            "Practice, 20 May",
            "practice.csv",
            "315f5bdb76d078c43b8ac0064e4a0164612b1fce77c869345bfc94c75894edd3",
            "Hello, world!"),
        new Fact.StationClosed(null),
        new Fact.StationClosed("the reference was lent out"),
        new Fact.VerificationPlanned(true, 20, false),
        new Fact.VerificationPlanned(false, null, true),
        new Fact.VerificationBegan(
            "opening", "check bow", 3, "0.5 %", "1 ft/s", Speed.parse("296.4 ft/s")),
        new Fact.VerificationBegan("interval", "second instrument", 2, "1 %", "1 %", null),
        new Fact.VerificationShot(
            30,
            1,
            Speed.parse("296.1 ft/s"),
            "MjYuMQ0K",
            "serial port",
            "Gate timer",
            Book.NOON,
            Speed.parse("296.4 ft/s"),
            null),
        new Fact.VerificationShot(
            31, 1, Speed.parse("90 m/s"), "", "typed", "keyboard", Book.NOON, null, null),
        new Fact.VerificationShot(
            31,
            2,
            Speed.parse("90 m/s"),
            "OTAK",
            "serial port",
            "Gate timer",
            Book.NOON,
            Speed.parse("90.2 m/s"),
            new SecondReading(Speed.parse("90.2 m/s"), "OTAuMgo=", "Three-gate timer")),
        new Fact.ReferenceTyped(31, 1, Speed.parse("90.1 m/s")),
        new Fact.VerificationEnded(30, true, "3 shots: bias 0", null),
        new Fact.VerificationEnded(31, false, "broken off after 1 of 2 shots", "rain"),
        new Fact.LineHeld(31L, "out of its limits", List.of(3L, 9L)),
        new Fact.LineHeld(null, "the stand was knocked", List.of()),
        new Fact.HoldLifted(40, 41L, "within its limits"),
        new Fact.HoldLifted(42, null, "it did not move"),
        recheck("103", 50),
        new ProtestFact.ProtestFiled(
            3, ProtestFact.Cause.SPOT_CHECK, "captain of the Greens", "the bow was exchanged"),
        new ProtestFact.ProtestRuled(
            50, ProtestFact.Answer.UPHELD, 51, "no score for the day", "the recheck was over"),
        ProtestFact.CorrectionMade.ofBib(3, "104", "Una Ost", "the bib was read upside down"),
        ProtestFact.CorrectionMade.ofDivision(3, "OC", "entered late"),
        ProtestFact.CorrectionMade.ofReading(3, 5, Speed.parse("291.50 ft/s"), "a slip"),
        new ProtestFact.CorrectionConfirmed(52));
  }
}
