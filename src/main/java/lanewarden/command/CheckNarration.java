package lanewarden.command;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanewarden.audit.wording.CheckRow;
import lanewarden.audit.wording.Wording;
import lanewarden.journal.Check;
import lanewarden.journal.Fact;
import lanewarden.journal.TakenShot;
import lanewarden.station.CheckView;
import lanewarden.station.Dossier;
import lanewarden.station.LineBytes;

/** Tells in words of a check that was made, as the line tells it, and of what came of it. */
final class CheckNarration {
  private static final String READING = "reading";

  private CheckNarration() {}

  /** The check, its rechecks, what was done about them, and which of them counts. */
  static List<Notice> of(Dossier dossier) {
    List<Notice> told = new ArrayList<>();
    dossier.checks().forEach(view -> told.addAll(check(view, dossier)));
    dossier
        .protests()
        .forEach(
            protest -> {
              told.add(DocketNarration.of(protest));
              told.add(
                  signed("protest", protest.number(), protest.at(), protest.signer(), dossier));
              protest
                  .ruling()
                  .ifPresent(
                      given ->
                          told.add(
                              signed(
                                  "ruling",
                                  given.sequence(),
                                  given.at(),
                                  given.signer(),
                                  dossier)));
            });
    dossier
        .corrections()
        .forEach(
            correction -> {
              told.add(DocketNarration.of(correction));
              told.add(
                  signed(
                      "correction",
                      correction.number(),
                      correction.at(),
                      correction.signer(),
                      dossier));
              correction
                  .confirmation()
                  .ifPresent(
                      given ->
                          told.add(
                              signed(
                                  "confirmation",
                                  given.sequence(),
                                  given.at(),
                                  given.signer(),
                                  dossier)));
            });
    told.add(Notice.of("counts", "check " + dossier.counting()).with("check", dossier.counting()));
    return told;
  }

  private static List<Notice> check(CheckView view, Dossier dossier) {
    Check check = view.check();
    List<Notice> told = new ArrayList<>();
    String opener = dossier.nameOf(check.signer());
    told.add(
        Notice.of(
                "number",
                check.number()
                    + ", attempt "
                    + check.opened().attempt()
                    + ", opened "
                    + check.phase().phrase()
                    + " on "
                    + Wording.time(check.at())
                    + " by "
                    + opener)
            .with("check", check.number())
            .with("at", check.at().toString())
            .with("official", opener));
    told.add(Notice.of("limit", Wording.limit(view.division())).with("check", check.number()));
    for (Notice notice : Narration.whole(view)) {
      told.add(notice);
      raw(notice, check).ifPresent(told::add);
    }
    check
        .verdict()
        .ifPresent(
            given ->
                told.add(signed("verdict", given.sequence(), given.at(), given.signer(), dossier)));
    if (check.inQuestion()) {
      told.add(
          Notice.of("question", "the line was held since: this outcome counts for nothing")
              .with("check", check.number()));
    }
    told.add(left(check));
    return told;
  }

  /** What came over the wire for the reading that was just told. */
  private static Optional<Notice> raw(Notice told, Check check) {
    return told.kind().equals(READING)
        ? check.shots().stream()
            .filter(shot -> Long.valueOf(shot.sequence()).equals(told.members().get("entry")))
            .findFirst()
            .map(CheckNarration::raw)
        : Optional.empty();
  }

  private static Notice raw(TakenShot shot) {
    Fact.ReadingTaken reading = shot.reading();
    String bytes = LineBytes.escaped(reading.raw());
    return Notice.of(
            "raw",
            (bytes.isBlank() ? "(nothing)" : bytes)
                + "  "
                + reading.instrument()
                + ", "
                + Wording.time(reading.at()))
        .with("check", reading.check())
        .with("shot", reading.shot())
        .with("raw", bytes)
        .with("instrument", reading.instrument())
        .with("at", reading.at().toString());
  }

  private static Notice left(Check check) {
    String words;
    if (!check.isClosed()) {
      words = "not yet: it is at the line";
    } else if (check.verdict().isPresent()) {
      words = "with its verdict";
    } else {
      words = "without a verdict: " + CheckRow.reason(check);
    }
    return Notice.of("left", words).with("check", check.number()).with("closed", check.isClosed());
  }

  private static Notice signed(
      String what, long entry, Instant at, String signer, Dossier dossier) {
    String name = dossier.nameOf(signer);
    return Notice.of("signed", what + " by " + name + ", " + Wording.time(at) + ", entry " + entry)
        .with("what", what)
        .with("entry", entry)
        .with("at", at.toString())
        .with("official", name)
        .with("key", signer);
  }
}
