package lanewarden.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lanewarden.bow.DrawScaling;
import lanewarden.bow.VirtualMassRange;
import lanewarden.metrology.Belief;
import lanewarden.rules.Overrun;

/**
 * What would bring a set-up inside that is over: never part of the verdict, and never without its
 * cautions, since every one of them has all.
 *
 * <p>It holds for the bow as it was shot: from the smaller change, which is perhaps enough, to the
 * greater one, with which a further check passes with {@link #CONFIDENCE}.
 */
public final class Advice {

  /** With which probability the greater change is enough; one-sided. */
  public static final double CONFIDENCE = 0.95;

  /** What stands above it wherever it is shown. */
  public static final String HEADING = "Advice, no part of the verdict";

  private final String line;
  private final Optional<String> exception;
  private final List<String> notes;

  private Advice(String line, Optional<String> exception, List<String> notes) {
    this.line = line;
    this.exception = exception;
    this.notes = List.copyOf(notes);
  }

  /** For the archer of this check. */
  public static Advice on(Overrun over) {
    ShotScatter scatter = new ShotScatter(over.readings(), over.uncertainty());
    Belief figure = scatter.next(over.meanCompared(), over.deciding()).believed();
    HeavierArrow heavier = HeavierArrow.of(over, figure, CONFIDENCE);
    LowerDraw lower = LowerDraw.of(over, figure, CONFIDENCE);
    List<String> options =
        Stream.of(heavier.option(), lower.option()).flatMap(Optional::stream).toList();
    List<String> notes = new ArrayList<>();
    Stream.of(heavier.note(), lower.note()).flatMap(Optional::stream).forEach(notes::add);
    Optional<String> exception =
        heavier.option().isEmpty()
            ? heavier.note()
            : lower.note().filter(why -> lower.option().isEmpty());
    if (!options.isEmpty()) {
      notes.add(
          "The greater change brings "
              + over.further()
              + " within 95 times in 100, the smaller one perhaps; leave room.");
    }
    notes.add(supposed(scatter));
    return new Advice(
        options.isEmpty()
            ? "Neither a heavier arrow nor a lower draw weight brings this set-up inside."
            : "To come within: " + String.join(", or ", options) + ".",
        exception,
        notes);
  }

  private static String supposed(ShotScatter scatter) {
    return "Supposed by rules of thumb: "
        + (scatter.isTold() ? "" : "arrows that scatter by " + ShotScatter.USUAL + ", ")
        + "a virtual mass of "
        + VirtualMassRange.COMPOUND.inWords()
        + ", as of compound bows, and an energy that follows the draw weight with a power of "
        + DrawScaling.PRACTICE.inWords()
        + ".";
  }

  /** What would help, in one line. */
  public String line() {
    return line;
  }

  /** Why one of both changes is no help, where it is none; also one of the notes. */
  public Optional<String> exception() {
    return exception;
  }

  /** What it holds for. */
  public List<String> notes() {
    return notes;
  }

  /** All there are: none can be left out. */
  public List<Caution> cautions() {
    return List.of(Caution.values());
  }

  /** The whole of it for paper: what would help, what it holds for, the cautions. */
  public List<String> paragraphs() {
    return List.of(line, String.join(" ", notes), Caution.paragraph());
  }

  /** The whole of it, cautions and all. */
  @Override
  public String toString() {
    return HEADING + ". " + String.join(" ", paragraphs());
  }
}
