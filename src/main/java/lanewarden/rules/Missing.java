package lanewarden.rules;

import java.util.List;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;

/** What a check lacks that is not decided. */
public sealed interface Missing {

  /** What is missing, with figures. */
  Sentence sentence();

  /**
   * The check goes on.
   *
   * @param atLeast the fewest further readings that can decide it, one or more
   */
  record MoreReadings(int atLeast) implements Missing {
    @Override
    public Sentence sentence() {
      return atLeast == 1
          ? Sentence.of(Because.ONE_MORE_READING)
          : Sentence.of(Because.MORE_READINGS, atLeast);
    }
  }

  /**
   * The check is over, undecided: the shots left cannot bring a decision.
   *
   * @param left how many may still be taken
   * @param allowed how many a check has
   * @param atLeast the fewest further readings that could decide it
   */
  record ShotsSpent(int left, int allowed, int atLeast) implements Missing {
    @Override
    public Sentence sentence() {
      Sentence needed = new MoreReadings(atLeast).sentence();
      return left == 1
          ? Sentence.of(Because.SHOT_LEFT, allowed, needed)
          : Sentence.of(Because.SHOTS_LEFT, left, allowed, needed);
    }
  }

  /**
   * The check is over, undecided: more readings are void than the rule forgives.
   *
   * @param voided how many are void
   * @param forgiven how many may be
   */
  record VoidsSpent(int voided, int forgiven) implements Missing {
    @Override
    public Sentence sentence() {
      return voided == 1
          ? Sentence.of(Because.VOID_READING, forgiven)
          : Sentence.of(Because.VOID_READINGS, voided, forgiven);
    }
  }

  /**
   * The check is over, undecided: the readings lie too far apart to be believed.
   *
   * @param most how far they may lie apart
   */
  record SpreadTooWide(Speed slowest, Speed fastest, Speed most) implements Missing {
    @Override
    public Sentence sentence() {
      return Sentence.of(Because.TOO_FAR_APART, slowest, fastest, most);
    }
  }

  /**
   * A clause asks for figures of bow or arrow that nobody stated yet; no shot is taken before.
   *
   * @param figures what is missing, at least one, by the names in {@link SetUp}
   */
  record SetUpFigures(List<String> figures) implements Missing {
    /** Copies the list. */
    public SetUpFigures {
      figures = List.copyOf(figures);
    }

    @Override
    public Sentence sentence() {
      return Sentence.of(Because.TO_BE_STATED, row());
    }

    /** The figures by their names, one after the other. */
    public Sentence.Row row() {
      return new Sentence.Row(", ", figures.stream().map(SetUpFigures::named).toList());
    }

    private static Sentence named(String figure) {
      return Sentence.of(
          switch (figure) {
            case SetUp.ARROW_MASS -> Because.ARROW_MASS;
            case SetUp.DRAW_WEIGHT -> Because.DRAW_AS_SET;
            case SetUp.CERTIFIED_DRAW_WEIGHT -> Because.DRAW_CERTIFIED;
            default -> throw new IllegalArgumentException("no clause asks for " + figure);
          });
    }
  }

  /**
   * The readings decide, but the official has not ticked every condition.
   *
   * @param unticked what is still to be ticked, at least one, in the rule's own words
   */
  record Conditions(List<String> unticked) implements Missing {
    /** Copies the list. */
    public Conditions {
      unticked = List.copyOf(unticked);
    }

    @Override
    public Sentence sentence() {
      return Sentence.of(Because.TO_BE_TICKED, new Sentence.Row("; ", unticked));
    }
  }

  /**
   * The readings would end the check, but an official has not said of each one in doubt whether it
   * counts.
   *
   * @param doubts what is in doubt and why, at least one
   */
  record OddReadings(List<Doubt> doubts) implements Missing {
    /** Copies the list. */
    public OddReadings {
      doubts = List.copyOf(doubts);
    }

    @Override
    public Sentence sentence() {
      return Sentence.of(
          Because.IN_DOUBT, new Sentence.Row("; ", doubts.stream().map(Doubt::sentence).toList()));
    }
  }

  /** A limit applies, and the rule book does not say how it is measured. */
  record Measurement() implements Missing {
    @Override
    public Sentence sentence() {
      return Sentence.of(Because.NOT_MEASURED);
    }
  }
}
