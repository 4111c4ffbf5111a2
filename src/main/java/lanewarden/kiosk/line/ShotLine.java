package lanewarden.kiosk.line;

import java.util.List;
import java.util.Optional;
import lanewarden.journal.Check;
import lanewarden.journal.Fact;
import lanewarden.kiosk.look.Figure;
import lanewarden.kiosk.look.Texts;
import lanewarden.station.CheckView;

/**
 * One shot of the check as the line shows it.
 *
 * @param sequence of the ledger entry that took the reading
 * @param number from 1
 * @param speed as read
 * @param converted in the rule's unit where that is another
 * @param source where it came from, in a word
 * @param voided why it does not count, if it does not
 */
public record ShotLine(
    long sequence,
    int number,
    String speed,
    Optional<String> converted,
    String source,
    Optional<String> voided) {

  static List<ShotLine> of(CheckView view) {
    return view.check().shots().stream().map(shot -> of(shot, view)).toList();
  }

  private static ShotLine of(Check.TakenShot shot, CheckView view) {
    Fact.ReadingTaken reading = shot.reading();
    return new ShotLine(
        shot.sequence(),
        reading.shot(),
        reading.speed().toString(),
        Figure.converted(reading.speed(), view),
        reading.source(),
        Optional.ofNullable(shot.voided()).map(Fact.ReadingVoided::reason));
  }

  /** The whole in a sentence, for those who hear the screen. */
  String spoken(Texts texts) {
    return voided
        .map(reason -> texts.of("line.shot.spoken.void", number, speed, reason))
        .orElseGet(() -> texts.of("line.shot.spoken", number, speed, source));
  }
}
