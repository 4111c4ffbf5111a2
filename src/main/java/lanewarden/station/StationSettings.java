package lanewarden.station;

import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lanewarden.journal.Place;
import lanewarden.metrology.ReadingUncertainty;
import lanewarden.written.Section;
import lanewarden.written.TomlPage;
import lanewarden.written.WrittenRefused;

/**
 * What a station is told in {@code station.toml}.
 *
 * @param station the station's name, which every entry of its ledger carries
 * @param profile file name of the sentence profile, in the event folder
 * @param kind where readings come from
 * @param port path or name of the serial port; empty without one
 * @param accuracy what is known of the instrument's errors, if anything is
 * @param place where the instrument stands, if that is said
 * @param second an instrument behind the first, if there is one
 * @param verification when and how the instrument is verified, if it is
 * @param timeStamp address of an authority that vouches for the time of sealed reports, if one does
 * @param signOutAfter how long an official may do nothing and stay signed in, if there is a limit
 */
public record StationSettings(
    String station,
    String profile,
    Kind kind,
    String port,
    Optional<ReadingUncertainty> accuracy,
    Optional<Place> place,
    Optional<SecondInstrument> second,
    Optional<VerificationPlan> verification,
    Optional<String> timeStamp,
    Optional<Duration> signOutAfter) {

  /** One instrument of which nothing more is known, and that nobody verifies. */
  public StationSettings(String station, String profile, Kind kind, String port) {
    this(
        station,
        profile,
        kind,
        port,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  /** Where readings come from. */
  public enum Kind {
    /** An instrument on a serial port. */
    SERIAL("serial"),
    /** An instrument on no line: every reading is typed in from its display. */
    TYPED("typed"),
    /** The built-in simulator: for practice only. */
    SIMULATOR("simulator");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** The word in the file. */
    public String word() {
      return word;
    }
  }

  private static final Pattern MINUTES = Pattern.compile("([0-9]{1,3}) ?min");
  private static final long LONGEST = 600;

  private static final Map<String, Kind> KINDS =
      new TreeMap<>(
          Map.of(
              Kind.SERIAL.word(), Kind.SERIAL,
              Kind.TYPED.word(), Kind.TYPED,
              Kind.SIMULATOR.word(), Kind.SIMULATOR));

  /**
   * Reads the settings.
   *
   * @throws WrittenRefused if anything is wrong in the file, with every fault
   */
  public static StationSettings read(String file, byte[] bytes) throws WrittenRefused {
    TomlPage page = TomlPage.read(file, bytes);
    Section root = page.root();
    root.whole("format", 1, 1);
    Optional<String> station = root.text("station");
    Optional<String> profile = profile(root);
    Optional<Kind> kind = kind(root);
    Optional<String> port = port(root, kind);
    Optional<Duration> signOutAfter =
        root.optionalValue(
            "sign_out_after", "a time from 1 min to 600 min", StationSettings::minutes);
    Optional<Place> place = WrittenPlace.read(root);
    Optional<ReadingUncertainty> accuracy = WrittenAccuracy.read(root, place);
    Optional<SecondInstrument> second = SecondInstrument.read(root, kind, port);
    Optional<VerificationPlan> verification =
        root.has(VerificationPlan.TABLE)
            ? root.section(VerificationPlan.TABLE).flatMap(VerificationPlan::read)
            : Optional.empty();
    Optional<String> timeStamp = WrittenTimeStamp.read(root);
    root.closed();
    page.refuseIfFaulty();
    return new StationSettings(
        station.orElseThrow(),
        profile.orElseThrow(),
        kind.orElseThrow(),
        port.orElse(""),
        accuracy,
        place,
        second,
        verification,
        timeStamp,
        signOutAfter);
  }

  /** The name of a profile beside the settings. */
  static Optional<String> profile(Section section) {
    Optional<String> profile = section.text("profile");
    if (profile.isPresent() && !profile.get().matches("[\\w][\\w.-]*")) {
      section.fault(
          "profile",
          "the name of a file in the event folder",
          "\"" + profile.get() + "\"",
          "copy the profile into the event folder and write its name without a path");
    }
    return profile;
  }

  /** Where an instrument's readings come from. */
  static Optional<Kind> kind(Section section) {
    return section.choice("instrument", KINDS);
  }

  /**
   * The port of an instrument of this kind; one that only a serial instrument has use for is let
   * be.
   */
  static Optional<String> port(Section section, Optional<Kind> kind) {
    if (kind.equals(Optional.of(Kind.SERIAL))) {
      return section.text("port");
    }
    section.optionalText("port");
    return Optional.empty();
  }

  private static Duration minutes(String text) {
    Matcher form = MINUTES.matcher(text);
    long minutes = form.matches() ? Long.parseLong(form.group(1)) : 0;
    if (minutes < 1 || minutes > LONGEST) {
      throw new IllegalArgumentException("no such time: " + text);
    }
    return Duration.ofMinutes(minutes);
  }

  /** How long an official may do nothing and stay signed in, as the file says it. */
  String signOutText() {
    return signOutAfter.map(time -> time.toMinutes() + " min").orElse("any time");
  }

  /** The file's text: {@link #read} gives equal settings back. */
  public String toToml() {
    return "format = 1\n"
        + "# Every entry of this station's ledger carries this name.\n"
        + "station = "
        + quoted(station)
        + "\n"
        + "# The sentence profile of the instrument, a file in this folder.\n"
        + "profile = "
        + quoted(profile)
        + "\n"
        + "# serial: an instrument on a port. typed: readings are typed in. simulator: practice only.\n"
        + "instrument = "
        + quoted(kind.word())
        + "\n"
        + (kind == Kind.SERIAL ? "port = " + quoted(port) + "\n" : "")
        + (signOutAfter.isPresent() ? "sign_out_after = " + quoted(signOutText()) + "\n" : "")
        + place.map(WrittenPlace::toToml).orElse("")
        + accuracy.map(AccuracyText::of).orElse("")
        + second.map(SecondInstrument::toToml).orElse("")
        + verification.map(VerificationPlan::toToml).orElse("")
        + timeStamp.map(WrittenTimeStamp::toToml).orElse("");
  }

  static String quoted(String text) {
    return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
  }
}
