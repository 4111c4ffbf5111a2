package lanewarden.rules;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lanewarden.quantity.Force;
import lanewarden.quantity.Sentence;
import org.jspecify.annotations.Nullable;

/** Which draw weight of a bow counts. */
public enum DrawWeight implements Worded {
  /** As the archer's bow is set. */
  AS_SET("as set", Because.DRAW_AS_SET),
  /** As the bow's certificate states it. */
  CERTIFIED("certified", Because.DRAW_CERTIFIED),
  /** Whichever of both is more. */
  GREATER("greater", Because.DRAW_GREATER);

  private final String word;
  private final Because phrase;

  DrawWeight(String word, Because phrase) {
    this.word = word;
    this.phrase = phrase;
  }

  /** As the rule book writes it. */
  @Override
  public String word() {
    return word;
  }

  /** In a sentence. */
  Sentence phrase() {
    return Sentence.of(phrase);
  }

  /** The draw weight that counts, where all it rests on is known. */
  Optional<Force> of(SetUp setUp) {
    Force asSet = setUp.drawWeight();
    Force certified = setUp.certifiedDrawWeight();
    return Optional.ofNullable(
        switch (this) {
          case AS_SET -> asSet;
          case CERTIFIED -> certified;
          case GREATER -> greater(asSet, certified);
        });
  }

  /**
   * The least that the one that counts can be: itself where it is known, and where the greater of
   * two counts, the one that is known.
   */
  Optional<Stated> atLeast(SetUp setUp) {
    Optional<Stated> itself = of(setUp).map(draw -> new Stated(phrase(), draw));
    return this != GREATER || itself.isPresent()
        ? itself
        : Stream.of(AS_SET, CERTIFIED).flatMap(one -> one.atLeast(setUp).stream()).findFirst();
  }

  /**
   * A draw weight by its name.
   *
   * @param phrase in a sentence
   */
  record Stated(Sentence phrase, Force draw) {
    Sentence sentence() {
      return Sentence.of(Because.FIGURE, phrase, draw);
    }
  }

  private static @Nullable Force greater(@Nullable Force asSet, @Nullable Force certified) {
    if (asSet == null || certified == null) {
      return null;
    }
    return asSet.isMoreThan(certified) ? asSet : certified;
  }

  /** What it rests on and nobody stated. */
  List<String> missing(SetUp setUp) {
    boolean needsSet = this != CERTIFIED && setUp.drawWeight() == null;
    boolean needsCertified = this != AS_SET && setUp.certifiedDrawWeight() == null;
    if (needsSet && needsCertified) {
      return List.of(SetUp.DRAW_WEIGHT, SetUp.CERTIFIED_DRAW_WEIGHT);
    }
    if (needsSet) {
      return List.of(SetUp.DRAW_WEIGHT);
    }
    return needsCertified ? List.of(SetUp.CERTIFIED_DRAW_WEIGHT) : List.of();
  }
}
