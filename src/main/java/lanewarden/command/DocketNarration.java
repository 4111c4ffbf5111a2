package lanewarden.command;

import java.util.ArrayList;
import java.util.List;
import lanewarden.journal.Correction;
import lanewarden.journal.Docket;
import lanewarden.journal.Protest;
import lanewarden.journal.ProtestFact;

/** Tells in words of protests, rulings and corrections. */
final class DocketNarration {

  private DocketNarration() {}

  /** Everything on it, ruled and confirmed or not. */
  static List<Notice> all(Docket docket) {
    List<Notice> told = new ArrayList<>();
    docket.protests().forEach(protest -> told.add(of(protest)));
    docket.corrections().forEach(correction -> told.add(of(correction)));
    return told;
  }

  /** What waits for a judge or a second person. */
  static List<Notice> open(Docket docket) {
    return all(
        new Docket(
            docket.protests().stream().filter(Protest::isOpen).toList(),
            docket.corrections().stream().filter(Correction::isOpen).toList()));
  }

  /** What changed, but for rechecks, which are told as checks are. */
  static List<Notice> between(Docket before, Docket now) {
    return all(
        new Docket(
            now.protests().stream().filter(protest -> isNews(protest, before)).toList(),
            now.corrections().stream()
                .filter(correction -> !before.corrections().contains(correction))
                .toList()));
  }

  private static boolean isNews(Protest protest, Docket before) {
    return before
        .protest(protest.number())
        .filter(known -> known.rulings().equals(protest.rulings()))
        .isEmpty();
  }

  /** A protest, and how it stands. */
  static Notice of(Protest protest) {
    ProtestFact.ProtestFiled fact = protest.fact();
    Notice filed =
        Notice.of(
                "protest",
                protest.number()
                    + ", "
                    + fact.occasion().word()
                    + " on check "
                    + fact.check()
                    + " by "
                    + fact.by()
                    + ": "
                    + fact.ground()
                    + "; "
                    + protest
                        .ruling()
                        .map(DocketNarration::ruled)
                        .orElseGet(() -> unruled(protest)))
            .with("protest", protest.number())
            .with("occasion", fact.occasion().word())
            .with("check", fact.check())
            .with("by", fact.by())
            .with("ground", fact.ground())
            .with("rechecks", protest.rechecks());
    return protest
        .ruling()
        .map(
            given ->
                filed
                    .with("ruling", given.fact().ruling().word())
                    .with("stands", given.fact().stands())
                    .with("consequence", given.fact().consequence())
                    .with("reason", given.fact().reason()))
        .orElse(filed);
  }

  private static String unruled(Protest protest) {
    return protest.withoutEffect().map(why -> "no effect: " + why).orElse("no ruling yet");
  }

  private static String ruled(Protest.Given given) {
    ProtestFact.ProtestRuled fact = given.fact();
    return fact.ruling().word()
        + ", check "
        + fact.stands()
        + " counts: "
        + fact.reason()
        + "; consequence: "
        + fact.consequence();
  }

  /** A correction, and whether it is in effect. */
  static Notice of(Correction correction) {
    ProtestFact.CorrectionMade fact = correction.fact();
    Notice made =
        Notice.of(
                "correction",
                correction.number()
                    + ", check "
                    + fact.check()
                    + ", "
                    + fact.what().word()
                    + ": "
                    + correction.after()
                    + " instead of "
                    + correction.before()
                    + ", because "
                    + fact.reason()
                    + "; "
                    + (correction.isOpen() ? "waits for a second person: confirm" : "in effect"))
            .with("correction", correction.number())
            .with("check", fact.check())
            .with("what", fact.what().word())
            .with("before", correction.before())
            .with("after", correction.after())
            .with("reason", fact.reason())
            .with("inEffect", !correction.isOpen());
    Long reading = fact.reading();
    return reading == null ? made : made.with("reading", reading);
  }
}
