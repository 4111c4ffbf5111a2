package lanewarden.journal;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonValue;
import java.util.stream.Stream;
import lanewarden.quantity.Speed;
import org.jspecify.annotations.Nullable;

/**
 * What is said about a check that is disputed or was written down wrongly.
 *
 * <p>A protest and a correction are named by the sequence of their entry. None of these facts
 * changes what was signed before: they only say what counts from here on.
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public sealed interface ProtestFact extends Fact.Disputed {

  /** Why a check is looked at again; all go the same way. */
  enum Cause {
    /** Somebody holds that it is wrong. */
    PROTEST("protest"),
    /** An archer is checked again on the course. */
    SPOT_CHECK("spot check"),
    /** A winner is checked again. */
    RE_TEST("re-test"),
    /** The rule lets a judge say what follows a fail. */
    REFERRAL("referral");

    private final String word;

    Cause(String word) {
      this.word = word;
    }

    /**
     * The cause with this word.
     *
     * @throws IllegalArgumentException if there is none
     */
    @JsonCreator
    public static Cause ofWord(String word) {
      return Stream.of(values())
          .filter(cause -> cause.word.equals(word))
          .findFirst()
          .orElseThrow(() -> new IllegalArgumentException("no cause is called \"" + word + "\""));
    }

    /** The word in the ledger and for people. */
    @JsonValue
    public String word() {
      return word;
    }
  }

  /** What a judge answers. */
  enum Answer {
    /** The protest is right. */
    UPHELD("upheld"),
    /** It is not, and the check that it was filed against stands. */
    DISMISSED("dismissed");

    private final String word;

    Answer(String word) {
      this.word = word;
    }

    /**
     * The answer with this word.
     *
     * @throws IllegalArgumentException if there is none
     */
    @JsonCreator
    public static Answer ofWord(String word) {
      return Stream.of(values())
          .filter(answer -> answer.word.equals(word))
          .findFirst()
          .orElseThrow(() -> new IllegalArgumentException("no answer is called \"" + word + "\""));
    }

    /** The word in the ledger and for people. */
    @JsonValue
    public String word() {
      return word;
    }
  }

  /** What of a check was written down wrongly. */
  enum Part {
    /** The check is another competitor's. */
    BIB("bib"),
    /** The competitor shoots in another division. */
    DIVISION("division"),
    /** A reading was mistyped. */
    READING("reading");

    private final String word;

    Part(String word) {
      this.word = word;
    }

    /**
     * The part with this word.
     *
     * @throws IllegalArgumentException if there is none
     */
    @JsonCreator
    public static Part ofWord(String word) {
      return Stream.of(values())
          .filter(part -> part.word.equals(word))
          .findFirst()
          .orElseThrow(() -> new IllegalArgumentException("no part is called \"" + word + "\""));
    }

    /** The word in the ledger and for people. */
    @JsonValue
    public String word() {
      return word;
    }
  }

  /**
   * Somebody wants a check looked at again.
   *
   * @param check the one in dispute
   * @param occasion why
   * @param by who files it: an archer, a team captain, an official
   * @param ground in that person's words
   */
  record ProtestFiled(long check, Cause occasion, String by, String ground)
      implements ProtestFact {}

  /**
   * A judge rules.
   *
   * @param protest the sequence of the entry that filed it
   * @param ruling the answer
   * @param stands the check whose outcome counts from here on: the one in dispute or a recheck of
   *     it
   * @param consequence what follows for the archer, in the judge's words
   * @param reason why
   */
  record ProtestRuled(long protest, Answer ruling, long stands, String consequence, String reason)
      implements ProtestFact {}

  /**
   * An official says that something of a check was written down wrongly. It takes no effect before
   * somebody else confirms it.
   *
   * @param what which part
   * @param bib the right one, of a wrong bib
   * @param name of the competitor with that bib, as the roster in force has it
   * @param division the right one, of a wrong division
   * @param reading the sequence of the entry that took it, of a mistyped reading
   * @param speed the right one, of a mistyped reading
   */
  record CorrectionMade(
      long check,
      Part what,
      @Nullable String bib,
      @Nullable String name,
      @Nullable String division,
      @Nullable Long reading,
      @Nullable Speed speed,
      String reason)
      implements ProtestFact {

    /** The check is another competitor's. */
    public static CorrectionMade ofBib(long check, String bib, String name, String reason) {
      return new CorrectionMade(check, Part.BIB, bib, name, null, null, null, reason);
    }

    /** The competitor shoots in another division. */
    public static CorrectionMade ofDivision(long check, String division, String reason) {
      return new CorrectionMade(check, Part.DIVISION, null, null, division, null, null, reason);
    }

    /** A reading was mistyped. */
    public static CorrectionMade ofReading(long check, long reading, Speed speed, String reason) {
      return new CorrectionMade(check, Part.READING, null, null, null, reading, speed, reason);
    }

    /** Whether it has the members of its part, and no others. */
    boolean isWhole() {
      boolean forBib = what == Part.BIB;
      boolean forReading = what == Part.READING;
      return (bib != null) == forBib
          && (name != null) == forBib
          && (division != null) == (what == Part.DIVISION)
          && (reading != null) == forReading
          && (speed != null) == forReading;
    }
  }

  /** Somebody else confirms a correction, which takes effect. */
  record CorrectionConfirmed(long correction) implements ProtestFact {}
}
