package lanewarden.rules;

import lanewarden.quantity.Percent;
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
  public String inWords() {
    return switch (who) {
      case EVERYONE -> "Everyone is checked.";
      case RANDOM_SHARE -> "A random share of " + share + " is checked.";
      case ON_REQUEST -> "Those who ask for it are checked.";
      case NAMED_BY_JUDGE -> "Those whom a judge names are checked.";
      case NOT_MEASURED -> "The rule holds, but it is not measured at this event.";
    };
  }
}
