package lanewarden.kiosk.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanewarden.station.Trouble;

/**
 * How an errand ended.
 *
 * @param good whether nothing is wrong with what it looked at
 * @param words in a sentence
 * @param told all it has to tell, in order
 * @param trouble what went wrong beside it, if anything did
 */
record Ending(boolean good, String words, List<Told> told, Optional<Trouble> trouble) {

  /** How a line weighs. */
  enum Weight {
    /** A fact: a file, a number. */
    FACT,
    /** A proof that held. */
    GOOD,
    /** Something somebody should look at. */
    OPEN,
    /** Something that is wrong. */
    WRONG
  }

  /** One line of what there is to tell. */
  record Told(Weight weight, String words) {}

  /** Copies the lines. */
  Ending {
    told = List.copyOf(told);
  }

  /** One without a trouble. */
  Ending(boolean good, String words, List<Told> told) {
    this(good, words, told, Optional.empty());
  }

  /** The same with one line more, at the top. */
  Ending with(Weight weight, String line, Optional<Trouble> instead) {
    List<Told> more = new ArrayList<>(List.of(new Told(weight, line)));
    more.addAll(told);
    return new Ending(good, words, more, instead);
  }

  /** Collects the lines of an ending. */
  static final class Lines {
    private final List<Told> all = new ArrayList<>();

    Lines fact(String words) {
      return add(Weight.FACT, words);
    }

    Lines good(String words) {
      return add(Weight.GOOD, words);
    }

    Lines open(String words) {
      return add(Weight.OPEN, words);
    }

    Lines wrong(String words) {
      return add(Weight.WRONG, words);
    }

    private Lines add(Weight weight, String words) {
      all.add(new Told(weight, words));
      return this;
    }

    List<Told> all() {
      return all;
    }
  }
}
