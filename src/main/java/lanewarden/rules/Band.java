package lanewarden.rules;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lanewarden.quantity.MeanSpeed;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;
import lanewarden.written.ValueRefused;

/**
 * How far over with which consequence.
 *
 * @param width how far above the allowed speed it reaches, its upper edge included: a share of the
 *     allowed speed or a fixed speed
 * @param consequence what follows
 */
public record Band(Tolerance width, Consequence consequence) {

  private static final Pattern WRITTEN = Pattern.compile("up to ([^:]+): *(\\S.*)");

  /**
   * @throws IllegalArgumentException if the width is neither a share nor a fixed speed
   */
  public Band {
    if (!(width instanceof Tolerance.Share || width instanceof Tolerance.Absolute)) {
      throw new IllegalArgumentException("a band reaches up to a share or a speed");
    }
  }

  /**
   * Reads for example {@code up to 1 %: re-check}.
   *
   * @throws IllegalArgumentException if the text is anything else
   */
  static Band parse(String text) {
    Matcher written = WRITTEN.matcher(text.strip());
    if (!written.matches()) {
      throw new ValueRefused(Sentence.of(BookTold.WRITE_BAND));
    }
    Tolerance reach = Tolerance.shareOrSpeed(written.group(1));
    if (reach.isNothing()) {
      throw new ValueRefused(Sentence.of(BookTold.BAND_MORE_THAN_ZERO));
    }
    return new Band(
        reach,
        Consequence.ofWord(written.group(2).strip())
            .orElseThrow(() -> new ValueRefused(Sentence.of(BookTold.BEHIND_COLON))));
  }

  /** How the rule book writes it. */
  public String written() {
    return "up to " + reach() + ": " + consequence.word();
  }

  /** How far it reaches, for example {@code 1 %}. */
  public String reach() {
    return reached().toString();
  }

  /** The same with its figure. */
  Sentence reached() {
    return width instanceof Tolerance.Share share
        ? Sentence.of(Because.SHOWN, share.percent())
        : Sentence.of(Because.SHOWN, width.speed().orElseThrow());
  }

  /** Its upper edge above an allowed speed; exact. */
  Speed edge(Speed allowed) {
    return width.above(allowed);
  }

  boolean holds(MeanSpeed figure, Speed allowed) {
    return !figure.isMoreThan(edge(allowed));
  }
}
