package lanewarden.metrology;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import lanewarden.quantity.Percent;

/**
 * A draw that anybody can repeat: the order of the competitors follows from digits that were thrown
 * before witnesses.
 *
 * <p>Each bib is hashed together with the seed: SHA-256 over the seed's digits, a line feed and the
 * bib, in UTF-8. The bibs are put in the order of their hashes, and the first ones are drawn: the
 * share of all, rounded up. The page {@code public-draw.md} has a script that does the same.
 */
public final class PublicDraw {

  /**
   * The least digits of a seed. A die brings log2(6) = 2.58 bits, so 20 bring 51.7: 3.7 × 10¹⁵
   * equally likely throws, too many to try which of them suits somebody before the dice are thrown.
   */
  public static final int LEAST_DIGITS = 20;

  private static final String BETWEEN_DIGITS = " \t\r\n,;.:/-";

  private final String seed;
  private final List<Place> order;
  private final int count;

  /**
   * A competitor's place in the draw.
   *
   * @param bib as in the roster
   * @param sha256 of seed and bib, 64 hexadecimal digits in small letters
   */
  public record Place(String bib, String sha256) {}

  private PublicDraw(String seed, List<Place> order, int count) {
    this.seed = seed;
    this.order = order;
    this.count = count;
  }

  /**
   * The draw from a seed.
   *
   * @param seed digits 0 to 9, 20 or more; spaces, line ends and the marks {@code , ; . : / -}
   *     between them do not count
   * @param share of the competitors to draw, more than 0, at most 100 %
   * @param bibs at least one, each once; in any order
   * @throws IllegalArgumentException if one of them makes no sense, with what to do
   */
  public static PublicDraw of(String seed, Percent share, Collection<String> bibs) {
    String digits = digits(seed);
    requireShare(share);
    requireBibs(bibs);
    List<Place> order =
        bibs.stream()
            .map(bib -> new Place(bib, hash(digits + "\n" + bib)))
            .sorted(Comparator.comparing(Place::sha256))
            .toList();
    int count =
        share
            .fraction()
            .multiply(BigDecimal.valueOf(order.size()))
            .setScale(0, RoundingMode.CEILING)
            .intValueExact();
    return new PublicDraw(digits, order, count);
  }

  private static String digits(String seed) {
    StringBuilder digits = new StringBuilder();
    for (int i = 0; i < seed.length(); i++) {
      char c = seed.charAt(i);
      if (c >= '0' && c <= '9') {
        digits.append(c);
      } else if (BETWEEN_DIGITS.indexOf(c) < 0) {
        throw new IllegalArgumentException(
            "the seed of a draw is made of the digits 0 to 9, found '"
                + Character.toString(seed.codePointAt(i))
                + "'; write only what the dice showed");
      }
    }
    if (digits.length() < LEAST_DIGITS) {
      throw new IllegalArgumentException(
          "the seed of a draw needs "
              + LEAST_DIGITS
              + " digits, found "
              + digits.length()
              + ": fewer could be tried out beforehand; throw more dice");
    }
    return digits.toString();
  }

  private static void requireShare(Percent share) {
    if (share.value().signum() == 0 || share.value().compareTo(BigDecimal.valueOf(100)) > 0) {
      throw new IllegalArgumentException(
          "a draw takes more than 0 % and at most 100 % of the competitors, not " + share);
    }
  }

  private static void requireBibs(Collection<String> bibs) {
    if (bibs.isEmpty()) {
      throw new IllegalArgumentException("nobody to draw from: the list of bibs is empty");
    }
    Set<String> seen = new HashSet<>();
    for (String bib : bibs) {
      if (bib.isBlank() || !bib.equals(bib.strip()) || bib.lines().count() != 1) {
        throw new IllegalArgumentException(
            "a bib of a draw is one line with no space around it, found '" + bib + "'");
      }
      if (!seen.add(bib)) {
        throw new IllegalArgumentException(
            "bib " + bib + " stands twice in the draw; a competitor has one chance");
      }
    }
  }

  private static String hash(String text) {
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(digest);
    } catch (NoSuchAlgorithmException broken) {
      throw new IllegalStateException("every Java platform has SHA-256", broken);
    }
  }

  /** The digits alone, as they were hashed. */
  public String seed() {
    return seed;
  }

  /** Every competitor in the order of the draw. */
  public List<Place> order() {
    return order;
  }

  /** The bibs that are drawn, in the order of the draw: the share of all, rounded up. */
  public List<String> drawn() {
    return order.stream().limit(count).map(Place::bib).toList();
  }
}
