package lanewarden.chronograph;

import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import lanewarden.quantity.QuantityException;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;
import lanewarden.written.Section;
import lanewarden.written.TomlPage;
import lanewarden.written.WrittenRefused;
import lanewarden.written.WrittenText;

/** Reads the TOML file of a sentence profile, strictly: one fault and the file is refused whole. */
final class WrittenProfile {
  private static final Map<String, PortSettings.Parity> PARITIES =
      new TreeMap<>(
          Map.of(
              "none", PortSettings.Parity.NONE,
              "odd", PortSettings.Parity.ODD,
              "even", PortSettings.Parity.EVEN,
              "mark", PortSettings.Parity.MARK,
              "space", PortSettings.Parity.SPACE));
  private static final Map<String, PortSettings.Flow> FLOWS =
      new TreeMap<>(
          Map.of(
              "none", PortSettings.Flow.NONE,
              "rts/cts", PortSettings.Flow.RTS_CTS,
              "xon/xoff", PortSettings.Flow.XON_XOFF));
  private static final int LONGEST_TERMINATOR = 4;

  private final TomlPage page;

  private WrittenProfile(TomlPage page) {
    this.page = page;
  }

  static SentenceProfile read(String file, byte[] utf8) throws WrittenRefused {
    TomlPage page = TomlPage.read(file, utf8);
    WrittenProfile written = new WrittenProfile(page);
    Optional<SentenceProfile> profile = written.profile(WrittenText.of(file, utf8));
    page.refuseIfFaulty();
    return profile.orElseThrow(
        () -> new IllegalStateException(file + ": incomplete, but without a fault"));
  }

  private Optional<SentenceProfile> profile(String text) {
    Section root = page.root();
    root.whole("format", 1, 1);
    Optional<String> name = root.text("name");
    Optional<PortSettings> port = root.section("port").flatMap(WrittenProfile::port);
    Optional<LineRule> line = root.section("line").flatMap(WrittenProfile::line);
    Map<String, SpeedUnit> units = units(root);
    Optional<Section> sentence = root.section("sentence");
    Optional<SentenceForm> form =
        sentence.flatMap(section -> new WrittenSentence(root, section, units).form());
    Duration apart =
        Duration.ofMillis(
            sentence.map(s -> s.optionalWhole("apart_ms", 1, 60_000).orElse(0)).orElse(0));
    sentence.ifPresent(section -> repeatsAreTold(section, form, apart));
    sentence.ifPresent(Section::closed);
    // The template can only be tried on a profile that is sound so far
    boolean sound = !page.faulty();
    Optional<SimulatedLine> simulated =
        root.has("simulator")
            ? root.section("simulator").flatMap(s -> simulated(s, sound ? form : Optional.empty()))
            : Optional.empty();
    root.closed();
    if (name.isEmpty() || port.isEmpty() || line.isEmpty() || form.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new SentenceProfile(
            name.get(), port.get(), line.get(), form.get(), apart, simulated, text));
  }

  private static void repeatsAreTold(Section section, Optional<SentenceForm> form, Duration apart) {
    boolean numbered = form.map(f -> f.pattern().groups().contains("sequence")).orElse(true);
    if (!numbered && apart.isZero() && !section.has("apart_ms")) {
      section.fault(
          "apart_ms",
          "the least time between two arrows, because the lines have no sequence number",
          "nothing",
          "add apart_ms = 1000, so that a line sent twice counts once");
    }
  }

  private static Optional<PortSettings> port(Section section) {
    OptionalInt baud = section.whole("baud", 50, 4_000_000);
    OptionalInt dataBits = section.whole("data_bits", 5, 8);
    Optional<PortSettings.Parity> parity = section.choice("parity", PARITIES);
    OptionalInt stopBits = section.whole("stop_bits", 1, 2);
    Optional<PortSettings.Flow> flow = section.choice("flow", FLOWS);
    section.closed();
    if (baud.isEmpty()
        || dataBits.isEmpty()
        || parity.isEmpty()
        || stopBits.isEmpty()
        || flow.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new PortSettings(
            baud.getAsInt(), dataBits.getAsInt(), parity.get(), stopBits.getAsInt(), flow.get()));
  }

  private static Optional<LineRule> line(Section section) {
    Optional<RawBytes> terminator =
        section.value("terminator", "the bytes that end a line", WrittenProfile::terminator);
    OptionalInt longest = section.whole("longest", 1, 1_000);
    OptionalInt silence = section.whole("silence_ms", 10, 60_000);
    OptionalInt quiet = section.whole("quiet_ms", 10, 60_000);
    section.closed();
    if (terminator.isEmpty() || longest.isEmpty() || silence.isEmpty() || quiet.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new LineRule(
            terminator.get(),
            longest.getAsInt(),
            Duration.ofMillis(silence.getAsInt()),
            Duration.ofMillis(quiet.getAsInt())));
  }

  private static RawBytes terminator(String text) {
    if (text.isEmpty()
        || text.length() > LONGEST_TERMINATOR
        || text.chars().anyMatch(c -> c > 127)) {
      throw new IllegalArgumentException(
          "write 1 to " + LONGEST_TERMINATOR + " ASCII characters, usually \"\\r\\n\" or \"\\n\"");
    }
    return RawBytes.ofText(text);
  }

  private static Map<String, SpeedUnit> units(Section root) {
    Map<String, SpeedUnit> units = new LinkedHashMap<>();
    for (Section section : root.sections("unit")) {
      Optional<String> word = section.text("word");
      Optional<SpeedUnit> means =
          section.value("means", "\"ft/s\" or \"m/s\"", WrittenProfile::unit);
      section.closed();
      if (word.isPresent() && means.isPresent() && units.put(word.get(), means.get()) != null) {
        section.fault("word", "each word once", "\"" + word.get() + "\" again", "take one out");
      }
    }
    return units;
  }

  /** Reads a unit of speed by its symbol. */
  static SpeedUnit unit(String symbol) {
    for (SpeedUnit unit : SpeedUnit.values()) {
      if (unit.symbol().equals(symbol)) {
        return unit;
      }
    }
    throw new QuantityException("\"ft/s\" or \"m/s\"", "\"" + symbol + "\"", "take one of them");
  }

  private static Optional<SimulatedLine> simulated(Section section, Optional<SentenceForm> form) {
    // Read as plain text first, so that the key counts as known even where it cannot be tried
    Optional<String> template = section.text("line");
    Optional<SimulatedLine> line =
        form.isEmpty() || template.isEmpty()
            ? Optional.empty()
            : section.value(
                "line",
                "a line that the profile's own pattern reads",
                text -> SimulatedLine.of(text, form.get()));
    section.closed();
    return line;
  }

  /** Reads a range from the keys {@code least} and {@code most}. */
  static Optional<SpeedRange> range(Section section) {
    Optional<Speed> least = section.value("least", "a speed such as \"60 ft/s\"", Speed::parse);
    Optional<Speed> most = section.value("most", "a speed such as \"500 ft/s\"", Speed::parse);
    if (least.isEmpty() || most.isEmpty()) {
      return Optional.empty();
    }
    return section.value("most", "a speed", text -> new SpeedRange(least.get(), Speed.parse(text)));
  }
}
