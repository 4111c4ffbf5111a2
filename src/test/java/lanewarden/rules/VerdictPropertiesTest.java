package lanewarden.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.LongStream;
import lanewarden.quantity.Mass;
import lanewarden.quantity.MassUnit;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for every rule, set-up and row of shots, tried on seeded random ones. */
class VerdictPropertiesTest {
  private static final int TRIED = 250;

  static LongStream seeds() {
    return LongStream.rangeClosed(1, 40);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void fasterArrowNeverTurnsOverIntoWithin(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < TRIED; i++) {
      Trial trial = Trial.of(random);
      List<Shot> faster = new ArrayList<>(trial.shots());
      int which = random.nextInt(faster.size());
      if (faster.get(which) instanceof Shot.Read read) {
        faster.set(which, new Shot.Read(read.speed().plus(trial.written().speed(0, 200))));
      }
      if (trial.judge() instanceof Verdict.Over) {
        assertFalse(trial.judge(faster) instanceof Verdict.Within, () -> trial + " " + faster);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void addingToleranceNeverTurnsWithinIntoOver(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < TRIED; i++) {
      Trial trial = Trial.of(random);
      String percent = random.nextInt(5) + "." + random.nextInt(10) + " %";
      for (String more : List.of(percent, trial.written().speed(0, 200).toString())) {
        Rule none = trial.written().withTolerance("none");
        Rule milder = trial.written().withTolerance(more);
        if (trial.judge(none) instanceof Verdict.Within) {
          assertFalse(trial.judge(milder) instanceof Verdict.Over, () -> trial + " " + more);
        }
      }
    }
  }

  /** Not so with an energy limit: there a heavier arrow carries more. */
  @ParameterizedTest
  @MethodSource("seeds")
  void heavierArrowNeverTurnsWithinIntoAnythingWorseWhereNoEnergyIsLimited(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < TRIED; i++) {
      Trial trial = Trial.of(random);
      Mass arrow = trial.setUp().arrowMass();
      if (arrow != null && !trial.written().has("energy")) {
        if (trial.judge() instanceof Verdict.Within) {
          Verdict heavier = trial.judge(heavier(arrow, random));
          assertEquals("within", heavier.word(), trial::toString);
        }
      }
    }
  }

  /** Not so where only light arrows have a speed limit: a heavier one may escape it. */
  @ParameterizedTest
  @MethodSource("seeds")
  void heavierArrowNeverTurnsOverIntoWithinWhereAllArrowsAreLimited(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < TRIED; i++) {
      Trial trial = Trial.of(random);
      Mass arrow = trial.setUp().arrowMass();
      if (arrow != null && !trial.written().has("only-below")) {
        if (trial.judge() instanceof Verdict.Over) {
          Verdict heavier = trial.judge(heavier(arrow, random));
          assertNotEquals("within", heavier.word(), trial::toString);
        }
      }
    }
  }

