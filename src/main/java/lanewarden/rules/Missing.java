package lanewarden.rules;

import java.util.List;
import java.util.stream.Collectors;

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

  /**
   * The check is over, undecided: the readings lie too far apart to be believed.
   *
   * @param reason how far they lie apart and how far they may
   */
  record SpreadTooWide(String reason) implements Missing {
    @Override
    public String words() {
      return reason;
    }
  }

  /**
   * A clause asks for figures of bow or arrow that nobody stated yet; no shot is taken before.
   *
   * @param figures what is missing, at least one
   */
  record SetUpFigures(List<String> figures) implements Missing {
    /** Copies the list. */
    public SetUpFigures {
      figures = List.copyOf(figures);
    }

    @Override
    public String words() {
      return "to be stated first: " + String.join(", ", figures);
    }
  }

  /**
   * The readings decide, but the official has not ticked every condition.
   *
   * @param unticked what is still to be ticked, at least one
   */
  record Conditions(List<String> unticked) implements Missing {
    /** Copies the list. */
    public Conditions {
      unticked = List.copyOf(unticked);
    }

    @Override
    public String words() {
      return "to be ticked: " + String.join("; ", unticked);
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
    public String words() {
      return "in doubt: "
          + doubts.stream().map(Doubt::words).collect(Collectors.joining("; "))
          + ". Let it count or declare it void, with a reason";
    }
  }

  /** A limit applies, and the rule book does not say how it is measured. */
  record Measurement() implements Missing {
    @Override
    public String words() {
      return "the limit is not measured at this event";
    }
  }
}
