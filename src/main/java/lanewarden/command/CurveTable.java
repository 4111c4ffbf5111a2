package lanewarden.command;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import lanewarden.metrology.Chances;
import lanewarden.metrology.CurvePoint;
import lanewarden.station.RuleCurve;

/**
 * How checks end for archers of every true speed, re-checks included, in figures.
 *
 * @param curve what is shown
 */
record CurveTable(RuleCurve curve) {

  /** A terminal shows every so many points, a machine gets all. */
  private static final int STEP = 4;

  /** The lines of a table, its heading first. */
  List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add(
        String.format(
            Locale.ROOT,
            "%10s  %10s  %10s  %11s",
            "true " + curve.unit().symbol(),
            "% within",
            "% over",
            "% undecided"));
    for (int i = 0; i < curve.points().size(); i += STEP) {
      CurvePoint point = curve.points().get(i);
      Chances ending = point.ending();
      lines.add(
          String.format(
              Locale.ROOT,
              "%10.1f  %10.1f  %10.1f  %11.1f",
              speed(point),
              100 * ending.within(),
              100 * ending.over(),
              100 * ending.notDecided()));
    }
    return lines;
  }

  /** Every point, for machines. */
  List<Map<String, Object>> members() {
    List<Map<String, Object>> all = new ArrayList<>();
    for (CurvePoint point : curve.points()) {
      Map<String, Object> members = new LinkedHashMap<>();
      members.put("speed", speed(point));
      members.put("unit", curve.unit().symbol());
      members.put("within", point.ending().within());
      members.put("over", point.ending().over());
      members.put("notDecided", point.ending().notDecided());
      all.add(members);
    }
    return all;
  }

  private double speed(CurvePoint point) {
    return point.speed() / curve.unit().inSi().doubleValue();
  }
}
