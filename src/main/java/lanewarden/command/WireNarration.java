package lanewarden.command;

import java.util.ArrayList;
import java.util.List;
import lanewarden.audit.wording.Wording;
import lanewarden.station.Listening;
import lanewarden.station.Overheard;
import lanewarden.station.WireView;

/** Tells what an instrument said, and whether it fits the profile that it is read by. */
final class WireNarration {

  /** A terminal need not scroll for it. */
  private static final int SHOWN = 20;

  private WireNarration() {}

  /** What it said last, the newest at the end, and the judgement. */
  static List<Notice> of(WireView wire) {
    List<Notice> told = new ArrayList<>();
    int shown = Math.min(SHOWN, wire.newestFirst().size());
    for (int i = shown - 1; i >= 0; i--) {
      told.add(heard(wire.newestFirst().get(i)));
    }
    wire.misfits().forEach(misfit -> told.add(misfit(misfit)));
    if (wire.misfits().isEmpty()) {
      told.add(
          Notice.of("trial", fits(wire))
              .with("readings", wire.readings())
              .with("refused", wire.refused()));
    }
    return told;
  }

  /** That nothing speaks against the profile. */
  static String fits(WireView wire) {
    return "The profile fits: " + Wording.count(wire.readings(), "reading") + ", nothing amiss.";
  }

  private static Notice misfit(Listening.Misfit misfit) {
    return Notice.of("trial", misfit.key() + "  " + misfit.words()).with("key", misfit.key());
  }

  private static Notice heard(Overheard heard) {
    String words =
        Wording.time(heard.at())
            + "  "
            + heard.kind().word()
            + (heard.raw().isEmpty() ? "" : "  " + heard.raw())
            + heard.speed().map(speed -> "  " + speed).orElse("")
            + (heard.words().isEmpty() ? "" : "  " + heard.words());
    Notice told =
        Notice.of("heard", words)
            .with("at", heard.at().toString())
            .with("became", heard.kind().word())
            .with("raw", heard.raw());
    return heard.speed().map(speed -> told.with("speed", speed.toString())).orElse(told);
  }
}
