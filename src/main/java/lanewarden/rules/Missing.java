package lanewarden.rules;

/** What a check lacks that is not decided. */
public sealed interface Missing {

  /** In plain words, with figures. */
  String words();

  /**
   * The check goes on.
   *
   * @param atLeast the fewest further readings that can decide it, one or more
   */
  record MoreReadings(int atLeast) implements Missing {
    @Override
    public String words() {
      return "at least " + Wording.count(atLeast, "more reading");
    }
  }

  /**
   * The check is over, undecided: the shots left cannot bring a decision.
   *
   * @param reason how many are left and how many would be needed
   */
  record ShotsSpent(String reason) implements Missing {
    @Override
    public String words() {
      return reason;
    }
  }

  /**
   * The check is over, undecided: more readings are void than the rule forgives.
   *
   * @param reason how many are void and how many are forgiven
   */
  record VoidsSpent(String reason) implements Missing {
    @Override
    public String words() {
      return reason;
    }
  }
}
