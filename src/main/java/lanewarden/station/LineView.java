package lanewarden.station;

import java.time.Duration;
import java.util.Optional;
import lanewarden.chronograph.Instrument;
import lanewarden.chronograph.LinkState;
import lanewarden.chronograph.Signal;
import lanewarden.journal.Docket;
import lanewarden.journal.Fact;
import lanewarden.journal.LineStop;
import lanewarden.ledger.Head;
import lanewarden.rules.Phase;
import org.jspecify.annotations.Nullable;

/**
 * The line at one moment, for screens and terminals; immutable.
 *
 * @param event the event's name
 * @param station the station's name
 * @param official who is signed in
 * @param instrument the instrument's name
 * @param training whether its readings are invented, so that nothing counts
 * @param link how the link to the instrument stands
 * @param linkWords the same in a sentence
 * @param phase of the event
 * @param check the check at the line, decided or not, until it is closed
 * @param refused the line refused last since the check was opened or closed
 * @param progress how far the roster is
 * @param stop the stop for safety that stands: the line is not clear
 * @param stopWaits whether one was wanted that is not signed yet: no reading is taken either
 * @param verification how far the instrument can be believed
 * @param practice the practice day that is shot beside the line
 * @param docket every protest and every correction
 * @param head the ledger's last entry
 * @param trouble what keeps the line from going on, as a full disk does
 * @param signOutIn how long until the official is signed out if nothing is done
 * @param unwritten signals that were received and wait to be written
 * @param losable how many of them would be lost with the program: all but word of the link
 */
public record LineView(
    String event,
    String station,
    Optional<String> official,
    String instrument,
    boolean training,
    Link link,
    String linkWords,
    Phase phase,
    Optional<CheckView> check,
    Optional<Fact.LineRefused> refused,
    Progress progress,
    Optional<LineStop> stop,
    boolean stopWaits,
    VerificationView verification,
    PracticeView practice,
    Docket docket,
    Head head,
    Optional<Trouble> trouble,
    Optional<Duration> signOutIn,
    int unwritten,
    int losable) {

  private static final String NOT_HEARD = "NOT-HEARD";

  /** The line as its parts say at this moment. */
  static LineView of(
      Book book,
      Intake intake,
      Duty duty,
      Proving proving,
      Practising practising,
      Instrument instrument,
      StationPapers papers,
      @Nullable Trouble notice) {
    return new LineView(
        book.event(),
        book.station(),
        duty.isOn() ? book.standing().official() : Optional.empty(),
        instrument.name(),
        instrument.source().isInvented(),
        intake.link().map(link -> Link.of(link.state())).orElse(Link.LOST),
        intake
            .link()
            .map(Signal.LinkChanged::words)
            .orElse("The instrument has not been heard yet. (" + NOT_HEARD + ")"),
        book.standing().phase(),
        book.check().map(check -> check.seenFrom(papers.settings().place())),
        intake.refused(),
        book.progress(),
        book.standing().stop(),
        intake.stops(),
        proving.view(book.standing()),
        practising.view(),
        book.standing().docket(),
        book.head(),
        intake.trouble().or(book::doubt).or(() -> Optional.ofNullable(notice)),
        duty.left(),
        intake.size(),
        intake.losable());
  }

  /** Whether no stop for safety stands, and none was wanted. */
  public boolean goesOn() {
    return stop.isEmpty() && !stopWaits;
  }

  /** How the link stands, in the words of the screens. */
  public enum Link {
    /** The instrument is heard. */
    UP("instrument listening"),
    /** It is not there; the station keeps trying. */
    LOST("instrument lost"),
    /** Nobody listens: no official is signed in. */
    CLOSED("instrument off");

    private final String words;

    Link(String words) {
      this.words = words;
    }

    static Link of(LinkState state) {
      return switch (state) {
        case UP -> UP;
        case LOST -> LOST;
        case CLOSED -> CLOSED;
      };
    }

    /** Two words for people. */
    public String words() {
      return words;
    }
  }

  /**
   * How far the roster is.
   *
   * @param within competitors whose last check that is not in question ended within
   * @param over competitors whose last check that is not in question ended otherwise
   * @param competitors on the roster
   */
  public record Progress(int within, int over, int competitors) {}
}
