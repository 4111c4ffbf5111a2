package lanewarden.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lanewarden.bench.Advice;
import lanewarden.bench.Caution;
import lanewarden.journal.Check;
import lanewarden.journal.Fact;
import lanewarden.journal.LineStop;
import lanewarden.journal.Outcome;
import lanewarden.journal.TakenShot;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;
import lanewarden.rules.Doubt;
import lanewarden.station.CheckView;
import lanewarden.station.LineBytes;
import lanewarden.station.LineView;
import lanewarden.station.Trouble;
import lanewarden.station.VerificationView;

/** Tells in words what changed at the line from one view to the next. */
final class Narration {

  private Narration() {}

  /** How the line stands when one comes to it. */
  static List<Notice> of(LineView now) {
    List<Notice> told = new ArrayList<>();
    told.add(Notice.of("event", now.event() + ", station " + now.station()));
    told.add(progress(now));
    told.add(phase(now));
    told.add(link(now));
    now.official().ifPresent(name -> told.add(onDuty(name)));
    now.check().ifPresent(view -> told.addAll(check(Optional.empty(), view)));
    now.check().filter(CheckView::wantsWeighing).ifPresent(view -> told.add(weigh(view)));
    now.stop().ifPresent(stop -> told.add(stopped(stop)));
    told.addAll(ProvingNarration.of(now.verification()));
    told.add(head(now));
    told.addAll(DocketNarration.open(now.docket()));
    now.trouble().ifPresent(trouble -> told.add(trouble(trouble)));
    if (stuck(now)) {
      told.add(waiting(now));
    }
    return told;
  }

  /** What changed. */
  static List<Notice> between(LineView before, LineView now) {
    List<Notice> told = new ArrayList<>();
    if (!now.link().equals(before.link()) || !now.linkWords().equals(before.linkWords())) {
      told.add(link(now));
    }
    if (!now.official().equals(before.official())) {
      told.add(now.official().map(Narration::onDuty).orElse(Notice.of("official", "signed out")));
    }
    if (now.phase() != before.phase()) {
      told.add(phase(now));
    }
    Optional<CheckView> same = before.check().filter(b -> isSame(b, now.check()));
    if (before.check().isPresent() && same.isEmpty()) {
      told.add(left(before.check().get(), now));
    }
    now.check().ifPresent(view -> told.addAll(check(same, view)));
    now.check()
        .filter(CheckView::wantsWeighing)
        .filter(view -> same.filter(CheckView::wantsWeighing).isEmpty())
        .ifPresent(view -> told.add(weigh(view)));
    if (!now.stop().equals(before.stop())) {
      told.add(now.stop().map(Narration::stopped).orElseGet(Narration::clear));
    }
    told.addAll(ProvingNarration.between(before.verification(), now.verification()));
    told.addAll(DocketNarration.between(before.docket(), now.docket()));
    // A line of a check is told with the check
    now.refused()
        .filter(line -> line.check() == null && !now.refused().equals(before.refused()))
        .ifPresent(line -> told.add(stray(line, now.verification())));
    if (!now.trouble().equals(before.trouble())) {
      told.add(
          now.trouble()
              .map(Narration::trouble)
              .orElse(Notice.of("trouble", "over: all is signed")));
    }
    if (stuck(now) && now.unwritten() != before.unwritten()) {
      told.add(waiting(now));
    }
    return told;
  }

  /** What waits only for somebody to sign in needs no word. */
  private static boolean stuck(LineView now) {
    return now.unwritten() > 0 && now.trouble().isPresent() && now.official().isPresent();
  }

  private static Notice waiting(LineView now) {
    return Notice.of(
            "waiting",
            now.unwritten() + " received, not written yet; mend the trouble, then: retry")
        .with("unwritten", now.unwritten());
  }

  /** All that is to be told of a check by itself. */
  static List<Notice> whole(CheckView view) {
    return check(Optional.empty(), view);
  }

  private static boolean isSame(CheckView before, Optional<CheckView> now) {
    return now.filter(n -> n.check().number() == before.check().number()).isPresent();
  }

