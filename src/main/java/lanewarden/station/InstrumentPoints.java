package lanewarden.station;

import java.util.List;
import java.util.Optional;
import lanewarden.chronograph.PortLook;
import lanewarden.chronograph.SerialInstrument;
import lanewarden.station.SelfCheck.Point;
import lanewarden.station.SelfCheck.State;
import lanewarden.station.SelfCheck.Subject;

/** What a check-up finds about the instrument: its port, and what the settings say of it. */
final class InstrumentPoints {

  private InstrumentPoints() {}

  /** The port and the settings; without readable settings nothing can be told of either. */
  static List<Point> of(EventFolder folder, Optional<Station> open) {
    try {
      StationPapers papers = folder.papers();
      return List.of(port(papers, open), instrument(papers));
    } catch (StationException e) {
      return List.of(Point.unread(Subject.INSTRUMENT, "The settings or the profile", e.trouble()));
    }
  }

  private static Point port(StationPapers papers, Optional<Station> open) {
    return switch (papers.settings().kind()) {
      case TYPED -> Point.good(Subject.PORT, "None is needed: readings are typed in.", "");
      case SIMULATOR -> Point.good(Subject.PORT, "None is needed: the simulator shoots.", "");
      case SERIAL -> open.map(InstrumentPoints::heard).orElseGet(() -> looked(papers));
    };
  }

  /** The open line has the port, and hears whether it is there. */
  private static Point heard(Station station) {
    LineView now = station.view();
    WireView wire = station.wire();
    boolean misfit = wire.readings() + wire.refused() > 0 && !wire.misfits().isEmpty();
    if (now.link() == LineView.Link.UP && misfit) {
      return new Point(
          Subject.PORT,
          State.ATTENTION,
          "It is open, but what comes does not fit the profile.",
          now.linkWords(),
          "Look at what comes over the wire, on the screen of the instrument.");
    }
    return now.link() == LineView.Link.UP
        ? Point.good(Subject.PORT, "It is open, and the line listens.", now.linkWords())
        : new Point(
            Subject.PORT,
            State.WRONG,
            "The instrument is not heard.",
            now.linkWords(),
            "Look at plug, power and cable; the link comes back by itself. If the port has another"
                + " name now, leave the line and choose it on the start screen.");
  }

  private static Point looked(StationPapers papers) {
    String port = papers.settings().port();
    PortLook first = PortLook.at(port, papers.profile());
    if (first.state() == PortLook.State.READABLE && papers.settings().second().isPresent()) {
      PortLook second =
          PortLook.at(papers.settings().second().get().port(), papers.second().orElseThrow());
      return point(second);
    }
    return point(first);
  }

  private static Point point(PortLook look) {
    return switch (look.state()) {
      case READABLE ->
          Point.good(
              Subject.PORT,
              "It is there and can be read. Whether the instrument speaks as its profile says,"
                  + " the first shot shows.",
              look.words());
      case IN_USE ->
          new Point(
              Subject.PORT,
              State.ATTENTION,
              "It is there, and a program has it open.",
              look.words(),
              "Nothing, if that is the open line of this event; else close the other program.");
      case UNREADABLE ->
          new Point(
              Subject.PORT,
              State.WRONG,
              "It is not there, or cannot be read.",
              look.words(),
              "The ports that are here now: "
                  + String.join(", ", here())
                  + ". Plug the instrument in, or choose its port on the start screen.");
    };
  }

  private static List<String> here() {
    List<String> ports = SerialInstrument.ports();
    return ports.isEmpty() ? List.of("none") : ports;
  }

  private static Point instrument(StationPapers papers) {
    StationSettings settings = papers.settings();
    if (settings.kind() == StationSettings.Kind.SIMULATOR) {
      return new Point(
          Subject.INSTRUMENT,
          State.ATTENTION,
          "It is the simulator: nothing that it says was shot.",
          "",
          "For an event that counts, write the kind of the instrument and its port into the"
              + " settings.");
    }
    if (settings.kind() == StationSettings.Kind.SERIAL && settings.accuracy().isEmpty()) {
      return new Point(
          Subject.INSTRUMENT,
          State.ATTENTION,
          "Settings and profile can be read. Nothing is stated of its accuracy, so no reading"
              + " carries its uncertainty.",
          papers.profile().name(),
          "State in the settings what you know of it; config/station.toml shows every key.");
    }
    return Point.good(
        Subject.INSTRUMENT,
        "Settings and profile can be read."
            + (settings.second().isPresent() ? " Two instruments stand in series." : ""),
        papers.profile().name());
  }
}