  private static Mass heavier(Mass arrow, Random random) {
    return Mass.of(arrow.value().add(BigDecimal.valueOf(random.nextInt(1500), 1)), MassUnit.GRAIN);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void sameSpeedsInMetresGiveTheSameOutcomeAndBand(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < TRIED; i++) {
      Trial trial = Trial.of(random);
      List<Shot> inMetres = new ArrayList<>();
      for (Shot shot : trial.shots()) {
        inMetres.add(
            shot instanceof Shot.Read read
                ? new Shot.Read(Speed.of(read.speed().si(), SpeedUnit.METRES_PER_SECOND))
                : shot);
      }
      assertEquals(outcome(trial.judge()), outcome(trial.judge(inMetres)), trial::toString);
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void sameArrowInGramsGivesTheSameOutcomeAndBand(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < TRIED; i++) {
      Trial trial = Trial.of(random);
      Mass arrow = trial.setUp().arrowMass();
      if (arrow != null) {
        Mass inGrams = Mass.of(arrow.si().movePointRight(3), MassUnit.GRAM);
        assertEquals(outcome(trial.judge()), outcome(trial.judge(inGrams)), trial::toString);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void twoLimitsTogetherAreKeptWhereEachAloneIs(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < TRIED; i++) {
      Trial trial = Trial.of(random);
      Rule rule = trial.rule();
      if (rule.speed().isPresent() && rule.energy().isPresent()) {
        Rule slow = limitedBy(rule, rule.speed(), Optional.empty());
        Rule light = limitedBy(rule, Optional.empty(), rule.energy());
        List<String> alone = List.of(trial.judge(slow).word(), trial.judge(light).word());
        Verdict both = trial.judge();
        if (both instanceof Verdict.Within) {
          assertEquals(List.of("within", "within"), alone, trial::toString);
        } else if (both instanceof Verdict.Over) {
          assertTrue(alone.contains("over"), trial::toString);
        }
      }
    }
  }

  private static Rule limitedBy(
      Rule rule, Optional<SpeedLimit> speed, Optional<EnergyLimit> energy) {
    return new Rule(
        speed, energy, rule.equipment(), rule.shooting(), rule.aftermath(), rule.conditions());
  }

  /**
   * Of first within and of early decisions, order changes the moment and the reason, no more. Who
   * is asked about is told by the order: by the reading before, and by what had been read so far.
   */
  @ParameterizedTest
  @MethodSource("seeds")
  void orderOfTheCountedReadingsDoesNotMatter(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < TRIED; i++) {
      Trial trial = Trial.of(random);
      List<Shot> counted =
          new ArrayList<>(trial.shots().stream().filter(Shot.Read.class::isInstance).toList());
      boolean asks = trial.written().has("jump") || trial.written().has("outlier");
      if (counted.size() >= Cases.plan(trial.rule()).counted() && !asks) {
        counted = counted.subList(0, Cases.plan(trial.rule()).counted());
        List<Shot> shuffled = new ArrayList<>(counted);
        Collections.shuffle(shuffled, random);
        assertEquals(
            outcome(trial.judge(counted)), outcome(trial.judge(shuffled)), trial::toString);
      }
    }
  }

  /** Whatever is voided, and whenever: the readings that stand are looked at, all of them. */
  @ParameterizedTest
  @MethodSource("seeds")
  void whoIsOverByTheReadingsThatStandIsOverWhateverElseIsVoid(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < TRIED; i++) {
      Trial trial = Trial.of(random);
      List<Shot> voided = new ArrayList<>(trial.shots());
      voided.set(random.nextInt(voided.size()), new Shot.Voided());
      List<Shot> standing = voided.stream().filter(Shot.Read.class::isInstance).toList();
      Verdict without = trial.judge(standing);
      if (without instanceof Verdict.Over) {
        assertEquals(without, trial.judge(voided), () -> trial + " " + voided);
      }
    }
  }

  /** With bands, voids may use up the shots that a band would still need: over it stays. */
  @ParameterizedTest
  @MethodSource("seeds")
  void voidsChangeNoDecision(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < TRIED; i++) {
      Trial trial = Trial.of(random);
      List<Shot> withoutVoids = trial.shots().stream().filter(Shot.Read.class::isInstance).toList();
      Verdict verdict = trial.judge();
      Verdict without = trial.judge(withoutVoids);
      boolean decided = verdict instanceof Verdict.Within || verdict instanceof Verdict.Over;
      boolean waitsForBand = trial.written().has("bands") && without.takesShots();
      if (decided && !waitsForBand) {
        assertEquals(verdict, without, trial::toString);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void everyCheckEndsWithItsLastShotOrWaitsForFiguresOrTicks(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < TRIED; i++) {
      Trial trial = Trial.of(random);
      Verdict verdict = trial.judge();
      assertFalse(verdict.takesShots(), trial::toString);
      boolean waits =
          verdict instanceof Verdict.NotDecided open
              && (open.missing() instanceof Missing.SetUpFigures
                  || open.missing() instanceof Missing.Conditions
                  || open.missing() instanceof Missing.OddReadings);
      assertEquals(!waits, verdict.ends(), trial::toString);
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void endedCheckStaysAsItEnded(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < TRIED; i++) {
      Trial trial = Trial.of(random);
      // what is in doubt is told by all shots there are, and the line takes none after the end
      if (trial.written().has("jump") || trial.written().has("outlier")) {
        continue;
      }
      Set<String> all = new HashSet<>(trial.rule().conditions());
      Optional<Verdict> ended = Optional.empty();
      for (int shots = 0; shots <= trial.shots().size(); shots++) {
        Verdict verdict = trial.rule().judge(trial.setUp(), all, trial.shots().subList(0, shots));
        // what voids or shots ended may still turn out to be over by a reading taken after a void,
        // and counts the shots that were taken later
        ended
            .filter(first -> !spent(first))
            .ifPresent(first -> assertEquals(first, verdict, trial::toString));
        ended
            .filter(first -> spent(first) && !(verdict instanceof Verdict.Over))
            .ifPresent(
                first -> assertTrue(verdict.ends() && spent(verdict), () -> trial + " " + verdict));
        if (!verdict.takesShots()) {
          ended = Optional.of(verdict);
        }
      }
      assertTrue(ended.isPresent(), trial::toString);
    }
  }

  private static boolean spent(Verdict ended) {
    return ended instanceof Verdict.Over
        || (ended instanceof Verdict.NotDecided open
            && (open.missing() instanceof Missing.VoidsSpent
                || open.missing() instanceof Missing.ShotsSpent));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void tickingAConditionChangesNothingButTheWaitForIt(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < TRIED; i++) {
      Trial trial = Trial.of(random);
      Set<String> all = new HashSet<>(trial.rule().conditions());
      Verdict ticked = trial.rule().judge(trial.setUp(), all, trial.shots());
      Verdict verdict = trial.judge();
      boolean waits =
          verdict instanceof Verdict.NotDecided open
              && open.missing() instanceof Missing.Conditions;
      if (waits) {
        assertTrue(ticked.ends() && !(ticked instanceof Verdict.NotDecided), trial::toString);
      } else {
        assertEquals(ticked, verdict, trial::toString);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void sameCheckIsJudgedTheSameByTheSameRuleReadAgain(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < TRIED; i++) {
      Trial trial = Trial.of(random);
      Rule again = trial.written().rule();
      assertEquals(trial.rule(), again);
      assertEquals(trial.judge(), trial.judge(again), trial::toString);
      assertEquals(trial.rule().inWords(), again.inWords());
    }
  }

  /** What must not depend on units or order: the word, the band, and what is missing. */
  private static String outcome(Verdict verdict) {
    if (verdict instanceof Verdict.Over over) {
      return "over " + over.band().map(Band::written).orElse("");
    }
    return verdict instanceof Verdict.NotDecided open
        ? "not decided " + open.missing().getClass().getSimpleName()
        : verdict.word();
  }
}
