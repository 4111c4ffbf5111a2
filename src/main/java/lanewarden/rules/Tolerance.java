package lanewarden.rules;

import java.math.BigDecimal;
import java.util.Optional;
import lanewarden.quantity.Percent;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;

/** What a rule allows above its limit; kept apart from the limit, so that both can be shown. */
public sealed interface Tolerance {

  /** The limit and this tolerance, exactly, in the limit's unit. */
  Speed above(Speed limit);

  /** The limit and this tolerance in words, for example {@code 300 ft/s plus 3 %}. */
  Sentence inWords(Speed limit);

  /** Whether it adds nothing to any limit. */
  boolean isNothing();

  /** The fixed speed in it, whose unit must be the limit's, where there is one. */
  default Optional<Speed> speed() {
    return Optional.empty();
  }

  /**
   * Reads a share such as {@code 3 %} or a speed such as {@code 2 ft/s}.
   *
   * @throws lanewarden.quantity.QuantityException if the text is neither
   */
  static Tolerance shareOrSpeed(String text) {
    return Percent.isMeantBy(text)
        ? new Share(Percent.parse(text))
        : new Absolute(Speed.parse(text));
  }

  /** The limit is the limit. */
  record None() implements Tolerance {
    @Override
    public boolean isNothing() {
      return true;
    }

    @Override
    public Speed above(Speed limit) {
      return limit;
    }

    @Override
    public Sentence inWords(Speed limit) {
      return Sentence.of(Because.SHOWN, limit);
    }
  }

  /** A share of the limit. */
  record Share(Percent percent) implements Tolerance {
    @Override
    public boolean isNothing() {
      return percent.value().signum() == 0;
    }

    @Override
    public Speed above(Speed limit) {
      return limit.plus(percent);
    }

    @Override
    public Sentence inWords(Speed limit) {
      return Sentence.of(Because.PLUS, limit, percent);
    }
  }

  /** A fixed speed, in the unit of the limit. */
  record Absolute(Speed fixed) implements Tolerance {
    @Override
    public boolean isNothing() {
      return fixed.value().signum() == 0;
    }

    /**
     * @throws IllegalArgumentException if the limit has another unit
     */
    @Override
    public Speed above(Speed limit) {
      return limit.plus(fixed);
    }

    @Override
    public Sentence inWords(Speed limit) {
      return Sentence.of(Because.PLUS, limit, fixed);
    }

    @Override
    public Optional<Speed> speed() {
      return Optional.of(fixed);
    }
  }

  /**
   * So many times what the maker of the instrument states as its accuracy.
   *
   * @param accuracy a share or a fixed speed
   * @param factor one or more
   */
  record InstrumentAccuracy(Tolerance accuracy, int factor) implements Tolerance {
    /**
     * @throws IllegalArgumentException if the accuracy is neither a share nor a speed, or is
     *     counted less than once
     */
    public InstrumentAccuracy {
      if (factor < 1 || !(accuracy instanceof Share || accuracy instanceof Absolute)) {
        throw new IllegalArgumentException(
            "an accuracy is a share or a speed, counted once or more");
      }
    }

    @Override
    public Speed above(Speed limit) {
      BigDecimal times = BigDecimal.valueOf(factor);
      return accuracy instanceof Share share
          ? limit.plus(new Percent(share.percent().value().multiply(times)))
          : limit.plus(Speed.of(fixed().value().multiply(times), fixed().unit()));
    }

    @Override
    public boolean isNothing() {
      return accuracy.isNothing();
    }

    private Speed fixed() {
      return accuracy.speed().orElseThrow();
    }

    @Override
    public Sentence inWords(Speed limit) {
      Object stated = accuracy instanceof Share share ? share.percent() : fixed();
      return Sentence.of(Because.PLUS_ACCURACY, limit, stated, factor);
    }

    @Override
    public Optional<Speed> speed() {
      return accuracy.speed();
    }
  }
}
