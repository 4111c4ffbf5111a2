package lanewarden.kiosk.line;

import java.util.List;
import java.util.Optional;
import lanewarden.journal.Fact;
import lanewarden.journal.Outcome;
import lanewarden.journal.TakenShot;
import lanewarden.kiosk.look.Figure;
import lanewarden.kiosk.look.Sign;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.look.Wording;
import lanewarden.rules.Doubt;
import lanewarden.station.CheckView;

/**
 * The check at the line in the words of the screen.
 *
 * @param number of the check in the ledger
 * @param bib the competitor's
 * @param name the competitor's
 * @param division code and name
 * @param attempt which check of the competitor it is
 * @param rule the whole rule in words
 * @param limit limit and what is allowed
 * @param unit of speeds where none is written
 * @param figure the reading taken last
 * @param atBow about how fast it left the bow; blank where that is not known
 * @param shots those taken
 * @param places how many shots the rule allows
 * @param sign shape of the outcome
 * @param word the outcome in a word
 * @param words why, or what is missing
 * @param outcome the signed outcome
 * @param shooting whether the rule asks for a shot now
 * @param follows what follows the outcome, in a sentence; blank where nothing does
 * @param mayBeRechecked whether the competitor may be called once more
 * @param grounds why the competitor was called although the rule did not call for it
 * @param preparation what is to be stated and ticked
 * @param doubts what speaks against readings, in words, and what is to be done about each
 * @param advice what would bring the set-up inside that is over
 * @param wantsWeighing whether there would be advice if the arrow were weighed
 */
public record CheckPage(
    long number,
    String bib,
    String name,
    String division,
    String attempt,
    String rule,
    String limit,
    String unit,
    Optional<Figure> figure,
    String atBow,
    List<ShotLine> shots,
    int places,
    Sign sign,
    String word,
    String words,
    Optional<Outcome> outcome,
    boolean shooting,
    String follows,
    boolean mayBeRechecked,
    Optional<String> grounds,
    Preparation preparation,
    List<String> doubts,
    Optional<AdvicePage> advice,
    boolean wantsWeighing) {

  /**
   * @param stopped whether the line is not clear, where nobody shoots whatever the check asks for
   */
  static CheckPage of(CheckView view, boolean stopped, Texts texts) {
    Fact.CheckOpened opened = view.check().opened();
    return new CheckPage(
        view.check().number(),
        opened.bib(),
        opened.name(),
        texts.of("division", view.division().code(), view.division().name()),
        attempt(opened, texts),
        texts.of(view.division().sentences()),
        Wording.limit(view, texts),
        view.unit().symbol(),
        Figure.last(view, texts),
        atBow(view, texts),
        ShotLine.of(view, texts),
        view.shotsAllowed(),
        Sign.of(view),
        stopped && view.outcome().isEmpty()
            ? texts.of("outcome.waiting")
            : Wording.outcome(view, texts),
        Wording.sentence(texts.of(view.why())),
        view.outcome(),
        view.takesShots(),
        view.follows().map(next -> texts.of("outcome.follows", next)).orElse(""),
        view.mayComeBack(),
        Optional.ofNullable(opened.grounds()),
        Preparation.of(view, texts),
        doubts(view, texts),
        view.advice().map(advice -> AdvicePage.of(advice, texts)),
        view.wantsWeighing());
  }

  /** A recheck begins to count anew, but it is not the archer's first check. */
  private static String attempt(Fact.CheckOpened opened, Texts texts) {
    if (opened.protest() != null) {
      return texts.of("line.attempt.recheck", opened.protest());
    }
    return opened.attempt() == 1
        ? texts.of("line.attempt.first")
        : texts.of("line.attempt.again", opened.attempt());
  }

  private static List<String> doubts(CheckView view, Texts texts) {
    int last =
        view.check().shots().stream()
            .filter(TakenShot::stands)
            .mapToInt(shot -> shot.reading().shot() - 1)
            .reduce(-1, (first, second) -> second);
    return view.doubts().stream()
        .map(doubt -> texts.of(doubted(doubt, last), doubt.sentence()))
        .toList();
  }

  /** The key declares the last reading void; of any other the card is pressed. */
  private static String doubted(Doubt doubt, int last) {
    if (!doubt.isOpen()) {
      return "line.doubt";
    }
    return doubt.shot() == last ? "line.doubt.open" : "line.doubt.open.card";
  }

  private static String atBow(CheckView view, Texts texts) {
    return view.check().shots().stream()
        .reduce((first, second) -> second)
        .map(shot -> Wording.atBow(shot.reading().speed(), view, texts))
        .orElse("");
  }

  /** Whether the rule has decided. */
  public boolean decided() {
    return outcome.isPresent();
  }

  /** Whether a correction of what is on the roster would come before every shot. */
  public boolean isFresh() {
    return shots.isEmpty() && outcome.isEmpty();
  }

  /** Whether a reading stands that could be declared void. */
  public boolean hasStanding() {
    return shots.stream().anyMatch(s -> s.voided().isEmpty());
  }

  /** The first shot of which an official must say whether it counts. */
  public Optional<ShotLine> firstInDoubt() {
    return shots.stream().filter(ShotLine::open).findFirst();
  }

  /** The last shot that counts. */
  public Optional<ShotLine> lastStanding() {
    return shots.stream().filter(s -> s.voided().isEmpty()).reduce((first, second) -> second);
  }
}
