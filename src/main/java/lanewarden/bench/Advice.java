package lanewarden.bench;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lanewarden.bow.DrawScaling;
import lanewarden.bow.VirtualMassRange;
import lanewarden.metrology.Belief;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;
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

  private final Sentence line;
  private final Optional<Sentence> exception;
  private final List<Sentence> notes;

  private Advice(Sentence line, Optional<Sentence> exception, List<Sentence> notes) {
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
    Object[] options =
        Stream.of(heavier.option(), lower.option()).flatMap(Optional::stream).toArray();
    List<Sentence> notes = new ArrayList<>();
    Stream.of(heavier.note(), lower.note()).flatMap(Optional::stream).forEach(notes::add);
    Optional<Sentence> exception =
        heavier.option().isEmpty()
            ? heavier.note()
            : lower.note().filter(why -> lower.option().isEmpty());
    if (options.length > 0) {
      notes.add(Sentence.of(Advised.LEAVE_ROOM, over.further()));
    }
    notes.add(supposed(scatter));
    return new Advice(
        switch (options.length) {
          case 0 -> Sentence.of(Advised.NO_WAY);
          case 1 -> Sentence.of(Advised.ONE_WAY, options);
          default -> Sentence.of(Advised.EITHER_WAY, options);
        },
        exception,
        notes);
  }

  private static Sentence supposed(ShotScatter scatter) {
    VirtualMassRange bow = VirtualMassRange.COMPOUND;
    BigDecimal least = DrawScaling.PRACTICE.leastPower();
    BigDecimal most = DrawScaling.PRACTICE.mostPower();
    return scatter.isTold()
        ? Sentence.of(Advised.SUPPOSED, bow.least(), bow.most(), least, most)
        : Sentence.of(
            Advised.SUPPOSED_SCATTER,
            Speed.parse(ShotScatter.USUAL),
            bow.least(),
            bow.most(),
            least,
            most);
  }

  /** What would help, in one line. */
  public Sentence line() {
    return line;
  }

  /** Why one of both changes is no help, where it is none; also one of the notes. */
  public Optional<Sentence> exception() {
    return exception;
  }

  /** What it holds for. */
  public List<Sentence> notes() {
    return notes;
  }

  /** All there are: none can be left out. */
  public List<Caution> cautions() {
    return List.of(Caution.values());
  }

  /** The whole of it for paper: what would help, what it holds for, the cautions. */
  public List<String> paragraphs() {
    return List.of(line.toString(), Sentence.joined(notes), Caution.paragraph());
  }

  /** The whole of it, cautions and all. */
  @Override
  public String toString() {
    return HEADING + ". " + String.join(" ", paragraphs());
  }
}
