package lanewarden.rules;

import lanewarden.quantity.Percent;
import lanewarden.quantity.Speed;

/** What a rule allows above its limit; kept apart from the limit, so that both can be shown. */
public sealed interface Tolerance {

  /** The limit and this tolerance, exactly, in the limit's unit. */
  Speed above(Speed limit);

  /** The limit and this tolerance in words, for example {@code 300 ft/s plus 3 %}. */
  String inWords(Speed limit);

  /** The limit is the limit. */
  record None() implements Tolerance {
    @Override
    public Speed above(Speed limit) {
      return limit;
    }

    @Override
    public String inWords(Speed limit) {
      return limit.toString();
    }
  }

  /** A share of the limit. */
  record Share(Percent percent) implements Tolerance {
    @Override
    public Speed above(Speed limit) {
      return limit.plus(percent);
    }

    @Override
    public String inWords(Speed limit) {
      return limit + " plus " + percent;
    }
  }

  /** A fixed speed, in the unit of the limit. */
  record Absolute(Speed speed) implements Tolerance {
    /**
     * @throws IllegalArgumentException if the limit has another unit
     */
    @Override
    public Speed above(Speed limit) {
      return limit.plus(speed);
    }

    @Override
    public String inWords(Speed limit) {
      return limit + " plus " + speed;
    }
  }
}
