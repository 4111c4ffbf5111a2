package lanewarden.chronograph;

import java.time.Clock;
import java.util.List;
import java.util.Optional;

/**
 * The one way from bytes to signals, whatever the bytes come from: framer, then sentence, then the
 * guard against repeats.
 *
 * <p>Times are monotonic nanoseconds from any one origin. For one thread.
 */
public final class Decoder {
  private final SentenceProfile profile;
  private final Source source;
  private final String instrument;
  private final Clock clock;
  private final Framer framer;
  private final Sentence sentence;
  private final RepeatGuard repeats;

  /**
   * @param profile how the instrument speaks
   * @param source where its bytes come from, for the readings
   * @param instrument its name, for the readings
   * @param clock gives the time written into readings and refusals
   */
  public Decoder(SentenceProfile profile, Source source, String instrument, Clock clock) {
    this.profile = profile;
    this.source = source;
    this.instrument = instrument;
    this.clock = clock;
    this.framer = new Framer(profile.line());
    this.sentence = new Sentence(profile.form());
    this.repeats = new RepeatGuard(profile.apart());
  }

  /** The link was opened: the first line may be joined midway. */
  public void opened(long nanos) {
    framer.opened(nanos);
    repeats.reopened();
  }

  /** Takes bytes off the wire, in chunks of any size, and returns what they became. */
  public List<Signal> feed(RawBytes bytes, long nanos) {
    return signals(framer.feed(bytes, nanos), nanos);
  }

  /** Says that there was nothing to read; returns a refusal if a line was left unfinished. */
  public List<Signal> idle(long nanos) {
    return signals(framer.idle(nanos), nanos);
  }

  /** Says that the link is gone; returns a refusal if a line was left unfinished. */
  public List<Signal> lost(long nanos) {
    return signals(framer.lost(), nanos);
  }

  private List<Signal> signals(List<Frame> frames, long nanos) {
    return frames.stream().map(frame -> signal(frame, nanos)).toList();
  }

  private Signal signal(Frame frame, long nanos) {
    if (frame instanceof Frame.Torn torn) {
      return refused(torn.bytes(), Reason.TORN, torn.words());
    }
    if (frame instanceof Frame.Overlong overlong) {
      return refused(overlong.bytes(), Reason.OVERLONG, overlong.words());
    }
    Frame.Line line = (Frame.Line) frame;
    Sentence.Outcome outcome = sentence.read(profile.withoutTerminator(line.bytes()));
    if (line.joinedMidway() && !(outcome.undamaged() && profile.form().provesWhole())) {
      return refused(
          line.bytes(),
          Reason.TORN,
          "Its beginning may be missing: it is the first line after the link opened or a line broke"
              + " off, and nothing proves it whole. Shoot again.");
    }
    if (outcome instanceof Sentence.Unfit unfit) {
      return refused(line.bytes(), unfit.reason(), unfit.words());
    }
    return heard(line.bytes(), (Sentence.Said) outcome, nanos);
  }

  private Signal heard(RawBytes raw, Sentence.Said said, long nanos) {
    Optional<String> repeat = repeats.check(raw, said.sequence(), nanos);
    if (repeat.isPresent()) {
      return refused(raw, Reason.REPEATED, repeat.get());
    }
    return new Signal.Heard(
        new Reading(said.speed(), raw, source, instrument, clock.instant(), said.sequence()));
  }

  private Signal refused(RawBytes raw, Reason reason, String words) {
    return new Signal.Refused(new Refusal(raw, reason, words, source, instrument, clock.instant()));
  }
}
