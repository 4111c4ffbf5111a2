package lanewarden.kiosk.protest;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lanewarden.journal.Check;
import lanewarden.journal.Fact;
import lanewarden.journal.TakenShot;
import lanewarden.kiosk.look.Figure;
import lanewarden.kiosk.look.RefusalWording;
import lanewarden.kiosk.look.Sign;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.look.Wording;
import lanewarden.rules.Doubt;
import lanewarden.station.CheckView;
import lanewarden.station.Dossier;
import lanewarden.station.LineBytes;

/**
 * One check in the words of the screen, with every reading as it came.
 *
 * @param number of the check
 * @param title what it is, and its number
 * @param about division, attempt, time, and who opened it
 * @param sign shape of the outcome
 * @param word the outcome in a word
 * @param words why
 * @param limit limit and what is allowed
 * @param readings every reading, void ones included
 * @param refused every line that became no reading while it ran
 * @param notes what else is to be known of it
 * @param counts whether its outcome is the one that counts
 */
public record SheetPage(
    long number,
    String title,
    String about,
    Sign sign,
    String word,
    String words,
    String limit,
    List<Reading> readings,
    List<Refused> refused,
    List<String> notes,
    boolean counts) {

  /**
   * A reading.
   *
   * @param speed number of the shot, and the speed as read
   * @param told what is to be known of it; blank for nothing
   * @param raw the bytes as they came
   * @param origin where they came from, of which instrument, and when
   * @param stands whether it was not declared void
   */
  public record Reading(String speed, String told, String raw, String origin, boolean stands) {}

  /**
   * A line that became no reading.
   *
   * @param raw the bytes as they came
   * @param words why it was refused
   */
  public record Refused(String raw, String words) {}

  static SheetPage of(CheckView view, Dossier dossier, DocketWords words, Texts texts) {
    Check check = view.check();
    return new SheetPage(
        check.number(),
        Optional.ofNullable(check.opened().protest())
            .map(protest -> texts.of("sheet.recheck", check.number(), protest))
            .orElseGet(() -> texts.of("sheet.check", check.number())),
        texts.of(
            "sheet.about",
            view.division().code(),
            check.opened().attempt(),
            words.clock().format(check.at()),
            dossier.nameOf(check.signer())),
        Sign.of(view),
        words.outcome(view),
        Wording.sentence(why(view, texts)),
        Wording.limit(view, texts),
        check.shots().stream().map(shot -> reading(shot, view, words, texts)).toList(),
        check.refused().stream().map(line -> refused(line, texts)).toList(),
        SheetNotes.of(view, dossier, words, texts),
        dossier.counting() == check.number());
  }

  private static String why(CheckView view, Texts texts) {
    return view.check()
        .closed()
        .map(Fact.CheckClosed::reason)
        .orElseGet(() -> texts.of(view.why()));
  }

  private static Reading reading(TakenShot shot, CheckView view, DocketWords words, Texts texts) {
    Fact.ReadingTaken taken = shot.reading();
    Optional<String> converted = Figure.converted(taken.speed(), view, texts);
    String speed = texts.of("sheet.shot", taken.shot(), taken.speed());
    return new Reading(
        converted.map(other -> texts.of("sheet.shot.converted", speed, other)).orElse(speed),
        Stream.of(told(shot, view, texts), Wording.atBow(taken.speed(), view, texts))
            .filter(line -> !line.isBlank())
            .collect(Collectors.joining("\n")),
        bytes(taken.raw(), texts),
        texts.of(
            "sheet.origin",
            Wording.source(taken.source(), texts),
            taken.instrument(),
            words.clock().format(taken.at())),
        shot.stands());
  }

  private static String bytes(String raw, Texts texts) {
    String escaped = LineBytes.escaped(raw);
    return escaped.isBlank() ? texts.of("line.refused.empty") : escaped;
  }

  private static Refused refused(Fact.LineRefused line, Texts texts) {
    return new Refused(
        bytes(line.raw(), texts),
        texts.of("sheet.refused.why", RefusalWording.of(line.reason(), texts), line.words()));
  }

  private static String told(TakenShot shot, CheckView view, Texts texts) {
    if (shot.voided() != null) {
      return texts.of("line.shot.void", shot.voided().reason());
    }
    return view.doubts().stream()
        .filter(doubt -> doubt.shot() == shot.reading().shot() - 1)
        .findFirst()
        .map(doubt -> texts.of(doubt.sentence()))
        .orElseGet(() -> counts(shot, texts));
  }

  /** Why it counts although something spoke against it; blank where nothing did. */
  private static String counts(TakenShot shot, Texts texts) {
    if (shot.kept() != null) {
      return texts.of("sheet.kept", shot.kept().reason());
    }
    return shot.isCleared()
        ? texts.of(shot.isFlagged(Doubt.Kind.IMPOSSIBLE) ? "sheet.cleared.stated" : "sheet.cleared")
        : "";
  }
}
