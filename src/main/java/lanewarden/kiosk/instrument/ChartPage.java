package lanewarden.kiosk.instrument;

import java.util.List;
import java.util.Optional;
import lanewarden.kiosk.look.Sign;
import lanewarden.station.InstrumentChart;

/**
 * The control charts in the words of the screen.
 *
 * @param charts what is drawn; empty before two shots can be compared
 * @param note why nothing is drawn, or what the charts leave out; blank where there is neither
 */
public record ChartPage(Optional<Charts> charts, String note) {

  /**
   * Both charts.
   *
   * @param chart the figures
   * @param single what the single shots say
   * @param average what their average says
   * @param shots every shot that is drawn, the newest first
   */
  public record Charts(InstrumentChart chart, Said single, Said average, List<Shot> shots) {}

  /**
   * A shot that is drawn.
   *
   * @param sign whether it or its average is outside
   * @param figures its number, difference and average
   * @param words reading against reference, where it came from, and of which verification
   */
  public record Shot(Sign sign, String figures, String words) {}

  /**
   * What a chart says.
   *
   * @param sign its shape
   * @param words which shots are outside and between what limits the others are
   */
  public record Said(Sign sign, String words) {}
}
