package lanewarden.kiosk.protest;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lanewarden.journal.Check;
import lanewarden.journal.Correction;
import lanewarden.journal.Docket;
import lanewarden.journal.Protest;
import lanewarden.journal.ProtestFact;
import lanewarden.kiosk.look.Sign;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.look.Wording;
import lanewarden.station.CheckView;
import lanewarden.station.Dossier;

/** How protests, corrections and checks that were found read in a list. */
public final class DocketWords {
  private final Texts texts;
  private final DateTimeFormatter clock;

  /**
   * @param zone in which times are shown
   */
  public DocketWords(Texts texts, ZoneId zone) {
    this.texts = texts;
    this.clock = Wording.clock(zone);
  }

  DateTimeFormatter clock() {
    return clock;
  }

  /** Every protest and every correction: what waits first. */
  List<DocketLine> docket(List<Dossier> dossiers) {
    List<DocketLine> all = dossiers.stream().flatMap(this::lines).toList();
    return waitingFirst(all);
  }

  /** A docket alone, without the checks that it is about: what waits first. */
  public List<DocketLine> docket(Docket docket) {
    List<DocketLine> all =
        Stream.concat(
                docket.protests().stream().map(this::line),
                docket.corrections().stream().map(this::line))
            .toList();
    return waitingFirst(all);
  }

  private DocketLine line(Protest protest) {
    ProtestFact.ProtestFiled fact = protest.fact();
    return new DocketLine(
        fact.check(),
        Optional.of(protest.number()),
        Optional.empty(),
        protest.isOpen() ? Sign.NOT_DECIDED : Sign.RUNNING,
        texts.of("docket.protest.alone", occasion(fact), protest.number()),
        texts.of("docket.protest.words", fact.check(), fact.by(), fact.ground()),
        decided(protest).orElseGet(() -> texts.of("docket.waits.recheck"))
            + protest.ruling().map(given -> " " + ruling(given)).orElse(""),
        protest.isOpen());
  }

  private DocketLine line(Correction correction) {
    return line(
        correction.fact().check(),
        correction,
        texts.of("docket.correction.alone", correction.number()));
  }

  private static List<DocketLine> waitingFirst(List<DocketLine> all) {
    return Stream.concat(
            all.stream().filter(DocketLine::open), all.stream().filter(line -> !line.open()))
        .toList();
  }

  private String occasion(ProtestFact.ProtestFiled fact) {
    return cause(fact.occasion(), texts);
  }

  /** Why a check is looked at again, in a word. */
  static String cause(ProtestFact.Cause cause, Texts texts) {
    return switch (cause) {
      case PROTEST -> texts.of("cause.protest");
      case SPOT_CHECK -> texts.of("cause.spot-check");
      case RE_TEST -> texts.of("cause.re-test");
      case REFERRAL -> texts.of("cause.referral");
    };
  }

  /** What a judge answered, in a word. */
  static String answer(ProtestFact.Answer answer, Texts texts) {
    return switch (answer) {
      case UPHELD -> texts.of("answer.upheld");
      case DISMISSED -> texts.of("answer.dismissed");
    };
  }

  /** Why a ruling was given, and what follows from it. */
  String ruling(Protest.Given given) {
    return texts.of(
        "dossier.ruled.words",
        given.fact().reason(),
        given.fact().consequence(),
        clock.format(given.at()),
        given.sequence());
  }

  private Stream<DocketLine> lines(Dossier dossier) {
    return Stream.concat(
        dossier.protests().stream().map(protest -> line(protest, dossier)),
        dossier.corrections().stream().map(correction -> line(correction, dossier)));
  }

  private DocketLine line(Protest protest, Dossier dossier) {
    Check check = dossier.check().check();
    ProtestFact.ProtestFiled fact = protest.fact();
    return new DocketLine(
        check.number(),
        Optional.of(protest.number()),
        Optional.empty(),
        protest.isOpen() ? Sign.NOT_DECIDED : Sign.RUNNING,
        texts.of(
            "docket.protest",
            occasion(fact),
            protest.number(),
            check.opened().bib(),
            check.opened().name()),
        texts.of("docket.protest.words", fact.check(), fact.by(), fact.ground()),
        state(protest, dossier),
        protest.isOpen());
  }

  /** What a protest waits for, or how it was ruled on. */
  String state(Protest protest, Dossier dossier) {
    Optional<String> decided = decided(protest);
    if (decided.isPresent()) {
      return decided.get();
    }
    Optional<CheckView> running = dossier.running(protest);
    if (running.isPresent()) {
      return texts.of("docket.waits.running", running.get().check().number());
    }
    return dossier
        .settled(protest)
        .map(
            recheck ->
                texts.of(
                    "docket.waits.ruling",
                    recheck.check().number(),
                    Wording.outcome(recheck, texts)))
        .orElseGet(() -> texts.of("docket.waits.recheck"));
  }

  /** How a protest was ruled on, or that it is without effect; empty while it waits. */
  private Optional<String> decided(Protest protest) {
    Optional<String> ruled =
        protest
            .ruling()
            .map(Protest.Given::fact)
            .map(fact -> texts.of("docket.ruled", answer(fact.ruling(), texts), fact.stands()));
    return ruled.isPresent() || protest.isOpen()
        ? ruled
        : Optional.of(texts.of("docket.no-effect"));
  }

  private DocketLine line(Correction correction, Dossier dossier) {
    Check check = dossier.check().check();
    return line(
        check.number(),
        correction,
        texts.of(
            "docket.correction", correction.number(), check.opened().bib(), check.opened().name()));
  }

  private DocketLine line(long check, Correction correction, String title) {
    return new DocketLine(
        check,
        Optional.empty(),
        Optional.of(correction.number()),
        correction.isOpen() ? Sign.NOT_DECIDED : Sign.RUNNING,
        title,
        words(correction),
        texts.of(correction.isOpen() ? "docket.waits.second" : "docket.in-effect"),
        correction.isOpen());
  }

  /** What a correction says. */
  String words(Correction correction) {
    ProtestFact.CorrectionMade fact = correction.fact();
    return texts.of(
        "docket.correction.words",
        fact.check(),
        part(fact.what()),
        correction.after(),
        correction.before(),
        fact.reason());
  }

  private String part(ProtestFact.Part part) {
    return switch (part) {
      case BIB -> texts.of("part.bib");
      case DIVISION -> texts.of("part.division");
      case READING -> texts.of("part.reading");
    };
  }

  /** A check that was found. */
  DocketLine found(CheckView view) {
    Check check = view.check();
    return new DocketLine(
        check.number(),
        Optional.empty(),
        Optional.empty(),
        Sign.of(view),
        texts.of("docket.check", check.opened().bib(), check.opened().name(), check.number()),
        texts.of("docket.check.words", check.opened().division(), clock.format(check.at())),
        outcome(view),
        false);
  }

  /** The outcome in a word; of a check that left without one, that. */
  String outcome(CheckView view) {
    boolean ended = view.check().isClosed() && view.outcome().isEmpty();
    return ended ? texts.of("sheet.ended") : Wording.outcome(view, texts);
  }
}
