package lanewarden.station;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import lanewarden.rules.Consequence;
import lanewarden.rules.Decision;
import lanewarden.rules.DrawWeight;
import lanewarden.rules.Guard;
import lanewarden.rules.Lapse;
import lanewarden.rules.Side;
import lanewarden.rules.Who;
import lanewarden.written.Literal;

/** A key of a rule book, in the order in which a person writes them. */
public enum RuleKey {
  CODE("code", Kind.LINE),
  NAME("name", Kind.LINE),
  BODY("body", Kind.LINE),
  SOURCE("source", Kind.LINE),
  EDITION("edition", Kind.LINE),
  EFFECTIVE("effective", Kind.DAY),
  WHO("who", Kind.CHOICE, words(Who.values(), Who::word)),
  SHARE("share", Kind.LINE),
  LIMIT("limit", Kind.LINE, List.of(Words.NONE)),
  BOUND("bound", Kind.CHOICE, words(Side.values(), Side::word)),
  TOLERANCE("tolerance", Kind.LINE, List.of(Words.NONE, Words.INSTRUMENT)),
  ACCURACY("accuracy", Kind.LINE),
  FACTOR("factor", Kind.WHOLE),
  ROUND_LIMIT("round-limit", Kind.LINE),
  ACCEPTANCE("acceptance", Kind.CHOICE, Guard.written()),
  GUARD("guard", Kind.LINE),
  ONLY_BELOW("only-below", Kind.LINE),
  ENERGY("energy", Kind.LINE),
  ENERGY_BOUND("energy-bound", Kind.CHOICE, words(Side.values(), Side::word)),
  LEAST_ARROW("least-arrow", Kind.LINE),
  LEAST_DRAW_WEIGHT("least-draw-weight", Kind.LINE),
  MOST_DRAW_WEIGHT("most-draw-weight", Kind.LINE),
  DRAW_WEIGHT("draw-weight", Kind.CHOICE, words(DrawWeight.values(), DrawWeight::word)),
  DECIDE("decide", Kind.CHOICE, Decision.words()),
  WITHIN("within", Kind.WHOLE),
  COUNTED("counted", Kind.WHOLE),
  SHOTS("shots", Kind.WHOLE),
  VOIDS("voids", Kind.WHOLE),
  ROUND_READING("round-reading", Kind.LINE),
  BOW_CORRECTION("bow-correction", Kind.LINE),
  SPREAD("spread", Kind.LINE),
  JUMP("jump", Kind.LINE),
  OUTLIER("outlier", Kind.LINE),
  OUTLIER_LEAST("outlier-least", Kind.LINE),
  RECHECKS("rechecks", Kind.WHOLE),
  FAIL_BEFORE("fail-before", Kind.CHOICE, words(Consequence.values(), Consequence::word)),
  FAIL_DURING("fail-during", Kind.CHOICE, words(Consequence.values(), Consequence::word)),
  FAIL_AFTER("fail-after", Kind.CHOICE, words(Consequence.values(), Consequence::word)),
  BANDS("bands", Kind.LINES),
  LAPSES("lapses", Kind.CHOICES, words(Lapse.values(), Lapse::word)),
  CONDITIONS("conditions", Kind.LINES);

  /** What is typed for a key. */
  public enum Kind {
    /** A text of one line. */
    LINE,
    /** A whole number. */
    WHOLE,
    /** A day, as in {@code 2026-03-01}. */
    DAY,
    /** One of the words. */
    CHOICE,
    /** Any of the words, one a line. */
    CHOICES,
    /** Texts, one a line. */
    LINES;

    /**
     * What is typed, as it is to be written; as a text where it is not of this kind, so that it
     * stays for everybody to see.
     *
     * @throws IllegalArgumentException if it holds half a character
     */
    Literal literal(String typed) {
      String text = typed.strip();
      return switch (this) {
        case WHOLE ->
            text.matches("-?[0-9]{1,9}") ? Literal.whole(Long.parseLong(text)) : Literal.text(text);
        case DAY -> day(text);
        case CHOICES, LINES ->
            Literal.texts(typed.lines().map(String::strip).filter(s -> !s.isEmpty()).toList());
        default -> Literal.text(text);
      };
    }

