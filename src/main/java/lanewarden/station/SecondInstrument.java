package lanewarden.station;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.Optional;
import java.util.OptionalInt;
import lanewarden.metrology.Deviation;
import lanewarden.metrology.PairAgreement;
import lanewarden.quantity.QuantityException;
import lanewarden.written.Section;

/**
 * The table {@code [second]} of the station's settings: an instrument behind the first through
 * which every arrow passes too.
 *
 * @param profile file name of its sentence profile, in the event folder
 * @param kind where its readings come from: the same as the first's, since a simulated one confirms
 *     nothing
 * @param port path or name of its serial port; empty without one
 * @param agreement how far the two may differ
 * @param within how long after the one the other's reading may come
 */
public record SecondInstrument(
    String profile,
    StationSettings.Kind kind,
    String port,
    PairAgreement agreement,
    Duration within) {
  static final String TABLE = "second";

  private static final String AGREE =
      "a share or a speed above zero, such as \"1 %\" or \"2 ft/s\"";
  private static final int LONGEST_MILLIS = 10_000;

  /**
   * The second instrument; empty if the settings have no such table, or a faulty one.
   *
   * @param firstKind empty if it is faulty
   * @param firstPort of the first instrument; empty if it has none
   */
  static Optional<SecondInstrument> read(
      Section root, Optional<StationSettings.Kind> firstKind, Optional<String> firstPort) {
    Optional<Section> table = root.has(TABLE) ? root.section(TABLE) : Optional.empty();
    return table.flatMap(section -> second(section, firstKind, firstPort));
  }

  private static Optional<SecondInstrument> second(
      Section section, Optional<StationSettings.Kind> firstKind, Optional<String> firstPort) {
    Optional<String> profile = StationSettings.profile(section);
    Optional<StationSettings.Kind> kind = StationSettings.kind(section);
    Optional<String> port = StationSettings.port(section, kind);
    Optional<Deviation> agree =
        section.value("agree", AGREE, text -> above(Bounds.deviation(text), text));
    OptionalInt within = section.whole("within_ms", 1, LONGEST_MILLIS);
    section.closed();
    if (kind.equals(Optional.of(StationSettings.Kind.TYPED))) {
      section.fault(
          "instrument",
          "an instrument on a line",
          "\"" + StationSettings.Kind.TYPED.word() + "\"",
          "nothing that is typed comes in time to confirm an arrow: take the section out");
    } else if (kind.isPresent() && firstKind.isPresent() && !kind.equals(firstKind)) {
      section.fault(
          "instrument",
          "the same as the first instrument's, \"" + firstKind.get().word() + "\"",
          "\"" + kind.get().word() + "\"",
          "a simulated instrument confirms no arrow: take two of a kind");
    }
    if (port.isPresent() && port.equals(firstPort)) {
      section.fault(
          "port",
          "another port than the first instrument's",
          "\"" + port.get() + "\"",
          "write the port of the second instrument; listen --ports shows which there are");
    }
    if (profile.isEmpty() || kind.isEmpty() || agree.isEmpty() || within.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new SecondInstrument(
            profile.get(),
            kind.get(),
            port.orElse(""),
            new PairAgreement(agree.get()),
            Duration.ofMillis(within.getAsInt())));
  }

  /** Two instruments that must say the very same never agree. */
  private static Deviation above(Deviation agreement, String text) {
    if (agreement.siAt(BigDecimal.ONE).signum() == 0) {
      throw new QuantityException(
          AGREE, "\"" + text + "\"", "allow what the arrow slows and what both may be off");
    }
    return agreement;
  }

  /** The table, so that {@link #read} gives an equal one back. */
  String toToml() {
    return "\n["
        + TABLE
        + "]\nprofile = "
        + StationSettings.quoted(profile)
        + "\ninstrument = "
        + StationSettings.quoted(kind.word())
        + "\n"
        + (port.isEmpty() ? "" : "port = " + StationSettings.quoted(port) + "\n")
        + "agree = "
        + StationSettings.quoted(agreement.tolerance().toString())
        + "\nwithin_ms = "
        + within.toMillis()
        + "\n";
  }
}
