package lanewarden.rules;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;
import org.jspecify.annotations.Nullable;

/**
 * One made-up check that shows what a rule means; its verdict is the rule's own.
 *
 * @param name what it shows
 * @param setUp bow and arrow in it
 * @param readings in the order taken
 * @param verdict what the rule says
 */
public record WorkedCase(Worked name, SetUp setUp, List<Speed> readings, Verdict verdict) {

  /** Copies the list. */
  public WorkedCase {
    readings = List.copyOf(readings);
  }

  private Stream<Sentence> bowAndArrow() {
    return Stream.of(
            part(Worked.ARROW, setUp.arrowMass()),
            part(Worked.DRAW_WEIGHT, setUp.drawWeight()),
            part(Worked.CERTIFIED, setUp.certifiedDrawWeight()))
        .flatMap(Optional::stream);
  }

  private static Optional<Sentence> part(Worked name, @Nullable Object figure) {
    return Optional.ofNullable(figure).map(known -> Sentence.of(name, known));
  }

  private Stream<Sentence> readingsGiven() {
    return readings.isEmpty()
        ? Stream.empty()
        : Stream.of(Sentence.of(Worked.READINGS, new Sentence.Row(", ", readings)));
  }

  /** What comes of it, with its reason. */
  public Sentence outcome() {
    if (verdict.takesShots()) {
      return Sentence.of(Worked.ADMITTED);
    }
    if (verdict instanceof Verdict.Over over && over.band().isPresent()) {
      Band band = over.band().get();
      return Sentence.of(
          Worked.OVER_IN_BAND, over.why(), band.reached(), Sentence.of(band.consequence()));
    }
    return Sentence.of(ending(), verdict.why());
  }

  private Worked ending() {
    if (verdict instanceof Verdict.Within) {
      return Worked.WITHIN;
    }
    if (verdict instanceof Verdict.Over) {
      return Worked.OVER;
    }
    return verdict instanceof Verdict.NotAdmitted ? Worked.NOT_ADMITTED : Worked.NOT_DECIDED;
  }

  /** The case in one sentence: what it shows, figures of bow and arrow, readings, what comes. */
  public Sentence inWords() {
    return inWords(Stream.concat(bowAndArrow(), readingsGiven()));
  }

  /** The same, without bow and arrow where the case told before has the same ones. */
  public Sentence inWordsAfter(WorkedCase before) {
    return before.setUp.equals(setUp) && !readings.isEmpty() ? inWords(readingsGiven()) : inWords();
  }

  private Sentence inWords(Stream<Sentence> given) {
    return Sentence.of(
        Worked.CASE, Sentence.of(name), new Sentence.Row("; ", given.toList()), outcome());
  }
}
