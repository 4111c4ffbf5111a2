package lanewarden.journal;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;
import java.util.List;
import lanewarden.quantity.Force;
import lanewarden.quantity.Length;
import lanewarden.quantity.Mass;
import lanewarden.quantity.Speed;
import lanewarden.rules.Consequence;
import lanewarden.rules.Phase;
import lanewarden.rules.SetUp;
import org.jspecify.annotations.Nullable;

/**
 * What an entry of the ledger says: the closed family of everything that happens at a station.
 *
 * <p>A check is named by the sequence of the entry that opened it, a reading by the sequence of the
 * entry that took it. Nothing is ever edited: a void or a second verdict is a fact of its own.
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public sealed interface Fact {

  /** What disputes a check or corrects it. */
  sealed interface Disputed extends Fact permits ProtestFact {}

  /** What is weighed and measured at the line. */
  sealed interface Weighed extends Fact permits SetUpStated {}

  /** What happens around the checks. */
  sealed interface Around extends Fact permits FrameFact {}

  /**
   * The rule book in force from here on.
   *
   * @param file the file's name
   * @param sha256 64 hex digits over the file's bytes
   * @param text the whole file
   * @param reason why it replaces the one before, or null for the first
   */
  record RuleBookAdopted(String file, String sha256, String text, @Nullable String reason)
      implements Fact {
    /** The first rule book of an event. */
    public RuleBookAdopted(String file, String sha256, String text) {
      this(file, sha256, text, null);
    }
  }

  /** The competitors, with the meaning of {@link RuleBookAdopted}. */
  record RosterAdopted(String file, String sha256, String text) implements Fact {}

  /**
   * The line opened.
   *
   * @param instrument the instrument's name
   * @param profile the whole text of its sentence profile
   * @param program name and version of the program that writes
   * @param secondProfile the same of the second instrument in series, or null if there is none
   * @param settings the whole text of the station's settings, or null in older ledgers
   * @param budget what makes a reading uncertain and by how much, a line each, or null if the
   *     settings say nothing of it
   * @param place of the instrument, or null if the settings say nothing of it
   */
  record StationOpened(
      String instrument,
      String profile,
      String program,
      @Nullable String secondProfile,
      @Nullable String settings,
      @Nullable List<String> budget,
      @Nullable Place place)
      implements Fact {
    /** A line of which nothing more is known. */
    public StationOpened(String instrument, String profile, String program) {
      this(instrument, profile, program, null, null, null, null);
    }

    /** Copies the list. */
    public StationOpened {
      budget = budget == null ? null : List.copyOf(budget);
    }
  }

  /**
   * A phase of the event began; until the first such entry it is before the event.
   *
   * @param reason why it went back, or null where it went on
   */
  record PhaseBegan(Phase phase, @Nullable String reason) implements Fact {
    /** The event went on. */
    public PhaseBegan(Phase phase) {
      this(phase, null);
    }
  }

  /**
   * Competitors of a division were drawn at random by the published recipe.
   *
   * @param seed as it was thrown before witnesses
   * @param share of the pool that was to be drawn, for example {@code 20 %}
   * @param pool the bibs of the division, as the roster had them
   * @param drawn those of them that are to be checked, in the order drawn
   */
  record DrawMade(String division, String seed, String share, List<String> pool, List<String> drawn)
      implements Fact {
    /** Copies the lists. */
    public DrawMade {
      pool = List.copyOf(pool);
      drawn = List.copyOf(drawn);
    }
  }

  /** An official took over; this and what follows is signed with that official's key. */
  record OfficialSignedIn(String name) implements Fact {}

  /**
   * A competitor stands at the line.
   *
   * @param attempt 1 for the first check, 2 and up for re-checks
   * @param arrowMass as the roster states it, or null if it does not
   * @param drawWeight as the roster states it, or null if it does not
   * @param certifiedDrawWeight as the roster states it, or null if it does not
   * @param drawLength as the roster states it, or null if it does not
   * @param braceHeight as the roster states it, or null if it does not
   * @param grounds why the competitor was called although the rule did not call for it: drawn by
   *     nobody, or within already; null where it did
   * @param protest under which this check stands beside another, whose attempt it has; or null
   */
  record CheckOpened(
      String bib,
      String name,
      String division,
      int attempt,
      @Nullable Mass arrowMass,
      @Nullable Force drawWeight,
      @Nullable Force certifiedDrawWeight,
      @Nullable Length drawLength,
      @Nullable Length braceHeight,
      @Nullable String grounds,
      @Nullable Long protest)
      implements Fact {
    /** A call that the rule calls for, with nothing known but arrow mass and draw weight. */
    public CheckOpened(
        String bib,
        String name,
        String division,
        int attempt,
        @Nullable Mass arrowMass,
        @Nullable Force drawWeight) {
      this(bib, name, division, attempt, arrowMass, drawWeight, null, null, null, null, null);
    }

    /** Bow and arrow as declared. */
    public SetUp setUp() {
      return new SetUp(arrowMass, drawWeight, certifiedDrawWeight, drawLength, braceHeight);
    }
  }

  /** The official saw that a condition of the rule was kept. */
  record ConditionTicked(long check, String condition) implements Fact {}

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
   * @param uncertainty its standard uncertainty by the settings of the station, in the unit of the
   *     speed; null if they say nothing of it, and of a typed reading
   * @param second what a second instrument in series measured, or null if there is none
   */
  record ReadingTaken(
      long check,
      int shot,
      Speed speed,
      String raw,
      String source,
      String instrument,
      Instant at,
      @Nullable String line,
      @Nullable Speed uncertainty,
      @Nullable SecondReading second)
      implements Fact {
    /** A reading of one instrument of whose accuracy nothing is known. */
    public ReadingTaken(
        long check,
        int shot,
        Speed speed,
        String raw,
        String source,
        String instrument,
        Instant at,
        @Nullable String line) {
      this(check, shot, speed, raw, source, instrument, at, line, null, null);
    }
  }

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
   * A reading that may be no measurement of an arrow, when it was found so.
   *
   * @param reading the sequence of the entry that took it
   * @param kind what makes it doubtful, as {@link lanewarden.rules.Doubt.Kind#word} says
   * @param words what it says and what it is held against
   */
  record ReadingFlagged(long check, long reading, String kind, String words) implements Fact {}

  /**
   * The official let a reading count that was in doubt.
   *
   * @param reading the sequence of the entry that took it
   */
  record ReadingKept(long check, long reading, String reason) implements Fact {}

  /**
   * The rule decided. A later verdict on the same check replaces an earlier one.
   *
   * @param ruleBook hash of the rule book that was applied, 64 hex digits
   * @param reason with the figures that decided
   * @param readings the sequences of all readings that stood, in order
   * @param follows what the rule says follows it, or null where nothing does
   */
  record VerdictGiven(
      long check,
      String ruleBook,
      Outcome outcome,
      String reason,
      List<Long> readings,
      @Nullable Consequence follows)
      implements Fact {
    /** A verdict that nothing follows. */
    public VerdictGiven(
        long check, String ruleBook, Outcome outcome, String reason, List<Long> readings) {
      this(check, ruleBook, outcome, reason, readings, null);
    }

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

  /**
   * The line closed.
   *
   * @param reason why it closed without the verification that was due, or null where none was
   */
  record StationClosed(@Nullable String reason) implements Fact {}

  /**
   * When the instrument is to be verified, from here on; until the first such entry, never.
   *
   * @param beforeOpening whether before the first competitor after each opening of the line
   * @param every how many competitors may be called before the next one, or null for no such limit
   * @param atEnd whether before the line closes
   */
  record VerificationPlanned(boolean beforeOpening, @Nullable Integer every, boolean atEnd)
      implements Fact {}

  /**
   * Shots through the station's instrument and a reference begin. The verification is named by the
   * sequence of this entry.
   *
   * @param occasion why now, in the words of {@link Occasion}
   * @param reference what the instrument is held against, in words
   * @param shots how many are taken
   * @param mostBias the limit of the mean difference, either way: a share or a speed
   * @param mostSpread the limit of the standard deviation of the differences, likewise
   * @param known the speed that the reference is known to have, or null where each shot has its own
   */
  record VerificationBegan(
      String occasion,
      String reference,
      int shots,
      String mostBias,
      String mostSpread,
      @Nullable Speed known)
      implements Fact {}

  /**
   * A shot of a verification, with the meaning of {@link ReadingTaken}.
   *
   * @param reference what the reference says of it, or null where that is still to be typed
   * @param second what a second instrument in series measured, or null if there is none
   */
  record VerificationShot(
      long verification,
      int shot,
      Speed speed,
      String raw,
      String source,
      String instrument,
      Instant at,
      @Nullable Speed reference,
      @Nullable SecondReading second)
      implements Fact {}

  /** What the second instrument showed of a shot, typed by the official. */
  record ReferenceTyped(long verification, int shot, Speed reference) implements Fact {}

  /**
   * A verification ended.
   *
   * @param passed whether bias and spread are within their limits
   * @param words the figures that decided, or how far it came
   * @param reason why it was broken off, or null where all its shots were taken
   */
  record VerificationEnded(long verification, boolean passed, String words, @Nullable String reason)
      implements Fact {}

  /**
   * The line is held: nobody is called and no verdict is given until it is lifted. The hold is
   * named by the sequence of this entry.
   *
   * @param verification the one out of its limits, or null where an official holds the line
   * @param checks those that came to an outcome since the last good verification, in order
   */
  record LineHeld(@Nullable Long verification, String reason, List<Long> checks) implements Fact {
    /** Copies the list. */
    public LineHeld {
      checks = List.copyOf(checks);
    }
  }

  /**
   * A hold is lifted.
   *
   * @param verification the good one that lifts it, or null where an official does
   */
  record HoldLifted(long hold, @Nullable Long verification, String reason) implements Fact {}
}