    private static Literal day(String text) {
      try {
        return Literal.day(LocalDate.parse(text));
      } catch (DateTimeParseException e) {
        return Literal.text(text);
      }
    }

    /** Whether a value in the file is of this kind. */
    boolean takes(Object value) {
      return switch (this) {
        case WHOLE -> value instanceof Long;
        case DAY -> value instanceof LocalDate;
        case CHOICES, LINES ->
            value instanceof List<?> list && list.stream().allMatch(String.class::isInstance);
        default -> value instanceof String;
      };
    }
  }

  private static final class Words {
    private static final String NONE = "none";
    private static final String INSTRUMENT = "instrument accuracy";
  }

  private final String word;
  private final Kind kind;
  private final List<String> words;

  RuleKey(String word, Kind kind) {
    this(word, kind, List.of());
  }

  RuleKey(String word, Kind kind, List<String> words) {
    this.word = word;
    this.kind = kind;
    this.words = List.copyOf(words);
  }

  private static <E> List<String> words(E[] all, Function<E, String> word) {
    return Stream.of(all).map(word).toList();
  }

  /** As the rule book writes it. */
  public String word() {
    return word;
  }

  /** What is typed for it. */
  public Kind kind() {
    return kind;
  }

  /** The words there are to choose from; for a line, those that stand for something special. */
  public List<String> words() {
    return words;
  }

  /** The words of all keys, in order. */
  static List<String> order() {
    return words(values(), RuleKey::word);
  }

  /**
   * Whether the key means anything in a division that says this.
   *
   * @param said what the division says for a key; blank where it says nothing
   */
  public boolean applies(Function<RuleKey, String> said) {
    boolean limited = !said.apply(LIMIT).strip().equals(Words.NONE);
    boolean energy = says(said, ENERGY);
    boolean unmeasured = said.apply(WHO).equals(Who.NOT_MEASURED.word());
    boolean measured = (limited || energy) && !unmeasured;
    boolean checked = measured || (!unmeasured && asksBow(said));
    return switch (this) {
      case BOUND, TOLERANCE, ROUND_LIMIT, ONLY_BELOW -> limited;
      case ACCEPTANCE -> limited && !energy;
      case GUARD -> limited && !energy && isGuarded(said);
      case ACCURACY, FACTOR -> limited && said.apply(TOLERANCE).equals(Words.INSTRUMENT);
      case ENERGY_BOUND -> energy;
      case SHARE -> said.apply(WHO).equals(Who.RANDOM_SHARE.word());
      case DRAW_WEIGHT -> asksBow(said) || says(said, ONLY_BELOW);
      case DECIDE, COUNTED, SHOTS, VOIDS, ROUND_READING, BOW_CORRECTION, CONDITIONS -> measured;
      case JUMP, OUTLIER -> measured;
      case OUTLIER_LEAST -> measured && says(said, OUTLIER);
      case WITHIN -> measured && said.apply(DECIDE).equals(Decision.WithinCount.WORD);
      case SPREAD -> measured && !said.apply(COUNTED).strip().equals("1");
      case RECHECKS, FAIL_BEFORE, FAIL_DURING, FAIL_AFTER, LAPSES -> checked;
      case BANDS -> measured && limited && !energy;
      default -> true;
    };
  }

  private static boolean isGuarded(Function<RuleKey, String> said) {
    return says(said, ACCEPTANCE) && !said.apply(ACCEPTANCE).equals(Guard.written().get(0));
  }

  private static boolean asksBow(Function<RuleKey, String> said) {
    return says(said, LEAST_ARROW) || says(said, LEAST_DRAW_WEIGHT) || says(said, MOST_DRAW_WEIGHT);
  }

  private static boolean says(Function<RuleKey, String> said, RuleKey key) {
    return !said.apply(key).isBlank();
  }
}
