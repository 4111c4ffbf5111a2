package lanewarden.quantity;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A sentence, or a part of one, that keeps its figures beside its words.
 *
 * <p>Which sentence applies is decided by the room that makes it. By itself it is English, as the
 * ledger, reports and the terminal have it; a screen puts the same form and the same figures in the
 * words of another language.
 *
 * @param form which sentence it is
 * @param figures what fills its blanks: quantities, numbers, names, other sentences, and rows of
 *     them
 */
public record Sentence(Form form, List<Object> figures) {
  private static final Pattern BLANK = Pattern.compile("\\{(\\d)}");

  /** Which sentence of a closed set; the constants of an enum. */
  public interface Form {
    /** In English, with {@code {0}}, {@code {1}} and so on where its figures stand. */
    String english();

    /** Its name in the set. */
    String name();
  }

  /**
   * Several figures one after the other.
   *
   * @param between stands between them, the same in every language
   */
  public record Row(String between, List<?> figures) {
    /** Copies the list. */
    public Row {
      figures = List.copyOf(figures);
    }

    @Override
    public String toString() {
      return figures.stream().map(String::valueOf).collect(Collectors.joining(between));
    }
  }

  private enum Verbatim implements Form {
    ENGLISH_ONLY;

    @Override
    public String english() {
      return "{0}";
    }
  }

  /**
   * @throws IllegalArgumentException if the form has another number of blanks
   */
  public Sentence {
    figures = List.copyOf(figures);
    long blanks = BLANK.matcher(form.english()).results().map(m -> m.group(1)).distinct().count();
    if (blanks != figures.size()) {
      throw new IllegalArgumentException(form.name() + " has " + blanks + " blanks: " + figures);
    }
  }

  /** A sentence with what fills its blanks, in their order. */
  public static Sentence of(Form form, Object... figures) {
    return new Sentence(form, List.of(figures));
  }

  /** Sentences one after the other, in English. */
  public static String joined(List<Sentence> sentences) {
    return sentences.stream().map(Sentence::toString).collect(Collectors.joining(" "));
  }

  /** Words of which nothing but the English is known, as where only they were signed. */
  public static Sentence verbatim(String english) {
    return of(Verbatim.ENGLISH_ONLY, english);
  }

  /** Whether nothing but the English is known. */
  public boolean isVerbatim() {
    return form == Verbatim.ENGLISH_ONLY;
  }

  /** In English. */
  @Override
  public String toString() {
    return BLANK
        .matcher(form.english())
        .replaceAll(
            blank ->
                Matcher.quoteReplacement(
                    String.valueOf(figures.get(Integer.parseInt(blank.group(1))))));
  }
}
