package lanewarden.kiosk.line;

import java.util.List;
import java.util.Optional;
import lanewarden.journal.Fact;
import lanewarden.journal.TakenShot;
import lanewarden.kiosk.look.Figure;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.look.Wording;
import lanewarden.quantity.Sentence;
import lanewarden.rules.Doubt;
import lanewarden.station.CheckView;

/**
 * One shot of the check as the line shows it.
 *
 * @param sequence of the ledger entry that took the reading
 * @param number from 1
 * @param speed as read
 * @param converted in the rule's unit where that is another
 * @param source where it came from, in a word
 * @param voided why it was declared void, if it was
 * @param doubt what speaks against it, in a word or two; blank where nothing does
 * @param open whether an official must say whether it counts
 */
public record ShotLine(
    long sequence,
    int number,
    String speed,
    Optional<String> converted,
    String source,
    Optional<String> voided,
    String doubt,
    boolean open) {

  static List<ShotLine> of(CheckView view, Texts texts) {
    List<Doubt> doubts = view.doubts();
    return view.check().shots().stream()
        .map(
            shot ->
                of(
                    shot,
                    doubts.stream()
                        .filter(doubt -> doubt.shot() == shot.reading().shot() - 1)
                        .findFirst(),
                    view,
                    texts))
        .toList();
  }

  private static ShotLine of(TakenShot shot, Optional<Doubt> doubt, CheckView view, Texts texts) {
    Fact.ReadingTaken reading = shot.reading();
    return new ShotLine(
        shot.sequence(),
        reading.shot(),
        texts.quantity(reading.speed()),
        Figure.converted(reading.speed(), view, texts),
        Wording.source(reading.source(), texts),
        Optional.ofNullable(shot.voided()).map(Fact.ReadingVoided::reason),
        doubt.map(found -> texts.of(Sentence.of(found.kind()))).orElse(""),
        doubt.filter(Doubt::isOpen).isPresent());
  }

  /** The whole in a sentence, for those who hear the screen. */
  String spoken(Texts texts) {
    if (!doubt.isEmpty()) {
      return texts.of("line.shot.spoken.doubt", number, speed, doubt);
    }
    return voided
        .map(reason -> texts.of("line.shot.spoken.void", number, speed, reason))
        .orElseGet(() -> texts.of("line.shot.spoken", number, speed, source));
  }
}
