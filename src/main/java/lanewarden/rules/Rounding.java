package lanewarden.rules;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lanewarden.quantity.Speed;

/** What a rule does to a speed before it is compared; exact, whatever the units. */
public sealed interface Rounding {

  /** The speed rounded. */
  Speed of(Speed speed);

  /** The fastest speed up to this one that a rounded reading can have. */
  default Speed readable(Speed most) {
    return step().map(step -> new Down(step).of(most)).orElse(most);
  }

  /** The step, where there is one. */
  Optional<Speed> step();

  /** How the rule book writes it. */
  String written();

  /** Whether nothing is rounded. */
  default boolean isNone() {
    return step().isEmpty();
  }

  /** For example {@code rounded down to 288 ft/s}. */
  String inWords(Speed rounded);

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
      throw new IllegalArgumentException("write \"none\", or how and to which step");
    }
    Speed step = Speed.parse(form.group(2));
    if (step.value().signum() == 0) {
      throw new IllegalArgumentException("write a step of more than zero");
    }
    return form.group(1).equals("nearest") ? new Nearest(step) : new Down(step);
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
    public String inWords(Speed rounded) {
      return "not rounded";
    }
  }

  /**
   * To the multiple of the step that is not faster.
   *
   * @param width the step, more than zero; the rounded speed has its unit
   */
  record Down(Speed width) implements Rounding {
    @Override
    public Speed of(Speed speed) {
      return Stepped.round(speed, width, RoundingMode.DOWN);
    }

    @Override
    public Optional<Speed> step() {
      return Optional.of(width);
    }

    @Override
    public String written() {
      return "down to " + width;
    }

    @Override
    public String inWords(Speed rounded) {
      return "rounded down to " + Wording.plain(rounded);
    }
  }

  /**
   * To the nearest multiple of the step; one half goes up.
   *
   * @param width the step, more than zero; the rounded speed has its unit
   */
  record Nearest(Speed width) implements Rounding {
    @Override
    public Speed of(Speed speed) {
      return Stepped.round(speed, width, RoundingMode.HALF_UP);
    }

    @Override
    public Optional<Speed> step() {
      return Optional.of(width);
    }

    @Override
    public String written() {
      return "nearest " + width;
    }

    @Override
    public String inWords(Speed rounded) {
      return "rounded to the nearest, " + Wording.plain(rounded);
    }
  }

  /** Steps, counted without dividing twice. */
  final class Stepped {
    private static final Pattern FORM = Pattern.compile("(down to|nearest) +(.+)");

    private Stepped() {}

    private static Speed round(Speed speed, Speed step, RoundingMode mode) {
      BigDecimal steps = speed.si().divide(step.si(), 0, mode);
      return Speed.of(steps.multiply(step.value()), step.unit());
    }
  }
}
