package lanewarden.rules;

import java.util.List;
import java.util.Optional;
import lanewarden.quantity.Force;
import org.jspecify.annotations.Nullable;

/** Which draw weight of a bow counts. */
public enum DrawWeight {
  /** As the archer's bow is set. */
  AS_SET("as set", "draw weight as set"),
  /** As the bow's certificate states it. */
  CERTIFIED("certified", "certified draw weight"),
  /** Whichever of both is more. */
  GREATER("greater", "the greater of the draw weights as set and certified");

  private final String word;
  private final String phrase;

  DrawWeight(String word, String phrase) {
    this.word = word;
    this.phrase = phrase;
  }

  /** As the rule book writes it. */
  public String word() {
    return word;
  }

  /** In a sentence. */
  String phrase() {
    return phrase;
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
