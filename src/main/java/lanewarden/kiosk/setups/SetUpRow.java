package lanewarden.kiosk.setups;

import java.util.List;
import java.util.stream.IntStream;
import lanewarden.bench.ComparisonSheet;
import lanewarden.bench.LeftOut;
import lanewarden.bench.PracticeShot;
import lanewarden.bench.Series;
import lanewarden.bench.Showing;

/**
 * A set-up in the list.
 *
 * @param bow its name
 * @param arrow its name
 * @param line its figures
 * @param shots in the order in which they were shot
 * @param leftOut those of them that do not count
 */
record SetUpRow(
    String bow,
    String arrow,
    ComparisonSheet.Line line,
    List<PracticeShot> shots,
    List<PracticeShot> leftOut) {

  /** Every set-up of a comparison, from the fastest to the slowest. */
  static List<SetUpRow> of(ComparisonSheet sheet) {
    List<Showing> showings = sheet.comparison().showings();
    List<ComparisonSheet.Line> lines = sheet.lines();
    return IntStream.range(0, lines.size())
        .mapToObj(i -> of(showings.get(i), lines.get(i)))
        .toList();
  }

  private static SetUpRow of(Showing showing, ComparisonSheet.Line line) {
    Series series = showing.series();
    return new SetUpRow(
        series.bow().label(),
        series.arrow(),
        line,
        series.shots(),
        showing.leftOut().stream().map(LeftOut::shot).toList());
  }

  /** Whether it is the same bow and arrow. */
  boolean isSame(SetUpRow other) {
    return bow.equals(other.bow) && arrow.equals(other.arrow);
  }
}
