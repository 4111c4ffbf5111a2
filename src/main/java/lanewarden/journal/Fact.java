package lanewarden.journal;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;
import java.util.List;
import lanewarden.quantity.Force;
import lanewarden.quantity.Mass;
import lanewarden.quantity.Speed;
import org.jspecify.annotations.Nullable;

/**
 * What an entry of the ledger says: the closed family of everything that happens at a station.
 *
 * <p>A check is named by the sequence of the entry that opened it, a reading by the sequence of the
 * entry that took it. Nothing is ever edited: a void or a second verdict is a fact of its own.
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public sealed interface Fact {

  /**
   * The rule book in force from here on.
   *
   * @param file the file's name
   * @param sha256 64 hex digits over the file's bytes
   * @param text the whole file
   */
  record RuleBookAdopted(String file, String sha256, String text) implements Fact {}

  /** The competitors, with the meaning of {@link RuleBookAdopted}. */
  record RosterAdopted(String file, String sha256, String text) implements Fact {}

  /**
   * The line opened.
   *
   * @param instrument the instrument's name
   * @param profile the whole text of its sentence profile
   * @param program name and version of the program that writes
   */
  record StationOpened(String instrument, String profile, String program) implements Fact {}

  /** An official took over; this and what follows is signed with that official's key. */
  record OfficialSignedIn(String name) implements Fact {}

  /** The official left. */
  record OfficialSignedOut(String name) implements Fact {}

  /**
   * A competitor stands at the line.
   *
   * @param attempt 1 for the first check, 2 and up for re-checks
   * @param arrowMass as weighed, or null if it was not
   * @param drawWeight as stated, or null if it was not
   */
  record CheckOpened(
      String bib,
      String name,
      String division,
      int attempt,
      @Nullable Mass arrowMass,
      @Nullable Force drawWeight)
      implements Fact {}

  /**
   * A good reading, taken for the check.
   *
   * @param check the check's number
   * @param shot which shot of the check it is, from 1
   * @param speed the value in the unit it was written in
   * @param raw the bytes as received, base64 (RFC 4648, 4)
   * @param source where they came from, in words
   * @param instrument the instrument's name
   * @param at when the line was complete
   * @param line the instrument's own number of the line, or null
   */
  record ReadingTaken(
      long check,
      int shot,
      Speed speed,
      String raw,
      String source,
      String instrument,
      Instant at,
      @Nullable String line)
      implements Fact {}

  /**
   * Bytes that did not become a reading.
   *
   * @param check the check that was running, or null if none was
   * @param raw the bytes as received, base64 (RFC 4648, 4)
   * @param reason the reason in a word or two
   * @param words the reason in a sentence
   */
  record LineRefused(
      @Nullable Long check,
      String raw,
      String reason,
      String words,
      String source,
      String instrument,
      Instant at)
      implements Fact {}

  /**
   * The official declared a reading void: it uses up its shot and does not count.
   *
   * @param reading the sequence of the entry that took it
   */
  record ReadingVoided(long check, long reading, String reason) implements Fact {}

  /**
   * The rule decided. A later verdict on the same check replaces an earlier one.
   *
   * @param ruleBook hash of the rule book that was applied, 64 hex digits
   * @param reason with the figures that decided
   * @param readings the sequences of all readings that stood, in order
   */
  record VerdictGiven(
      long check, String ruleBook, Outcome outcome, String reason, List<Long> readings)
      implements Fact {
    /** Copies the list. */
    public VerdictGiven {
      readings = List.copyOf(readings);
    }
  }

  /**
   * The check left the line.
   *
   * @param reason why it was ended without a verdict, or null where a verdict stands
   */
  record CheckClosed(long check, @Nullable String reason) implements Fact {}

  /** The link to the instrument came, went or ended. */
  record LinkChanged(String state, String words, Instant at) implements Fact {}

  /** The line closed. */
  record StationClosed() implements Fact {}
}
