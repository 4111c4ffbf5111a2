package lanewarden.station;

import java.util.List;
import lanewarden.bench.Brought;
import lanewarden.bench.Foretold;
import lanewarden.bench.Prospect;
import lanewarden.quantity.Percent;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;
import lanewarden.rules.Division;
import lanewarden.rules.RuleEffect;

/**
 * What awaits a set-up under a rule book, before anybody shoots.
 *
 * @param sentences what the set-up does
 * @param divisions in the order of the rule book
 * @param prospects one for each division
 * @param supposed of archer and instrument, in a sentence
 */
public record Outlook(
    List<Sentence> sentences,
    List<Division> divisions,
    List<Prospect> prospects,
    Sentence supposed) {

  /** Copies the lists. */
  public Outlook {
    sentences = List.copyOf(sentences);
    divisions = List.copyOf(divisions);
    prospects = List.copyOf(prospects);
  }

  /**
   * The outlook for what an archer types.
   *
   * @param scatter standard deviation of the archer's arrows from one to the next; ft/s without a
   *     unit
   * @throws StationException if what was typed cannot be read
   */
  public static Outlook of(List<Division> divisions, BroughtText typed, String scatter)
      throws StationException {
    Brought brought = typed.read();
    RuleEffect.Supposed supposed =
        new RuleEffect.Supposed(
            BroughtText.speed(scatter),
            Speed.parse(Supposition.Usual.READING),
            Speed.parse(Supposition.Usual.CALIBRATION),
            Percent.parse(Supposition.Usual.VOIDS));
    return new Outlook(
        brought.sentences(),
        divisions,
        brought.prospects(divisions, supposed),
        Sentence.of(
            Foretold.SUPPOSED,
            supposed.arrows(),
            supposed.reading(),
            supposed.calibration(),
            supposed.voids()));
  }
}
