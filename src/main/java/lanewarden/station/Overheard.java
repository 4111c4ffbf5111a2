package lanewarden.station;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanewarden.chronograph.Companion;
import lanewarden.chronograph.Reading;
import lanewarden.chronograph.Refusal;
import lanewarden.chronograph.Signal;
import lanewarden.quantity.Speed;

/**
 * Something that came from an instrument while somebody only listened.
 *
 * @param at when
 * @param kind what became of it
 * @param raw the bytes as received, in printable ASCII; empty for a change of the link
 * @param speed of a reading
 * @param words of a reading, its number and what a second instrument in series measured, if there
 *     is either; of a refusal, the reason and what to do; of a change of the link, what happened
 */
public record Overheard(Instant at, Kind kind, String raw, Optional<Speed> speed, String words) {

  /** What became of bytes, or of the link. */
  public enum Kind {
    /** A good reading. */
    READING("reading"),
    /** Bytes that are no reading. */
    REFUSED("refused"),
    /** The link came. */
    LINK_UP("link up"),
    /** The link went. */
    LINK_LOST("link lost"),
    /** The link was ended. */
    LINK_CLOSED("link closed");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** A word or two for people and machines. */
    public String word() {
      return word;
    }
  }

  private static String words(Reading reading) {
    List<String> words = new ArrayList<>();
    if (reading.sequence() != null) {
      words.add("number " + reading.sequence());
    }
    Companion second = reading.companion();
    if (second != null) {
      words.add(second.instrument() + ": " + second.raw().escaped() + "  " + second.speed());
    }
    return String.join("; ", words);
  }

  static Overheard of(Signal signal) {
    if (signal instanceof Signal.Heard heard) {
      Reading reading = heard.reading();
      return new Overheard(
          reading.at(),
          Kind.READING,
          reading.raw().escaped(),
          Optional.of(reading.speed()),
          words(reading));
    }
    if (signal instanceof Signal.Refused refused) {
      Refusal refusal = refused.refusal();
      return new Overheard(
          refusal.at(),
          Kind.REFUSED,
          refusal.raw().escaped(),
          Optional.empty(),
          refusal.reason().word() + ": " + refusal.words());
    }
    Signal.LinkChanged link = (Signal.LinkChanged) signal;
    Kind kind =
        switch (link.state()) {
          case UP -> Kind.LINK_UP;
          case LOST -> Kind.LINK_LOST;
          case CLOSED -> Kind.LINK_CLOSED;
        };
    return new Overheard(link.at(), kind, "", Optional.empty(), link.words());
  }
}
