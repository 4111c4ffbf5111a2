package lanewarden.chronograph;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import lanewarden.written.WrittenRefused;

/**
 * How one kind of instrument speaks: its port, its lines, its sentence.
 *
 * <p>Read from a TOML file, described in {@code src/site/markdown/serial-format.md}. Immutable.
 */
public final class SentenceProfile {
  private final String name;
  private final PortSettings port;
  private final LineRule line;
  private final SentenceForm form;
  private final Duration apart;
  private final Optional<SimulatedLine> simulated;
  private final String text;

  SentenceProfile(
      String name,
      PortSettings port,
      LineRule line,
      SentenceForm form,
      Duration apart,
      Optional<SimulatedLine> simulated,
      String text) {
    this.name = name;
    this.port = port;
    this.line = line;
    this.form = form;
    this.apart = apart;
    this.simulated = simulated;
    this.text = text;
  }

  /**
   * Reads a profile.
   *
   * @param fileName for the faults
   * @throws WrittenRefused with every fault found; a faulty profile is never half-read
   */
  public static SentenceProfile read(String fileName, byte[] utf8) throws WrittenRefused {
    return WrittenProfile.read(fileName, utf8);
  }

  /** The instrument's name, for example {@code Gate timer}. */
  public String name() {
    return name;
  }

  /** The speeds that may be an arrow at all. */
  public SpeedRange plausible() {
    return form.plausible();
  }

  /** The profile's whole text, as it was read. */
  public String text() {
    return text;
  }

  /**
   * Reads a line anew that was received once: what it says by itself, whatever came before it.
   *
   * @param whole terminator included
   * @param at for the reading or the refusal, whose source is {@link Source#REPLAY}
   */
  public Signal reread(RawBytes whole, Instant at) {
    String characters = whole.characters();
    String terminator = line.terminator().characters();
    int end = characters.indexOf(terminator);
    if (end < 0 || end + terminator.length() != characters.length() || end > line.longest()) {
      return refused(whole, Reason.TORN, "These bytes are not one line of the instrument.", at);
    }
    Sentence.Outcome outcome = new Sentence(form).read(withoutTerminator(whole));
    if (outcome instanceof Sentence.Unfit unfit) {
      return refused(whole, unfit.reason(), unfit.words(), at);
    }
    Sentence.Said said = (Sentence.Said) outcome;
    return new Signal.Heard(
        new Reading(said.speed(), whole, Source.REPLAY, name, at, said.sequence()));
  }

  private Signal refused(RawBytes whole, Reason reason, String words, Instant at) {
    return new Signal.Refused(new Refusal(whole, reason, words, Source.REPLAY, name, at));
  }

  /** Whether a line that is read without a fault must have its first byte and its last. */
  public boolean provesWhole() {
    return form.provesWhole();
  }

  /** Whether bytes are more, without a line end after them, than a line of it may have. */
  public boolean isOverlong(RawBytes bytes) {
    String characters = bytes.characters();
    int ending =
        characters.endsWith(line.terminator().characters()) ? line.terminator().length() : 0;
    return characters.length() - ending > line.longest();
  }

  /** Bytes of which the end may be missing, with the end of a line after them. */
  public RawBytes ended(RawBytes bytes) {
    return bytes.then(line.terminator());
  }

  /** Bytes cut after their first line: that, and what follows it, which may be nothing. */
  public List<RawBytes> cut(RawBytes bytes) {
    int end = bytes.characters().indexOf(line.terminator().characters());
    int after = end < 0 ? bytes.length() : end + line.terminator().length();
    return List.of(
        RawBytes.of(bytes.bytes(), 0, after), RawBytes.of(bytes.bytes(), after, bytes.length()));
  }

  PortSettings port() {
    return port;
  }

  LineRule line() {
    return line;
  }

  SentenceForm form() {
    return form;
  }

  /**
   * The least time between two readings, where nothing but that tells an arrow from a line that
   * came twice; zero where the instrument numbers its lines.
   */
  public Duration apart() {
    return apart;
  }

  /** How the simulator writes a line; empty if the profile does not say. */
  Optional<SimulatedLine> simulated() {
    return simulated;
  }

  /** The characters of a line, one a byte, without its terminator. */
  String withoutTerminator(RawBytes whole) {
    String characters = whole.characters();
    return characters.substring(0, characters.length() - line.terminator().length());
  }
}
