package lanewarden.rules;

import java.util.ArrayList;
import java.util.List;
import lanewarden.quantity.Speed;

/**
 * The speed clause of a division: the limit, what is allowed above it, the shots, how they decide.
 *
 * @param limit more than zero; its unit governs
 * @param tolerance a speed in it has the limit's unit
 * @param rechecks new checks allowed after a fail, zero or more
 */
public record SpeedRule(
    Speed limit, Tolerance tolerance, ShotPlan shots, Decision decision, int rechecks) {

  /**
   * @throws IllegalArgumentException if the parts contradict each other
   */
  public SpeedRule {
    if (limit.value().signum() <= 0) {
      throw new IllegalArgumentException("a limit of " + limit + " lets nobody pass");
    }
    if (tolerance instanceof Tolerance.Absolute absolute
        && absolute.speed().unit() != limit.unit()) {
      throw new IllegalArgumentException(
          "the tolerance " + absolute.speed() + " is in another unit than the limit " + limit);
    }
    if (decision instanceof Decision.WithinCount k && k.needed() > shots.counted()) {
      throw new IllegalArgumentException(
          k.needed() + " of " + shots.counted() + " readings can never be within");
    }
    if (rechecks < 0) {
      throw new IllegalArgumentException("there cannot be " + rechecks + " re-checks");
    }
  }

  /** Limit plus tolerance, exact, in the governing unit: a speed equal to it is within. */
  public Speed allowed() {
    return tolerance.above(limit);
  }

  /**
   * The verdict on the shots of one check. All arithmetic is exact.
   *
   * <p>It falls at the first shot that leaves nothing open: when every completion by readings of
   * whatever speed has the same outcome, when one void too many was shot, or when the shots left
   * cannot bring a decision. Shots listed after that one do not change it. To void a reading that
   * was taken earlier, judge the list anew with {@link Shot.Voided} in its place.
   *
   * @param taken in the order taken, void ones included
   */
  public Verdict judge(List<Shot> taken) {
    AllowedSpeed bound = new AllowedSpeed(limit, tolerance);
    List<Speed> readings = new ArrayList<>();
    int used = 0;
    Verdict verdict = verdict(readings, used, bound);
    for (Shot shot : taken) {
      if (verdict.ends()) {
        return verdict;
      }
      used++;
      if (shot instanceof Shot.Read read) {
        readings.add(read.speed());
      }
      verdict = verdict(readings, used, bound);
    }
    return verdict;
  }

  private Verdict verdict(List<Speed> readings, int used, AllowedSpeed bound) {
    Verdict verdict = decide(readings, bound);
    if (!(verdict instanceof Verdict.NotDecided open
        && open.missing() instanceof Missing.MoreReadings more)) {
      return verdict;
    }
    int voided = used - readings.size();
    int left = shots.allowed() - used;
    if (voided > shots.voids()) {
      return new Verdict.NotDecided(
          new Missing.VoidsSpent(
              Wording.count(voided, "void reading") + ", " + shots.voids() + " forgiven"));
    }
    if (more.atLeast() > left) {
      return new Verdict.NotDecided(
          new Missing.ShotsSpent(
              Wording.count(left, "shot")
                  + " left of "
                  + shots.allowed()
                  + ", "
                  + more.words()
                  + " needed"));
    }
    return verdict;
  }

  private Verdict decide(List<Speed> readings, AllowedSpeed bound) {
    if (shots.counted() > 1 || readings.isEmpty()) {
      return decision.on(readings, shots.counted(), bound);
    }
    // Of a single reading the mean, the median and the highest are all the same thing.
    Speed only = readings.get(0);
    return bound.verdict(bound.admits(only), "reading " + Wording.reading(only, bound.speed()));
  }

  /** The whole clause in plain English sentences, made from the rule itself. */
  public String inWords() {
    String speed = "At most " + tolerance.inWords(limit);
    if (!(tolerance instanceof Tolerance.None)) {
      speed += " (" + Wording.plain(allowed()) + ")";
    }
    String deciding =
        shots.counted() == 1 ? "One reading decides." : decision.inWords(shots.counted());
    String after =
        switch (rechecks) {
          case 0 -> "No re-check after a fail.";
          case 1 -> "After a fail, 1 re-check is allowed.";
          default -> "After a fail, " + rechecks + " re-checks are allowed.";
        };
    return String.join(" ", speed + ".", deciding, shots.inWords(), after);
  }
}