  private static List<Notice> check(Optional<CheckView> before, CheckView now) {
    List<Notice> told = new ArrayList<>();
    Check check = now.check();
    if (before.isEmpty()) {
      told.add(called(now));
      told.add(Notice.of("rule", now.division().inWords()));
    }
    told.addAll(Preparation.between(before, now));
    List<TakenShot> known = before.map(b -> b.check().shots()).orElse(List.of());
    for (int i = 0; i < check.shots().size(); i++) {
      TakenShot shot = check.shots().get(i);
      if (i >= known.size()) {
        told.add(reading(shot, now));
      }
      told.addAll(
          doubt(i < known.size() ? Optional.of(known.get(i)) : Optional.empty(), shot, now));
      Fact.ReadingKept kept = shot.kept();
      if (kept != null && (i >= known.size() || known.get(i).kept() == null)) {
        told.add(kept(shot, kept));
      }
      Fact.ReadingVoided voided = shot.voided();
      if (voided != null && (i >= known.size() || known.get(i).stands())) {
        told.add(voided(shot, voided));
      }
    }
    int refusedBefore = before.map(b -> b.check().refused().size()).orElse(0);
    check.refused().stream().skip(refusedBefore).forEach(line -> told.add(refused(line)));
    told.addAll(outcome(before, now));
    told.addAll(Preparation.waits(before, now));
    return told;
  }

  private static List<Notice> outcome(Optional<CheckView> before, CheckView now) {
    Optional<Check.GivenVerdict> had = before.flatMap(b -> b.check().verdict());
    if (now.check().verdict().equals(had)) {
      return List.of();
    }
    Optional<Outcome> outcome = now.outcome();
    if (outcome.isEmpty()) {
      return List.of(
          Notice.of("outcome", "taken back; " + now.words() + (now.takesShots() ? " needed" : "")));
    }
    String word = outcome.get().word().toUpperCase(Locale.ROOT);
    String follows = now.follows().map(next -> ". What follows: " + next + ".").orElse("");
    Notice told =
        Notice.of("outcome", word + ": " + now.words() + follows)
            .with("check", now.check().number())
            .with("bib", now.check().opened().bib())
            .with("outcome", outcome.get().word());
    List<Notice> all = new ArrayList<>();
    all.add(now.follows().isEmpty() ? told : told.with("follows", now.follows().get().toString()));
    now.advice().ifPresent(advice -> all.add(advice(advice)));
    return all;
  }

  /** Only of a check at the line: afterwards the arrow is gone. */
  private static Notice weigh(CheckView now) {
    return Notice.of(
            "weigh",
            "weigh the arrow to see what would bring it within, and state it: setup arrow MASS")
        .with("check", now.check().number());
  }

  /** In one line, its cautions with it. */
  private static Notice advice(Advice advice) {
    return Notice.of("advice", "no part of the verdict. " + String.join(" ", advice.paragraphs()))
        .with("line", advice.line().toString())
        .with("notes", advice.notes().stream().map(Sentence::toString).toList())
        .with("cautions", advice.cautions().stream().map(Caution::inWords).toList());
  }

  private static Notice called(CheckView view) {
    Fact.CheckOpened opened = view.check().opened();
    Notice called =
        Notice.of(
                "check",
                opened.bib() + " " + opened.name() + ", " + view.division().name() + which(opened))
            .with("check", view.check().number())
            .with("bib", opened.bib())
            .with("name", opened.name())
            .with("division", opened.division())
            .with("attempt", opened.attempt());
    Long protest = opened.protest();
    return protest == null ? called : called.with("protest", protest);
  }

  private static String which(Fact.CheckOpened opened) {
    if (opened.protest() != null) {
      return ", recheck under protest " + opened.protest();
    }
    return opened.attempt() == 1 ? "" : ", check " + opened.attempt();
  }

  private static Notice reading(TakenShot shot, CheckView view) {
    Fact.ReadingTaken reading = shot.reading();
    Speed speed = reading.speed();
    SpeedUnit governing = view.unit();
    String notComputable =
        view.hasNoSpeedAtBow(speed) ? "; at the bow: not computable from [place]" : "";
    String atBow = view.atBow(speed).map(bow -> "; at the bow about " + bow).orElse(notComputable);
    String beside = speed.unit() == governing ? "" : " (" + speed.to(governing, 2) + ")";
    return Notice.of(
            "reading", reading.shot() + ": " + speed + beside + ", " + reading.source() + atBow)
        .with("check", reading.check())
        .with("shot", reading.shot())
        .with("speed", speed.toString())
        .with("source", reading.source())
        .with("raw", LineBytes.escaped(reading.raw()))
        .with("entry", shot.sequence());
  }

  private static Notice voided(TakenShot shot, Fact.ReadingVoided voided) {
    return Notice.of("void", "reading " + shot.reading().shot() + ": " + voided.reason())
        .with("check", voided.check())
        .with("shot", shot.reading().shot())
        .with("reason", voided.reason());
  }

  /** What speaks against a shot now, or that nothing does any more; flags of old are history. */
  private static List<Notice> doubt(Optional<TakenShot> before, TakenShot shot, CheckView now) {
    boolean same = before.isPresent() && before.get().doubt() == shot.doubt();
    if (same) {
      return List.of();
    }
    if (shot.isCleared()) {
      return List.of(cleared(shot));
    }
    return now.doubts().stream()
        .filter(doubt -> now.check().shots().get(doubt.shot()).sequence() == shot.sequence())
        .map(doubt -> doubted(shot, doubt))
        .toList();
  }

