package lanewarden.station;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import lanewarden.chronograph.RawBytes;
import lanewarden.chronograph.Reading;
import lanewarden.chronograph.SentenceProfile;
import lanewarden.chronograph.Signal;
import lanewarden.chronograph.TypedEntry;
import lanewarden.journal.Fact;
import lanewarden.journal.Interpreter;
import lanewarden.journal.SecondReading;
import lanewarden.quantity.Speed;
import lanewarden.written.WrittenRefused;
import org.jspecify.annotations.Nullable;

/**
 * The station's papers as an opening of the line signed them, by which every reading is computed
 * anew from its bytes: sentence profiles and settings.
 *
 * <p>Older ledgers have no settings in their openings; what rests on them is not looked at there.
 * Immutable.
 */
public final class SignedPapers implements Interpreter.Interpretation {
  private final Fact.StationOpened signed;
  private final OpenedInstruments opened;
  private final SentenceProfile profile;
  private final Optional<SentenceProfile> second;
  private final Optional<StationPapers> papers;

  private SignedPapers(
      Fact.StationOpened signed,
      SentenceProfile profile,
      Optional<SentenceProfile> second,
      Optional<StationPapers> papers) {
    this.signed = signed;
    this.opened = new OpenedInstruments(signed.instrument(), profile, second, papers);
    this.profile = profile;
    this.second = second;
    this.papers = papers;
  }

  /** The papers of an opening; of unreadable ones, what is wrong with them. */
  public static Interpreter.Interpretation of(Fact.StationOpened opened) {
    try {
      SentenceProfile first = profile("profile", opened.profile());
      String secondText = opened.secondProfile();
      Optional<SentenceProfile> second =
          secondText == null
              ? Optional.empty()
              : Optional.of(profile("second profile", secondText));
      String settings = opened.settings();
      return new SignedPapers(
          opened,
          first,
          second,
          settings == null
              ? Optional.empty()
              : Optional.of(
                  new StationPapers(
                      StationSettings.read("settings", utf8(settings)), settings, first, second)));
    } catch (WrittenRefused e) {
      return new Unreadable(String.valueOf(e.getMessage()));
    }
  }

