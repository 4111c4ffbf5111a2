package lanewarden.station;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lanewarden.chronograph.RawBytes;
import lanewarden.chronograph.Reason;
import lanewarden.chronograph.SentenceProfile;
import lanewarden.chronograph.Signal;
import lanewarden.chronograph.Source;
import lanewarden.journal.Fact;
import lanewarden.journal.Interpreter;
import lanewarden.journal.SecondReading;
import lanewarden.metrology.PairAgreement;
import lanewarden.quantity.Speed;
import org.jspecify.annotations.Nullable;

/**
 * The instruments with which a line was opened: who of them may have sent what, and whether what
 * they sent was refused for good reason.
 *
 * @param instrument the name in the opening: of two in series, of both
 * @param second profile of the second instrument, where there is one
 * @param papers with the settings, which older openings do not have
 */
record OpenedInstruments(
    String instrument,
    SentenceProfile profile,
    Optional<SentenceProfile> second,
    Optional<StationPapers> papers) {
  private static final String AND = " and ";

  /** What speaks against the reason for which a line was refused. */
  List<String> against(Fact.LineRefused refused, Interpreter.Before before) {
    List<String> against = new ArrayList<>();
    Optional<RawBytes> raw = decoded(refused.raw());
    if (raw.isEmpty()) {
      against.add("its bytes are not base64");
    } else if (refused.reason().equals(Reason.DISAGREE.word())) {
      disagreement(raw.get()).ifPresent(against::add);
    } else {
      List<SentenceProfile> speakers = speakers(refused.instrument(), refused.source());
      if (speakers.isEmpty()) {
        against.add("the line was opened with another instrument, " + instrument);
      }
      List<Optional<String>> all =
          speakers.stream()
              .map(by -> new Retrial(by, raw.get(), isTyped(refused.source())))
              .map(retrial -> retrial.against(refused.reason(), before))
              .toList();
      if (!all.isEmpty() && all.stream().allMatch(Optional::isPresent)) {
        against.add(all.get(0).orElseThrow());
      }
    }
    if (refused.reason().equals(Reason.UNPAIRED.word()) && second.isEmpty()) {
      against.add("the line had only one instrument");
    }
    source(refused.source(), against);
    return against;
  }

  /** The reading that the bytes of a line are. */
  Optional<Interpreter.Heard> heard(String sender, String source, String raw) {
    return decoded(raw).stream()
        .flatMap(
            line ->
                speakers(sender, source).stream()
                    .flatMap(by -> new Retrial(by, line, isTyped(source)).heard().stream()))
        .findFirst();
  }

  /** The speed, in words, that the bytes of a refused line say; of two joined ones, both. */
  Optional<String> says(Fact.LineRefused refused) {
    Optional<RawBytes> raw = decoded(refused.raw());
    if (raw.isEmpty()) {
      return Optional.empty();
    }
    if (refused.reason().equals(Reason.DISAGREE.word()) && second.isPresent()) {
      List<RawBytes> halves = profile.cut(raw.get());
      String both =
          Stream.of(
                  new Retrial(profile, halves.get(0), false),
                  new Retrial(second.get(), halves.get(1), false))
              .flatMap(Retrial::said)
              .collect(Collectors.joining(" and "));
      return both.isEmpty() ? Optional.empty() : Optional.of(both);
    }
    return speakers(refused.instrument(), refused.source()).stream()
        .flatMap(by -> new Retrial(by, raw.get(), isTyped(refused.source())).said())
        .findFirst();
  }

  /** The reading, in words, that these instruments would have made of a line that was refused. */
  Optional<String> otherwise(Fact.LineRefused refused) {
    Optional<RawBytes> raw = decoded(refused.raw());
    if (raw.isPresent() && refused.reason().equals(Reason.DISAGREE.word())) {
      return agreed(raw.get()).map(speed -> speed.toString());
    }
    boolean typed = isTyped(refused.source());
    return Stream.concat(Stream.of(profile), typed ? Stream.empty() : second.stream())
        .flatMap(by -> raw.stream().flatMap(line -> new Retrial(by, line, typed).said()))
        .findFirst();
  }

  /** The profiles by which an instrument of this name may have spoken; none of a strange one. */
  private List<SentenceProfile> speakers(String sender, String source) {
    List<SentenceProfile> both = new ArrayList<>(List.of(profile));
    second.ifPresent(both::add);
    if (papers.isEmpty()) {
      // Older openings: which name is which instrument's rests on the settings
      return both;
    }
    if (isTyped(source) || second.isEmpty()) {
      return isTyped(source) || sender.equals(instrument) ? List.of(profile) : List.of();
    }
    boolean first = instrument.startsWith(sender + AND);
    boolean last = instrument.endsWith(AND + sender);
    return both.stream().filter(by -> by.equals(profile) ? first : last).toList();
  }

  /** What the first of two said, if there was no other or the other agreed. */
  private Optional<Speed> agreed(RawBytes raw) {
    List<RawBytes> halves = profile.cut(raw);
    if (!(profile.reread(halves.get(0), Instant.EPOCH) instanceof Signal.Heard first)) {
      return Optional.empty();
    }
    Speed speed = first.reading().speed();
    return second.isEmpty()
            || (second.get().reread(halves.get(1), Instant.EPOCH) instanceof Signal.Heard last
                && agreement().filter(how -> how.agree(speed, last.reading().speed())).isPresent())
        ? Optional.of(speed)
        : Optional.empty();
  }

  private Optional<PairAgreement> agreement() {
    return papers.flatMap(known -> known.settings().second()).map(SecondInstrument::agreement);
  }

  /** What speaks against that two instruments did not agree. */
  private Optional<String> disagreement(RawBytes raw) {
    if (second.isEmpty()) {
      return Optional.of("the line had only one instrument");
    }
    List<RawBytes> halves = profile.cut(raw);
    Signal one = profile.reread(halves.get(0), Instant.EPOCH);
    Signal other = second.get().reread(halves.get(1), Instant.EPOCH);
    if (!(one instanceof Signal.Heard first && other instanceof Signal.Heard last)) {
      return Optional.of("its bytes are not two readings, one of each instrument");
    }
    return agreement()
        .filter(how -> how.agree(first.reading().speed(), last.reading().speed()))
        .map(
            how ->
                "its two instruments agree: "
                    + how.inWords(first.reading().speed(), last.reading().speed()));
  }

  /** Where a reading is said to come from must be what the line was opened with. */
  void origin(String source, String sender, @Nullable SecondReading other, List<String> against) {
    source(source, against);
    String both = other == null ? sender : sender + AND + other.instrument();
    if (papers.isPresent() && !isTyped(source) && !both.equals(instrument)) {
      against.add(
          "it is said to be of the instrument “"
              + both
              + "”, and the line was opened with “"
              + instrument
              + "”");
    }
  }

  private void source(String source, List<String> against) {
    papers
        .map(this::opened)
        .filter(from -> !isTyped(source) && !from.word().equals(source))
        .ifPresent(
            from ->
                against.add(
                    "it is said to come from “"
                        + source
                        + "”, and the line was opened with what comes from “"
                        + from.word()
                        + "”"));
  }

  /** Where the readings come from that are not typed; a port may be named at the start. */
  private Source opened(StationPapers known) {
    if (instrument.startsWith(profile.name() + " on ")) {
      return Source.SERIAL;
    }
    if (instrument.startsWith(profile.name() + ", simulated")) {
      return Source.SIMULATED;
    }
    return switch (known.settings().kind()) {
      case SERIAL -> Source.SERIAL;
      case SIMULATOR -> Source.SIMULATED;
      case TYPED -> Source.TYPED;
    };
  }

  static boolean isTyped(String source) {
    return source.equals(Source.TYPED.word());
  }

  static Optional<RawBytes> decoded(String base64) {
    try {
      return Optional.of(RawBytes.of(Base64.getDecoder().decode(base64)));
    } catch (IllegalArgumentException notBase64) {
      return Optional.empty();
    }
  }
}
