package lanewarden.kiosk.instrument;

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
   */
  public record Charts(InstrumentChart chart, Said single, Said average) {}

  /**
   * What a chart says.
   *
   * @param sign its shape
   * @param words which shots are outside and between what limits the others are
   */
  public record Said(Sign sign, String words) {}
}
