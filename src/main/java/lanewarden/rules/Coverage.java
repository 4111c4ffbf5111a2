package lanewarden.rules;

import java.util.Objects;
import lanewarden.quantity.Percent;
import lanewarden.quantity.Sentence;
import org.jspecify.annotations.Nullable;

/**
 * Who of a division is checked.
 *
 * @param who which competitors
 * @param share how many of them are drawn; null unless they are drawn at random
 */
public record Coverage(Who who, @Nullable Percent share) {

  /**
   * @throws IllegalArgumentException if there is a share without a draw, or a draw without one
   */
  public Coverage {
    if ((who == Who.RANDOM_SHARE) == (share == null)) {
      throw new IllegalArgumentException("a random share, and only that, needs a percentage");
    }
  }

  /** Everyone is checked. */
  public static Coverage everyone() {
    return new Coverage(Who.EVERYONE, null);
  }

  /** In a sentence. */
  public Sentence inWords() {
    return switch (who) {
      case EVERYONE -> Sentence.of(Demand.EVERYONE);
      case RANDOM_SHARE -> Sentence.of(Demand.SHARE, Objects.requireNonNull(share));
      case ON_REQUEST -> Sentence.of(Demand.ON_REQUEST);
      case NAMED_BY_JUDGE -> Sentence.of(Demand.NAMED_BY_JUDGE);
      case NOT_MEASURED -> Sentence.of(Demand.NOT_MEASURED);
    };
  }
}