  private static SentenceProfile profile(String name, String text) throws WrittenRefused {
    return SentenceProfile.read(name, utf8(text));
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  /** Papers that were signed and cannot be read. */
  private record Unreadable(String why) implements Interpreter.Interpretation {
    @Override
    public Optional<String> fault() {
      return Optional.of(why);
    }

    @Override
    public List<String> against() {
      return List.of();
    }

    @Override
    public List<String> against(Fact.ReadingTaken taken) {
      return List.of();
    }

    @Override
    public List<String> against(Fact.VerificationShot shot) {
      return List.of();
    }

    @Override
    public List<String> against(Fact.LineRefused refused, Interpreter.Before before) {
      return List.of();
    }

    @Override
    public Optional<Interpreter.Heard> heard(String instrument, String source, String raw) {
      return Optional.empty();
    }

    @Override
    public Optional<String> says(Fact.LineRefused refused) {
      return Optional.empty();
    }

    @Override
    public Optional<String> otherwise(Fact.ReadingTaken taken) {
      return Optional.empty();
    }

    @Override
    public Optional<String> otherwise(Fact.VerificationShot shot) {
      return Optional.empty();
    }

    @Override
    public Optional<String> otherwise(Fact.LineRefused refused) {
      return Optional.empty();
    }
  }

  @Override
  public Optional<String> fault() {
    return Optional.empty();
  }

  @Override
  public List<String> against() {
    Optional<Fact.StationOpened> given =
        papers.map(known -> known.opening(signed.instrument(), signed.program()));
    List<String> against = new ArrayList<>();
    OpeningWorth.place(given, signed).ifPresent(against::add);
    OpeningWorth.budget(given, signed).ifPresent(against::add);
    return against;
  }

  @Override
  public List<String> against(Fact.ReadingTaken taken) {
    List<String> against = new ArrayList<>();
    Optional<Reading> reading = first(taken.source(), taken.raw(), taken.speed(), against);
    reading.ifPresent(
        read -> {
          if (!Objects.equals(read.sequence(), taken.line())) {
            against.add(
                "its bytes carry "
                    + numbered(read.sequence())
                    + ", signed is "
                    + numbered(taken.line()));
          }
          uncertainty(read, taken.uncertainty(), against);
        });
    opened.origin(taken.source(), taken.instrument(), taken.second(), against);
    if (!OpenedInstruments.isTyped(taken.source())) {
      second(taken.source(), taken.second(), against);
      apart(taken, against);
    }
    return against;
  }

  @Override
  public List<String> against(Fact.VerificationShot shot) {
    List<String> against = new ArrayList<>();
    first(shot.source(), shot.raw(), shot.speed(), against);
    SecondReading other = shot.second();
    if (other != null) {
      second(shot.source(), other, against);
    }
    opened.origin(shot.source(), shot.instrument(), other, against);
    return against;
  }

  @Override
  public List<String> against(Fact.LineRefused refused, Interpreter.Before before) {
    return opened.against(refused, before);
  }

  @Override
  public Optional<Interpreter.Heard> heard(String sender, String source, String raw) {
    return opened.heard(sender, source, raw);
  }

  @Override
  public Optional<String> says(Fact.LineRefused refused) {
    return opened.says(refused);
  }

  @Override
  public Optional<String> otherwise(Fact.ReadingTaken taken) {
    return otherwise(taken.source(), taken.raw(), taken.speed(), taken.second());
  }

  @Override
  public Optional<String> otherwise(Fact.VerificationShot shot) {
    return otherwise(shot.source(), shot.raw(), shot.speed(), shot.second());
  }

  @Override
  public Optional<String> otherwise(Fact.LineRefused refused) {
    return opened.otherwise(refused);
  }

  private Optional<String> otherwise(
      String source, String raw, Speed signed, @Nullable SecondReading other) {
    Optional<RawBytes> line = OpenedInstruments.decoded(raw);
    if (line.isEmpty()) {
      return Optional.empty();
    }
    Signal signal = signal(profile, source, line.get(), signed);
    if (signal instanceof Signal.Heard heard) {
      Speed speed = heard.reading().speed();
      return speed.equals(signed)
          ? disagreement(signed, other).map(why -> "no reading (instruments disagree)")
          : Optional.of(speed.toString());
    }
    return Optional.of("no reading" + (signal instanceof Signal.Refused no ? why(no) : ""));
  }

  private Optional<Reading> first(String source, String raw, Speed signed, List<String> against) {
    return reread(profile, source, raw, signed, "its bytes", against);
  }

  private void second(String source, @Nullable SecondReading other, List<String> against) {
    if (second.isPresent() != (other != null)) {
      against.add(
          second.isPresent()
              ? "every arrow passed two instruments, but what the second measured is not there"
              : "a second instrument is said to have measured it, but the line had only one");
    } else if (second.isPresent() && other != null) {
      reread(
          second.get(),
          source,
          other.raw(),
          other.speed(),
          "the bytes of the second instrument",
          against);
    }
  }

  private static Optional<Reading> reread(
      SentenceProfile by,
      String source,
      String raw,
      Speed signed,
      String bytes,
      List<String> against) {
    Optional<RawBytes> line = OpenedInstruments.decoded(raw);
    if (line.isEmpty()) {
      against.add(bytes + " are not base64");
      return Optional.empty();
    }
    Signal signal = signal(by, source, line.get(), signed);
    if (signal instanceof Signal.Heard heard) {
      if (!heard.reading().speed().equals(signed)) {
        against.add(bytes + " say " + heard.reading().speed());
      }
      return Optional.of(heard.reading());
    }
    against.add(bytes + " are no reading" + (signal instanceof Signal.Refused no ? why(no) : ""));
    return Optional.empty();
  }

  private static String why(Signal.Refused no) {
    return " (" + no.refusal().reason().word() + ")";
  }

  /** A typed number without a unit was read in the unit that the rule speaks; the signed one. */
  private static Signal signal(SentenceProfile by, String source, RawBytes line, Speed signed) {
    return OpenedInstruments.isTyped(source)
        ? new TypedEntry(by.plausible(), Clock.fixed(Instant.EPOCH, ZoneOffset.UTC))
            .read(new String(line.bytes(), StandardCharsets.UTF_8), signed.unit())
        : by.reread(line, Instant.EPOCH);
  }

  private static String numbered(@Nullable String line) {
    return line == null ? "no number of the line" : "the number " + line;
  }

  private void uncertainty(Reading read, @Nullable Speed signed, List<String> against) {
    papers.ifPresent(
        known -> {
          Speed computed = known.uncertainty(read);
          if (!Objects.equals(computed, signed)) {
            against.add(
                "the settings give it "
                    + (computed == null ? "no uncertainty" : "an uncertainty of " + computed)
                    + ", signed is "
                    + (signed == null ? "none" : signed));
          }
        });
  }

  /** Two in series that are apart by more than the settings allow give no reading. */
  private void apart(Fact.ReadingTaken taken, List<String> against) {
    disagreement(taken.speed(), taken.second())
        .map("its two instruments do not agree: "::concat)
        .ifPresent(against::add);
  }

  private Optional<String> disagreement(Speed speed, @Nullable SecondReading other) {
    return other == null
        ? Optional.empty()
        : papers
            .flatMap(known -> known.settings().second())
            .map(SecondInstrument::agreement)
            .filter(agreement -> !agreement.agree(speed, other.speed()))
            .map(agreement -> agreement.inWords(speed, other.speed()));
  }
}
