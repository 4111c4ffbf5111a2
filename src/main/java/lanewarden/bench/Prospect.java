package lanewarden.bench;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import lanewarden.metrology.Chances;
import lanewarden.metrology.CurvePoint;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;
import lanewarden.rules.Division;
import lanewarden.rules.Missing;
import lanewarden.rules.RuleEffect;
import lanewarden.rules.SetUp;
import lanewarden.rules.Verdict;
import lanewarden.rules.Who;

/** What awaits a set-up in a division, before anybody shoots: no verdict, and no promise of one. */
public sealed interface Prospect {
  /** What nobody may make of it, in a sentence. */
  String NO_VERDICT = "A forecast, not a verdict.";

  /** In one fixed word or two. */
  String word();

  /** In a sentence or two. */
  Sentence inWords();

  /** A clause about bow and arrow keeps it out. */
  record NotAdmitted(Sentence clause) implements Prospect {
    @Override
    public String word() {
      return "not admitted";
    }

    @Override
    public Sentence inWords() {
      return Sentence.of(Foretold.NOT_ADMITTED, clause);
    }
  }

  /**
   * The rule asks for more than is known.
   *
   * @param figures of bow and arrow
   */
  record Lacking(Missing.SetUpFigures figures) implements Prospect {
    @Override
    public String word() {
      return "not known";
    }

    @Override
    public Sentence inWords() {
      return Sentence.of(Foretold.NOT_KNOWN, figures.row());
    }
  }

  /** It is admitted, and passes without a shot. */
  record Unlimited(Sentence why) implements Prospect {
    @Override
    public String word() {
      return "passes";
    }

    @Override
    public Sentence inWords() {
      return Sentence.of(Foretold.UNLIMITED, why);
    }
  }

  /** A limit holds, but nobody of the division is measured. */
  record Unmeasured() implements Prospect {
    @Override
    public String word() {
      return "not measured";
    }

    @Override
    public Sentence inWords() {
      return Sentence.of(Foretold.UNMEASURED);
    }
  }

  /**
   * It is admitted and will be measured.
   *
   * @param fastest speed that keeps the limit with this set-up
   * @param first how the first check ends
   * @param ending how it ends after the re-checks that the rule allows
   */
  record Measured(Speed fastest, Chances first, Chances ending) implements Prospect {
    @Override
    public String word() {
      return "measured";
    }

    @Override
    public Sentence inWords() {
      Sentence once = RuleEffect.often(first.within());
      return Math.abs(ending.within() - first.within()) > SEEN
          ? Sentence.of(Foretold.MEASURED_AGAIN, fastest, once, RuleEffect.often(ending.within()))
          : Sentence.of(Foretold.MEASURED, fastest, once);
    }

    /** Less cannot be told from the figures printed. */
    private static final double SEEN = 0.0005;
  }

  /**
   * What awaits it.
   *
   * @param speeds alike likely mean speeds of its arrows as the instrument reads them, m/s
   * @param supposed of archer and instrument
   */
  static Prospect of(
      Division division, SetUp setUp, List<Double> speeds, RuleEffect.Supposed supposed) {
    Verdict before =
        division.rule().judge(setUp, Set.copyOf(division.rule().conditions()), List.of());
    if (before instanceof Verdict.NotAdmitted barred) {
      return new NotAdmitted(barred.why());
    }
    if (before instanceof Verdict.Within free) {
      return new Unlimited(free.why());
    }
    if (before instanceof Verdict.NotDecided open
        && open.missing() instanceof Missing.SetUpFigures figures) {
      return new Lacking(figures);
    }
    Optional<RuleEffect> effect =
        division.coverage().who() == Who.NOT_MEASURED
            ? Optional.empty()
            : RuleEffect.of(division.rule(), setUp, supposed);
    return effect.<Prospect>map(e -> measured(e, speeds)).orElseGet(Unmeasured::new);
  }

  private static Measured measured(RuleEffect effect, List<Double> speeds) {
    List<CurvePoint> points = speeds.stream().map(effect::at).toList();
    return new Measured(
        effect.fastest(),
        mean(points.stream().map(CurvePoint::firstCheck).toList()),
        mean(points.stream().map(CurvePoint::ending).toList()));
  }

  private static Chances mean(List<Chances> chances) {
    return new Chances(
        chances.stream().mapToDouble(Chances::within).average().orElseThrow(),
        chances.stream().mapToDouble(Chances::over).average().orElseThrow());
  }
}
