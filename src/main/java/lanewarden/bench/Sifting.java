package lanewarden.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanewarden.bow.Arrow;
import lanewarden.bow.BowLimit;
import lanewarden.metrology.StrayReadings;
import lanewarden.quantity.Percent;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;

/**
 * Which shots of a series count, and why the others do not. None is thrown away: what is left out
 * is told beside what counts.
 *
 * @param counted in the order of the file
 * @param leftOut in the order of the file
 */
record Sifting(List<PracticeShot> counted, List<LeftOut> leftOut) {
  /**
   * Common practice: shots of one arrow lie within a few feet a second, a misread far outside. The
   * gap is three times what a bow's rating allows all its shots together (2 ft/s, ASTM F1544-04).
   */
  private static final StrayReadings STRAYS = new StrayReadings(3.5, Percent.parse("2 %"));

  static Sifting of(Series series) {
    List<LeftOut> leftOut = new ArrayList<>();
    List<PracticeShot> possible = new ArrayList<>();
    for (PracticeShot shot : series.shots()) {
      Optional<Sentence> barred = barred(series, shot);
      if (barred.isPresent()) {
        leftOut.add(new LeftOut(shot, barred.get()));
      } else {
        possible.add(shot);
      }
    }
    List<PracticeShot> counted = new ArrayList<>(possible);
    List<Speed> speeds = possible.stream().map(PracticeShot::speed).toList();
    for (StrayReadings.Stray stray : STRAYS.in(speeds)) {
      PracticeShot shot = possible.get(stray.index());
      if (shot.word() != PracticeShot.Word.GOOD) {
        counted.remove(shot);
        leftOut.add(new LeftOut(shot, stray.words()));
      }
    }
    leftOut.sort((a, b) -> Integer.compare(a.shot().line(), b.shot().line()));
    return new Sifting(List.copyOf(counted), List.copyOf(leftOut));
  }

  private static Optional<Sentence> barred(Series series, PracticeShot shot) {
    if (shot.word() == PracticeShot.Word.MISREAD) {
      return Optional.of(
          shot.remark().isEmpty()
              ? Sentence.of(Told.MISREAD)
              : Sentence.of(Told.MISREAD_BECAUSE, shot.remark()));
    }
    Arrow arrow = new Arrow(series.mass());
    Optional<BowLimit> bow = series.bow().limit();
    return bow.filter(limit -> limit.isImpossible(shot.speed(), arrow))
        .map(limit -> limit.sentence(shot.speed(), arrow));
  }
}
