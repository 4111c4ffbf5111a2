package lanewarden.station;

import java.util.ArrayList;
import java.util.List;

/** A station's settings as they may be handed on: without names, paths and addresses. */
final class SettingsTold {

  private SettingsTold() {}

  static List<String> inLines(StationSettings settings) {
    List<String> lines = new ArrayList<>();
    lines.add("instrument: " + settings.kind().word());
    lines.add("port: " + (settings.port().isEmpty() ? "none" : "named"));
    lines.add("signs out after: " + settings.signOutText());
    lines.add("place: " + stated(settings.place().isPresent()));
    lines.add("accuracy: " + stated(settings.accuracy().isPresent()));
    lines.add(
        "second instrument: "
            + settings
                .second()
                .map(
                    second ->
                        "agrees within "
                            + second.agreement().tolerance()
                            + ", in "
                            + second.within().toMillis()
                            + " ms")
                .orElse("none"));
    lines.add("verification: " + settings.verification().map(SettingsTold::plan).orElse("none"));
    lines.add("time-stamps: " + (settings.timeStamp().isPresent() ? "asked for" : "none"));
    return lines;
  }

  private static String stated(boolean stated) {
    return stated ? "stated" : "not stated";
  }

  private static String plan(VerificationPlan plan) {
    return (plan.beforeOpening() ? "before opening, " : "")
        + (plan.every().isPresent() ? "every " + plan.every().getAsInt() + ", " : "")
        + (plan.atEnd() ? "at the end, " : "")
        + plan.shots()
        + " shots, bias at most "
        + plan.mostBias()
        + ", spread at most "
        + plan.mostSpread()
        + (plan.bow().isPresent() ? ", check bow" : ", second instrument");
  }
}
