package lanewarden.rules;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lanewarden.quantity.Speed;

/**
 * One made-up check that shows what a rule means; its verdict is the rule's own.
 *
 * @param name what it shows, for example {@code at the edge}
 * @param setUp bow and arrow in it
 * @param readings in the order taken
 * @param verdict what the rule says
 */
public record WorkedCase(String name, SetUp setUp, List<Speed> readings, Verdict verdict) {

  /** Copies the list. */
  public WorkedCase {
    readings = List.copyOf(readings);
  }

  /** What is given, in words: figures of bow and arrow, and readings. */
  public String given() {
    return Stream.of(bowAndArrow(), readingsGiven())
        .filter(part -> !part.isEmpty())
        .collect(Collectors.joining("; "));
  }

  private String bowAndArrow() {
    return Stream.of(
            setUp.arrowMass() == null ? "" : "arrow " + setUp.arrowMass(),
            setUp.drawWeight() == null ? "" : "draw weight " + setUp.drawWeight(),
            setUp.certifiedDrawWeight() == null ? "" : "certified " + setUp.certifiedDrawWeight())
        .filter(part -> !part.isEmpty())
        .collect(Collectors.joining("; "));
  }

  private String readingsGiven() {
    return readings.isEmpty()
        ? ""
        : readings.stream().map(Speed::toString).collect(Collectors.joining(", ", "readings ", ""));
  }

  /** What comes of it, with its reason. */
  public String outcome() {
    return verdict.takesShots()
        ? "admitted, and measured like any other"
        : verdict.word() + ", " + verdict.reason() + band().map(WorkedCase::follows).orElse("");
  }

  private Optional<Band> band() {
    return verdict instanceof Verdict.Over over ? over.band() : Optional.empty();
  }

  private static String follows(Band band) {
    return "; over by up to " + band.reach() + ": " + band.consequence().phrase();
  }

  /** The case in one sentence. */
  public String inWords() {
    return name + " (" + given() + "): " + outcome();
  }

  /** The same, without bow and arrow where the case told before has the same ones. */
  public String inWordsAfter(WorkedCase before) {
    return before.setUp.equals(setUp) && !readings.isEmpty()
        ? name + " (" + readingsGiven() + "): " + outcome()
        : inWords();
  }
}
