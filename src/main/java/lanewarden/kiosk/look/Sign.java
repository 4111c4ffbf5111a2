package lanewarden.kiosk.look;

import java.util.Optional;
import lanewarden.journal.Outcome;
import lanewarden.station.CheckView;
import lanewarden.station.LineView;

/** A shape with a meaning. It always stands beside a word, and its colour only repeats it. */
public enum Sign {
  /** A disc with a tick. */
  WITHIN("within"),
  /** A triangle with an exclamation mark. */
  OVER("over"),
  /** A hollow diamond. */
  NOT_DECIDED("not-decided"),
  /** A square with a bar. */
  NOT_ADMITTED("not-admitted"),
  /** An octagon with two bars: the line is held. */
  HELD("held"),
  /** Two crossed bars: the line is not clear. */
  STOPPED("stopped"),
  /** A ring: the check runs. */
  RUNNING("running"),
  /** An arrowhead: bytes that came in as a reading. */
  HEARD("heard"),
  /** Two joined discs. */
  LINK_UP("link-up"),
  /** Two discs, cut apart. */
  LINK_LOST("link-lost"),
  /** A hollow square. */
  LINK_CLOSED("link-closed");

  private final String word;

  Sign(String word) {
    this.word = word;
  }

  /** The sign of a check's outcome, or of one that runs; an outcome in question has the hold's. */
  public static Sign of(CheckView view) {
    return view.check().inQuestion() ? HELD : of(view.outcome());
  }

  /** The sign of an outcome, or of a check that runs. */
  public static Sign of(Optional<Outcome> outcome) {
    return outcome.map(Sign::of).orElse(RUNNING);
  }

  private static Sign of(Outcome outcome) {
    return switch (outcome) {
      case WITHIN -> WITHIN;
      case OVER -> OVER;
      case NOT_DECIDED -> NOT_DECIDED;
      case NOT_ADMITTED -> NOT_ADMITTED;
    };
  }

  /** The sign of a link. */
  public static Sign of(LineView.Link link) {
    return switch (link) {
      case UP -> LINK_UP;
      case LOST -> LINK_LOST;
      case CLOSED -> LINK_CLOSED;
    };
  }

  /** Its name in the stylesheet. */
  public String styleClass() {
    return "sign-" + word;
  }
}
