package lanewarden.audit.findings;

import java.util.List;

/**
 * Something in the ledger that an opponent should look at.
 *
 * @param kind what sort of thing it is
 * @param entries the numbers of the entries it rests on, in the order of the text
 * @param words what was found, in a sentence or two
 * @param times how many of its sort it stands for: mostly one, but as many as were only counted
 */
public record Finding(Kind kind, List<Long> entries, String words, long times) {

  /** Copies the list. */
  public Finding {
    entries = List.copyOf(entries);
  }

  /** A finding that stands for itself. */
  public Finding(Kind kind, List<Long> entries, String words) {
    this(kind, entries, words, 1);
  }

  static Finding of(Kind kind, String words, Long... entries) {
    return new Finding(kind, List.of(entries), words);
  }

  /** Whether the ledger contradicts its own rules here. */
  public boolean isContradiction() {
    return kind.isContradiction();
  }

  /** The heading over findings of its sort. */
  public String heading() {
    return kind.heading();
  }

  /** The sorts of findings, the gravest first. */
  public enum Kind {
    /** An entry whose body does not say what its kind demands, or speaks of what is not there. */
    UNREADABLE(true, "Entries that cannot be understood"),
    /** The rule gives another outcome on the same readings. */
    VERDICT(true, "Verdicts that do not follow from the rule"),
    /** A reading that its raw bytes do not give by the papers of its time. */
    BYTES(true, "Readings that do not follow from what the instrument sent"),
    /** An opening with another place or budget of its instrument than its settings give. */
    OPENING(true, "Openings that say of the instrument what their settings do not give"),
    /**
     * A line that was refused though its bytes are a reading, or for another reason than it has.
     */
    REFUSED(true, "Lines refused for a reason that they do not have"),
    /** A line of the instrument that stood in another reading already. */
    REPEATED(true, "Readings that repeat what the instrument had sent before"),
    /** A reading or a refused line earlier than what came before it, or later than its entry. */
    READING_TIME(true, "Readings and lines whose time does not fit the entries around them"),
    /** A check of a competitor whom the roster in force does not hold, or holds otherwise. */
    ROSTER(true, "Checks that do not fit the roster in force"),
    /** Signed at the line by somebody who was not on duty, or while it was not open. */
    UNATTENDED(true, "Signed at the line while nobody was on duty or it was not open"),
    /** The rule decided, and no verdict was signed. */
    VERDICT_MISSING(true, "Decided by the rule, but without a signed verdict"),
    /** The rule book that should govern is another one, or has no rule for the check. */
    RULE(true, "Checks and rule books that do not fit together"),
    /** What was signed to follow a verdict is not what the rule says. */
    FOLLOWS(true, "Verdicts that another consequence was signed for than the rule has"),
    /** A draw that the published recipe does not give from the seed and the roster. */
    DRAW(true, "Draws that do not follow from their seed"),
    /** A verdict that lists other readings than those that stood. */
    READINGS(true, "Verdicts that list other readings than stood"),
    /** A check that the rule does not allow. */
    ADMISSION(true, "Checks that the rule does not allow"),
    /** A recheck that no protest allows. */
    RECHECK(true, "Rechecks that no open protest allows"),
    /** A protest that has an objection against it. */
    PROTEST(true, "Protests without effect"),
    /** A ruling that has an objection against it. */
    RULING(true, "Rulings without effect"),
    /** A confirmation that has an objection against it. */
    CORRECTION(true, "Confirmations of corrections without effect"),
    /** What cannot be done while the line is held. */
    HELD(true, "Done while the line was held"),
    /** What cannot be done while the line is stopped for safety. */
    NOT_CLEAR(true, "Done while the line was not clear"),
    /** A verification that ended otherwise than its shots say. */
    VERIFICATION(true, "Verifications of the instrument that do not follow from their shots"),
    /** A hold that is missing, lists other checks, or was lifted by what cannot lift it. */
    HOLD(true, "Holds of the line that do not follow from the verifications"),
    /** A check or a closing where a verification had to come first. */
    VERIFICATION_DUE(true, "Verifications of the instrument that were due and missing"),
    /** Something that happened before or after it could. */
    ORDER(true, "Things out of order"),
    /** A sign-in under another name than the key was enrolled for. */
    NAME(true, "Signed with the key of another name"),
    /** A seal of reports that is not the organizer's word. */
    SEAL(true, "Seals of reports that another key than the organizer's stated"),
    /** Another instrument, profile or settings at an opening of the line, and what that did. */
    PAPERS(false, "Openings of the line with other papers than before"),
    /** A hold of the line with the checks that it touches. */
    IN_QUESTION(false, "Holds of the line and the checks in question"),
    /** A stop of the line for safety, and how long it was. */
    LINE_STOPPED(false, "Stops of the line for safety"),
    /** A verification out of its limits, or broken off. */
    VERIFICATION_OUT(false, "Verifications of the instrument that did not pass"),
    /** A hold that a verification lifted whose limits were looser than those that held. */
    HOLD_LOOSER(false, "Holds lifted by a verification with looser limits"),
    /**
     * A verification that only an official's typing passed, beside an instrument that was heard.
     */
    VERIFICATION_TYPED(false, "Verifications of a connected instrument passed on typed values"),
    /** A line that closed, with a reason, without the verification that was due. */
    VERIFICATION_SKIPPED(false, "Closed without the verification that was due"),
    /** A protest that nobody ruled on. */
    PROTEST_OPEN(false, "Protests without a ruling"),
    /** A protest with its ruling, and the outcome that counts. */
    RULED(false, "Protests and their rulings"),
    /** A correction that took effect. */
    CORRECTED(false, "Corrections"),
    /** A correction that nobody else confirmed. */
    CORRECTION_OPEN(false, "Corrections without a second signature"),
    /** A check that the rule does not call for by itself. */
    GROUNDS(false, "Checks called on grounds of their own"),
    /** One and the same archer whose readings could not be believed, check after check. */
    UNDECIDED_AGAIN(false, "Checks that ended undecided again and again, with readings over"),
    /** Bow or arrow stated otherwise than before. */
    SET_UP(false, "Bow and arrow stated anew"),
    /** A fail of which was not signed what follows it, as older versions did. */
    FOLLOWS_UNSAID(false, "Fails without what follows them"),
    /** Another draw of a division that had one. */
    DRAWN_ANEW(false, "Divisions drawn anew"),
    /** The event was said to be in an earlier phase again. */
    PHASE_BACK(false, "Phases of the event that went back"),
    /** Another phase of the event began. */
    PHASE(false, "Phases of the event"),
    /** A verdict that a void or a later verdict replaced. */
    TAKEN_BACK(false, "Verdicts taken back"),
    /** A verdict whose signed reason is worded otherwise than the rule words it. */
    REASON(false, "Verdicts whose reason reads otherwise than recomputed"),
    /** A reading that the official declared void. */
    VOID(false, "Readings declared void"),
    /** A reading that the bow cannot give by its stated figures. */
    IMPOSSIBLE(false, "Readings void because the bow could not give them as stated"),
    /** A reading that may be no measurement of an arrow. */
    DOUBT(false, "Readings in doubt"),
    /** A reading in doubt that the official let count. */
    KEPT(false, "Readings in doubt that were let count"),
    /** A reading typed by the official. */
    TYPED(false, "Readings typed by an official"),
    /** A line of the instrument that may have come again after its numbers began anew. */
    REPEATED_ONCE(false, "Readings that may repeat what the instrument had sent before"),
    /** Shots that the instrument counted and no entry knows, or numbers that began anew. */
    NUMBERS(false, "Gaps in the instrument’s own numbers"),
    /** Readings that no instrument measured. */
    NOT_MEASURED(false, "Readings that no instrument measured"),
    /** A check that ended without a verdict. */
    NO_VERDICT(false, "Checks that ended without a verdict"),
    /** Bytes that did not become a reading. */
    LINE_REFUSED(false, "Lines of the instrument that were refused"),
    /** The link to the instrument was lost. */
    LINK_LOST(false, "Losses of the link to the instrument"),
    /** Another rule book, roster, division or name took over. */
    EXCHANGED(false, "Rule books, rosters and divisions changed on the way"),
    /** Another rule book under the edition of one that had been in force. */
    EDITION(false, "Rule books that differ under one edition"),
    /** The station's clock was set back. */
    CLOCK(false, "Times that go back"),
    /** The station's clock jumped against the clock that cannot be set. */
    CLOCK_STEP(false, "Steps of the station’s clock"),
    /** An official whose key the organizer suspended. */
    SUSPENDED(false, "Officials suspended"),
    /** An official whom the station signed out by itself. */
    SIGNED_OUT(false, "Officials signed out by the station"),
    /** An entry of a kind that this program does not know. */
    STRANGE(false, "Entries of an unknown kind");

    private final boolean contradiction;
    private final String heading;

    Kind(boolean contradiction, String heading) {
      this.contradiction = contradiction;
      this.heading = heading;
    }

    /** Whether the ledger contradicts its own rules here; the others are matters of judgement. */
    public boolean isContradiction() {
      return contradiction;
    }

    /** The heading over findings of this sort. */
    public String heading() {
      return heading;
    }
  }
}