  private static Notice doubted(TakenShot shot, Doubt doubt) {
    return Notice.of(doubt.isOpen() ? "in doubt" : "void", doubt.words())
        .with("check", shot.reading().check())
        .with("shot", shot.reading().shot())
        .with("doubt", doubt.kind().word());
  }

  private static Notice cleared(TakenShot shot) {
    return Notice.of(
            "counts",
            "reading "
                + shot.reading().shot()
                + ": "
                + shot.reading().speed()
                + (shot.isFlagged(Doubt.Kind.IMPOSSIBLE)
                    ? " counts again: as bow and arrow are stated now, nothing speaks against it"
                    : " counts: nothing speaks against it any more"))
        .with("check", shot.reading().check())
        .with("shot", shot.reading().shot());
  }

  private static Notice kept(TakenShot shot, Fact.ReadingKept kept) {
    return Notice.of("let count", "reading " + shot.reading().shot() + ": " + kept.reason())
        .with("check", kept.check())
        .with("shot", shot.reading().shot())
        .with("reason", kept.reason());
  }

  /** A line that is no check's: while the instrument is verified, it belongs to that. */
  private static Notice stray(Fact.LineRefused line, VerificationView proving) {
    return proving
        .running()
        .map(
            round ->
                refused(line, "during verification " + round.number() + ": ")
                    .with("verification", round.number()))
        .orElseGet(() -> refused(line));
  }

  private static Notice refused(Fact.LineRefused line) {
    return refused(line, "");
  }

  private static Notice refused(Fact.LineRefused line, String when) {
    String raw = LineBytes.escaped(line.raw());
    return Notice.of("refused", raw + "  " + when + line.reason() + ": " + line.words())
        .with("reason", line.reason())
        .with("raw", raw)
        .with("source", line.source());
  }

  private static Notice left(CheckView check, LineView now) {
    Fact.CheckOpened opened = check.check().opened();
    String without = check.outcome().isPresent() ? "" : " without a verdict";
    return Notice.of(
            "left", opened.bib() + " " + opened.name() + without + "; " + progress(now).words())
        .with("check", check.check().number())
        .with("bib", opened.bib());
  }

  private static Notice stopped(LineStop stop) {
    return Notice.of(
            "STOPPED",
            "LINE NOT CLEAR"
                + stop.reason().map(reason -> ": " + reason).orElse("")
                + ". Let down, no arrow on the string. No reading is taken until the range officer"
                + " has cleared the line; then: clear")
        .with("stop", stop.number())
        .with("reason", stop.reason().orElse(""));
  }

  private static Notice clear() {
    return Notice.of("clear", "the line is clear again; the check goes on where it was");
  }

  private static Notice onDuty(String name) {
    return Notice.of("official", name + " on duty").with("official", name);
  }

  private static Notice phase(LineView now) {
    return Notice.of("phase", now.phase().phrase()).with("phase", now.phase().word());
  }

  /** Who was drawn. */
  static Notice draw(Fact.DrawMade draw) {
    return Notice.of(
            "draw",
            draw.division()
                + ": "
                + String.join(", ", draw.drawn())
                + "; "
                + draw.drawn().size()
                + " of "
                + draw.pool().size()
                + " drawn, "
                + draw.share())
        .with("division", draw.division())
        .with("seed", draw.seed())
        .with("share", draw.share())
        .with("pool", draw.pool())
        .with("drawn", draw.drawn());
  }

  /** How the link stands. */
  static Notice link(LineView now) {
    return Notice.of("link", now.link().words() + ": " + now.linkWords());
  }

  /** The ledger's last entry, as it is printed on slips. */
  private static Notice head(LineView now) {
    String head = now.head().shortForm();
    return Notice.of("head", head + ", the ledger's last entry").with("head", head);
  }

  /** How far the roster is. */
  static Notice progress(LineView now) {
    LineView.Progress progress = now.progress();
    return Notice.of(
            "so far",
            progress.within()
                + " within, "
                + progress.over()
                + " not, of "
                + progress.competitors()
                + " competitors")
        .with("within", progress.within())
        .with("other", progress.over())
        .with("competitors", progress.competitors());
  }

  /** What went wrong, its parts apart for machines. */
  static Notice trouble(Trouble trouble) {
    // A notice is one line, whereas a trouble is a block of several
    return Notice.of("trouble", trouble.toString().replaceAll("\\r?\\n\\s*", " "))
        .with("what", trouble.what())
        .with("why", trouble.why())
        .with("do", trouble.remedy())
        .with("code", trouble.code());
  }
}
