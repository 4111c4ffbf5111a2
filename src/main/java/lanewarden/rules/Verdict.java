package lanewarden.rules;

import java.util.Optional;
import lanewarden.quantity.Sentence;

/** The outcome of a check, with its reason: never a bare yes or no. */
public sealed interface Verdict {

  /** The outcome in one fixed word or two: the same on screen, in the ledger and on paper. */
  String word();

  /** Why, with the figures that decided. */
  Sentence why();

  /** The same in plain words, as they are signed. */
  default String reason() {
    return why().toString();
  }

  /** Whether the check ends here: no further shot changes this verdict. */
  boolean ends();

  /** Whether a further shot is wanted. */
  default boolean takesShots() {
    return false;
  }

  /** The limit is kept. */
  record Within(Sentence why) implements Verdict {
    static final String WORD = "within";

    @Override
    public String word() {
      return WORD;
    }

    @Override
    public boolean ends() {
      return true;
    }
  }

  /**
   * The limit is exceeded.
   *
   * @param band how far, where the rule has bands and it lies in one
   */
  record Over(Sentence why, Optional<Band> band) implements Verdict {
    static final String WORD = "over";

    /** Over, in no band. */
    public Over(Sentence why) {
      this(why, Optional.empty());
    }

    @Override
    public String word() {
      return WORD;
    }

    @Override
    public boolean ends() {
      return true;
    }
  }

  /** Neither within nor over: the check still runs, or it ended without a decision. */
  record NotDecided(Missing missing) implements Verdict {
    @Override
    public String word() {
      return "not decided";
    }

    @Override
    public Sentence why() {
      return missing.sentence();
    }

    @Override
    public boolean ends() {
      return !(missing instanceof Missing.MoreReadings
          || missing instanceof Missing.SetUpFigures
          || missing instanceof Missing.Conditions
          || missing instanceof Missing.OddReadings);
    }

    @Override
    public boolean takesShots() {
      return missing instanceof Missing.MoreReadings;
    }
  }

  /**
   * Another clause than the speed limit keeps the competitor out.
   *
   * @param clause that clause, with its figures
   */
  record NotAdmitted(Sentence clause) implements Verdict {
    @Override
    public String word() {
      return "not admitted";
    }

    @Override
    public Sentence why() {
      return clause;
    }

    @Override
    public boolean ends() {
      return true;
    }
  }
}
