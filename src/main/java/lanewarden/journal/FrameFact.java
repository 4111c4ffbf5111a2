package lanewarden.journal;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import lanewarden.written.Fingerprint;
import org.jspecify.annotations.Nullable;

/** What happens around the checks: an official who left, the clock, a line that is not clear. */
@JsonInclude(JsonInclude.Include.NON_NULL)
public sealed interface FrameFact extends Fact.Around {

  /**
   * The official left.
   *
   * @param reason why, if the station signed the official out by itself; else null
   */
  record OfficialSignedOut(String name, @Nullable String reason) implements FrameFact {
    /** An official who left of their own will. */
    public OfficialSignedOut(String name) {
      this(name, null);
    }
  }

  /**
   * The computer's clock was found to have jumped against the clock that cannot be set.
   *
   * @param by seconds; less than zero when it was set back
   * @param expected what the clock should have shown in place of this entry's time
   */
  record ClockStepped(BigDecimal by, Instant expected) implements FrameFact {}

  /**
   * The head of another station's ledger was seen, as a witness who signs it here.
   *
   * @param station whose ledger it is
   * @param head as printed: sequence, dash and the first 12 hex digits of the hash
   */
  record HeadWitnessed(String station, String head) implements FrameFact {}

  /**
   * The line is not clear: no reading is taken, nobody is called and no verdict is given until it
   * is. It puts no check in question. The stop is named by the sequence of this entry; another such
   * entry while it stands only says why.
   *
   * @param reason why, or null where there was no time to say it
   */
  record LineStopped(@Nullable String reason) implements FrameFact {}

  /** The official on duty said that the line is clear again; nothing else ends the stop. */
  record LineCleared(long stop) implements FrameFact {}

  /**
   * The key that seals reports from here on; the organizer signs that it is the event's.
   *
   * @param certificate of the key, self-signed: X.509 (RFC 5280), DER, base64 (RFC 4648, 4)
   */
  record ReportSealAdopted(String certificate) implements FrameFact {}

  /**
   * The shots of a practice day, kept with the event. No check, verdict or finding rests on them.
   *
   * @param title what it is called, in the words of whoever keeps it
   * @param file the file's name
   * @param sha256 64 hex digits over the file's bytes
   * @param text the whole file
   */
  record PracticeKept(String title, String file, String sha256, String text) implements FrameFact {
    /**
     * @throws IllegalArgumentException if the text has another hash
     */
    void requireOwnHash() {
      String own = Fingerprint.sha256(text.getBytes(StandardCharsets.UTF_8));
      if (!own.equals(sha256)) {
        throw new IllegalArgumentException(
            "the practice file's text has the hash " + own + ", not " + sha256);
      }
    }
  }
}
