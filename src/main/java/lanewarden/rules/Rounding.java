package lanewarden.rules;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;
import lanewarden.written.ValueRefused;

/** What a rule does to a speed before it is compared; exact, whatever the units. */
public sealed interface Rounding {

  /** The speed rounded. */
  Speed of(Speed speed);

  /** The fastest speed up to this one that a rounded reading can have. */
  default Speed readable(Speed most) {
    return step().map(step -> new Stepped(Way.DOWN, step).of(most)).orElse(most);
  }

  /** The step, where there is one. */
  Optional<Speed> step();

  /** How the rule book writes it. */
  String written();

  /** Whether nothing is rounded. */
  default boolean isNone() {
    return step().isEmpty();
  }

  /** The sum that was rounded, and what it was rounded to. */
  Sentence after(Sentence sum, Speed rounded);

  /** What is done to each reading, for example {@code rounded down to whole steps of 1 ft/s}. */
  Sentence ofReadings();

  /**
   * Reads {@code none}, {@code down to 1 ft/s} or {@code nearest 1 ft/s}.
   *
   * @throws IllegalArgumentException if the text is anything else
   */
  static Rounding parse(String text) {
    String stripped = text.strip();
    if (stripped.equals("none")) {
      return new None();
    }
    Matcher form = Stepped.FORM.matcher(stripped);
    if (!form.matches()) {
      throw new ValueRefused(Sentence.of(BookTold.HOW_AND_STEP));
    }
    Speed step = Speed.parse(form.group(2));
    if (step.value().signum() == 0) {
      throw new ValueRefused(Sentence.of(BookTold.STEP_MORE_THAN_ZERO));
    }
    return new Stepped(form.group(1).equals(Way.DOWN.word) ? Way.DOWN : Way.NEAREST, step);
  }

  /** The speed stays as it is. */
  record None() implements Rounding {
    @Override
    public Speed of(Speed speed) {
      return speed;
    }

    @Override
    public Optional<Speed> step() {
      return Optional.empty();
    }

    @Override
    public String written() {
      return "none";
    }

    @Override
    public Sentence after(Sentence sum, Speed rounded) {
      return sum;
    }

    @Override
    public Sentence ofReadings() {
      return Sentence.of(Because.NOT_ROUNDED);
    }
  }

  /** Which multiple of a step. */
  enum Way {
    /** The one that is not faster. */
    DOWN("down to", RoundingMode.DOWN),
    /** The nearest one; one half goes up. */
    NEAREST("nearest", RoundingMode.HALF_UP);

    private final String word;
    private final RoundingMode mode;

    Way(String word, RoundingMode mode) {
      this.word = word;
      this.mode = mode;
    }
  }

  /**
   * To whole steps.
   *
   * @param way to which of them
   * @param width the step, more than zero; the rounded speed has its unit
   */
  record Stepped(Way way, Speed width) implements Rounding {
    private static final Pattern FORM = Pattern.compile("(down to|nearest) +(.+)");

    @Override
    public Speed of(Speed speed) {
      BigDecimal steps = speed.si().divide(width.si(), 0, way.mode);
      return Speed.of(steps.multiply(width.value()), width.unit());
    }

    @Override
    public Optional<Speed> step() {
      return Optional.of(width);
    }

    @Override
    public String written() {
      return way.word + " " + width;
    }

    @Override
    public Sentence after(Sentence sum, Speed rounded) {
      Speed shown = Wording.plain(rounded);
      return way == Way.DOWN
          ? Sentence.of(Because.LIMIT_ROUNDED_DOWN, sum, shown)
          : Sentence.of(Because.LIMIT_ROUNDED_NEAREST, sum, width, shown);
    }

    @Override
    public Sentence ofReadings() {
      return Sentence.of(way == Way.DOWN ? Because.ROUNDED_DOWN : Because.ROUNDED_NEAREST, width);
    }
  }
}
