package lanewarden.rules;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import lanewarden.metrology.OutlierTest;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;

/**
 * Which readings of a check an official is asked about.
 *
 * <p>A reading is looked at with every shot that was taken after it, as if the check had got no
 * farther, and what was found once holds on: a second misread beside the first would otherwise
 * withdraw the question, and a verdict would rest on both without anybody's word. Only a void, a
 * reading that was let count and other figures of the bow change what is found. Nothing is kept
 * from one question to the next. Owned by one thread.
 */
final class Inquiry {
  private final List<Shot> shots;
  private final Map<Integer, Doubt> found = new TreeMap<>();

  /**
   * @param shots in the order taken, void ones included
   */
  Inquiry(List<Shot> shots) {
    this.shots = shots;
  }

  /** What was found, one doubt a shot and the first of it, in the order of the shots. */
  List<Doubt> doubts() {
    return List.copyOf(found.values());
  }

  /**
   * Asks about readings farther than this from the one before that was not asked about; shots taken
   * later have no say in it.
   */
  void jumps(Speed most) {
    int before = -1;
    for (int i = 0; i < shots.size(); i++) {
      if (shots.get(i) instanceof Shot.Read read) {
        boolean jumped = before >= 0 && apart(speed(before), read.speed()).compareTo(most.si()) > 0;
        if (jumped && !read.kept()) {
          note(new Doubt(i, Doubt.Kind.JUMP, jumpInWords(i, before, most)));
        } else {
          before = i;
        }
      }
    }
  }

  private Sentence jumpInWords(int shot, int before, Speed most) {
    BigDecimal apart =
        apart(speed(before), speed(shot)).divide(most.unit().inSi(), 1, RoundingMode.HALF_EVEN);
    return Sentence.of(
        Because.JUMPED,
        shot + 1,
        speed(shot),
        Speed.of(apart, most.unit()),
        before + 1,
        speed(before),
        most);
  }

  private static BigDecimal apart(Speed one, Speed other) {
    return one.si().subtract(other.si()).abs();
  }

  private Speed speed(int shot) {
    return ((Shot.Read) shots.get(shot)).speed();
  }

  /**
   * Asks about readings that stand out, as the check stood after each of its shots: among all, and
   * among those that nobody had to let count, since one of these that is far off hides the next.
   */
  void outliers(OutlierTest test) {
    List<Integer> all = new ArrayList<>();
    List<Integer> unasked = new ArrayList<>();
    for (int i = 0; i < shots.size(); i++) {
      if (shots.get(i) instanceof Shot.Read read) {
        all.add(i);
        outlier(test, all, Sentence.of(Because.OTHERS, i + 1));
        if (!read.kept()) {
          unasked.add(i);
          if (unasked.size() < all.size()) {
            outlier(test, unasked, Sentence.of(Because.OTHERS_UNASKED, i + 1));
          }
        }
      }
    }
  }

  private void outlier(OutlierTest test, List<Integer> places, Sentence others) {
    if (test.of(places.stream().map(this::speed).toList()) instanceof OutlierTest.Tested tested) {
      tested
          .flagged()
          .map(places::get)
          .filter(shot -> shots.get(shot) instanceof Shot.Read read && !read.kept())
          .ifPresent(
              shot ->
                  note(
                      new Doubt(
                          shot, Doubt.Kind.OUTLIER, outlierInWords(test, shot, others, tested))));
    }
  }

  private Sentence outlierInWords(
      OutlierTest test, int shot, Sentence others, OutlierTest.Tested tested) {
    return Sentence.of(
        Because.STANDS_OUT,
        shot + 1,
        speed(shot),
        others,
        test.sentence(),
        thousandths(tested.statistic()),
        thousandths(tested.critical()));
  }

  /** As {@code %.3f} has it, in which earlier versions signed it. */
  private static BigDecimal thousandths(double figure) {
    return new BigDecimal(String.format(Locale.ROOT, "%.3f", figure));
  }

  private void note(Doubt doubt) {
    found.putIfAbsent(doubt.shot(), doubt);
  }
}
