package lanewarden.station;

import java.util.Optional;
import lanewarden.written.Section;

/**
 * The table {@code [time_stamp]} of the station's settings: who vouches for the time of a report.
 */
final class WrittenTimeStamp {
  private static final String TABLE = "time_stamp";
  private static final String URL = "url";
  private static final String FORM = "https?://[^\\s/]+\\S*";

  private WrittenTimeStamp() {}

  /** The authority's address; empty if the settings have no such table, or a faulty one. */
  static Optional<String> read(Section root) {
    Optional<Section> table = root.has(TABLE) ? root.section(TABLE) : Optional.empty();
    return table.flatMap(WrittenTimeStamp::url);
  }

  private static Optional<String> url(Section section) {
    Optional<String> url = section.text(URL);
    section.closed();
    if (url.isPresent() && !url.get().matches(FORM)) {
      section.fault(
          URL,
          "the address of a time-stamp authority (RFC 3161)",
          "\"" + url.get() + "\"",
          "write it with http:// or https:// in front");
    }
    return url;
  }

  static String toToml(String url) {
    return "# Asked for a time-stamp of every sealed report; it sees a hash and nothing else.\n["
        + TABLE
        + "]\n"
        + URL
        + " = "
        + StationSettings.quoted(url)
        + "\n";
  }
}
