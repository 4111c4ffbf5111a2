package lanewarden.metrology;

import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lanewarden.quantity.QuantityException;

/** What a stated "±" means. */
public sealed interface Coverage {

  /** The standard uncertainty behind a stated amount, in the amount's own unit. */
  double standard(double amount);

  /** The error is never larger and anywhere within alike: a rectangular distribution. */
  Coverage LIMITS = new Limits();

  /** The amount is so many standard uncertainties. */
  static Coverage factor(String k) {
    return new Factor(new BigDecimal(k));
  }

  /**
   * Reads {@code limits} or a coverage factor such as {@code k = 2}.
   *
   * @throws QuantityException if the text is neither
   */
  static Coverage parse(String text) {
    String stripped = text.strip();
    if (stripped.equals("limits")) {
      return LIMITS;
    }
    Matcher written = Factor.WRITTEN.matcher(stripped);
    if (!written.matches()) {
      throw new QuantityException(
          "what an accuracy covers, such as \"limits\" or \"k = 2\"",
          "\"" + (stripped.length() > 40 ? stripped.substring(0, 40) + "…" : stripped) + "\"",
          "write \"limits\" if no error is ever larger, else k and its factor");
    }
    return factor(written.group(1));
  }

  /** See {@link Coverage#LIMITS}. */
  record Limits() implements Coverage {
    @Override
    public double standard(double amount) {
      return UncertaintyBudget.rectangular(amount);
    }

    @Override
    public String toString() {
      return "limits";
    }
  }

  /**
   * See {@link Coverage#factor}.
   *
   * @param k coverage factor, more than zero, as written
   */
  record Factor(BigDecimal k) implements Coverage {
    private static final Pattern WRITTEN =
        Pattern.compile("k\\s*=\\s*([0-9]{1,3}(?:\\.[0-9]{1,6})?)");

    /**
     * @throws QuantityException if {@code k} is not more than zero
     */
    public Factor {
      if (k.signum() <= 0) {
        throw new QuantityException(
            "a coverage factor of more than zero",
            "k = " + k.toPlainString(),
            "write the factor that the maker or the calibration states, most often 2");
      }
    }

    @Override
    public double standard(double amount) {
      return UncertaintyBudget.stated(amount, k.doubleValue());
    }

    @Override
    public String toString() {
      return "k = " + k.toPlainString();
    }
  }
}
