package lanewarden.kiosk.protest;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import lanewarden.journal.Check;
import lanewarden.journal.Correction;
import lanewarden.journal.Protest;
import lanewarden.journal.ProtestFact;
import lanewarden.kiosk.look.Sign;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.look.Wording;
import lanewarden.station.CheckView;
import lanewarden.station.Dossier;

/** How protests, corrections and checks that were found read in a list. */
final class DocketWords {
  private final Texts texts;
  private final DateTimeFormatter clock;

  /**
   * @param zone in which times are shown
   */
  DocketWords(Texts texts, ZoneId zone) {
    this.texts = texts;
    this.clock = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss", Locale.ROOT).withZone(zone);
  }

  DateTimeFormatter clock() {
    return clock;
  }

  /** Every protest and every correction: what waits first. */
  List<DocketLine> docket(List<Dossier> dossiers) {
    List<DocketLine> all = dossiers.stream().flatMap(this::lines).toList();
    return Stream.concat(
            all.stream().filter(DocketLine::open), all.stream().filter(line -> !line.open()))
        .toList();
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
            Wording.sentence(fact.occasion().word()),
            protest.number(),
            check.opened().bib(),
            check.opened().name()),
        texts.of("docket.protest.words", fact.check(), fact.by(), fact.ground()),
        state(protest, dossier),
        protest.isOpen());
  }

  /** What a protest waits for, or how it was ruled on. */
  String state(Protest protest, Dossier dossier) {
    Optional<Protest.Given> ruling = protest.ruling();
    if (ruling.isPresent()) {
      return texts.of(
          "docket.ruled",
          Wording.sentence(ruling.get().fact().ruling().word()),
          ruling.get().fact().stands());
    }
    if (!protest.isOpen()) {
      return texts.of("docket.no-effect");
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

  private DocketLine line(Correction correction, Dossier dossier) {
    Check check = dossier.check().check();
    return new DocketLine(
        check.number(),
        Optional.empty(),
        Optional.of(correction.number()),
        correction.isOpen() ? Sign.NOT_DECIDED : Sign.RUNNING,
        texts.of(
            "docket.correction", correction.number(), check.opened().bib(), check.opened().name()),
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
