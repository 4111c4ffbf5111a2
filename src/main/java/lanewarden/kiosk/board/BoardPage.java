package lanewarden.kiosk.board;

import java.util.Optional;
import lanewarden.journal.Fact;
import lanewarden.kiosk.look.Figure;
import lanewarden.kiosk.look.Sign;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.look.Wording;
import lanewarden.station.CheckView;

/**
 * What the archer sees of a check; nothing of a person but bib, name and division.
 *
 * @param bib the competitor's
 * @param name the competitor's
 * @param division its name
 * @param figure the reading taken last
 * @param limit limit and what is allowed
 * @param sign shape of the outcome
 * @param word the outcome in a word
 * @param deciding why it ended, or what it waits for; blank while shots are taken
 * @param follows what follows the outcome, in a sentence; blank where nothing does
 */
public record BoardPage(
    String bib,
    String name,
    String division,
    Optional<Figure> figure,
    String limit,
    Sign sign,
    String word,
    String deciding,
    String follows) {

  /** The page of a check. */
  public static BoardPage of(CheckView view, Texts texts) {
    Fact.CheckOpened opened = view.check().opened();
    return new BoardPage(
        opened.bib(),
        opened.name(),
        view.division().name(),
        Figure.last(view, texts),
        Wording.limit(view, texts),
        Sign.of(view),
        Wording.outcome(view, texts),
        view.takesShots() ? "" : Wording.sentence(texts.of(view.why())),
        view.follows().map(next -> texts.of("outcome.follows", next)).orElse(""));
  }
}
