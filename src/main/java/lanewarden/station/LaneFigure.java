package lanewarden.station;

import java.util.regex.Pattern;

/** A number that the organizer supposes to plan lanes and samples, with a value to begin with. */
public enum LaneFigure {
  /** How many come. */
  COMPETITORS("120", Form.WHOLE, "write a whole number, 1 or more"),
  /** In which they come. */
  MINUTES("180", Form.NUMBER, "write a number more than zero"),
  /** That a check takes on average, re-checks included. */
  SHOTS(Usual.SHOTS, Form.NUMBER, "write a number more than zero"),
  /** From one shot to the next. */
  SECONDS_A_SHOT(Usual.SECONDS_A_SHOT, Form.NUMBER, "write a number more than zero"),
  /** From one archer to the next. */
  SECONDS_A_CHANGE(Usual.SECONDS_A_CHANGE, Form.NUMBER, "write a number, zero or more"),
  /** That work side by side. */
  LANES(Usual.LANES, Form.WHOLE, "write a whole number, 1 to 100"),
  /** How many of those who come are drawn and checked. */
  DRAWN("120", Form.WHOLE, "write a whole number, zero to all competitors"),
  /** How many of those who come shoot over the limit. */
  OVER_LIMIT(Usual.OVER_LIMIT, Form.WHOLE, "write a whole number, zero to all competitors"),
  /** The chance that a check finds such an archer. */
  CAUGHT(Usual.CAUGHT, Form.SHARE, "write a percentage more than zero, such as 90 %");

  /** What is supposed where nobody says otherwise. */
  public static final class Usual {
    /** Shots of a check. */
    public static final String SHOTS = "4";

    /** Seconds a shot. */
    public static final String SECONDS_A_SHOT = "20";

    /** Seconds between archers. */
    public static final String SECONDS_A_CHANGE = "30";

    /** Lanes. */
    public static final String LANES = "2";

    /** Archers over the limit. */
    public static final String OVER_LIMIT = "2";

    /** Chance to find one of them. */
    public static final String CAUGHT = "90 %";

    private Usual() {}
  }

  private enum Form {
    WHOLE("[0-9]{1,6}"),
    NUMBER("[0-9]{1,6}(\\.[0-9]{1,6})?"),
    SHARE("[0-9]{1,3}(\\.[0-9]{1,12})?\\s*%");

    private final Pattern pattern;

    Form(String pattern) {
      this.pattern = Pattern.compile(pattern);
    }
  }

  private static final char NO_BREAK_SPACE = '\u00a0';

  private static final int HUNDRED = 100;

  private final String start;
  private final Form form;
  private final String mend;

  LaneFigure(String start, Form form, String mend) {
    this.start = start;
    this.form = form;
    this.mend = mend;
  }

  /** The value it has to begin with. */
  public String start() {
    return start;
  }

  /** What to write where no sense could be made of what was written. */
  String mend() {
    return mend;
  }

  /** The number written, a share as a part of one; not a number where it is in another form. */
  double read(String typed) {
    String text = typed.replace(NO_BREAK_SPACE, ' ').strip();
    if (!form.pattern.matcher(text).matches()) {
      return Double.NaN;
    }
    return form == Form.SHARE
        ? Double.parseDouble(text.replace('%', ' ').strip()) / HUNDRED
        : Double.parseDouble(text);
  }

  /** Whether a number makes sense beside so many competitors. */
  boolean allows(double value, double competitors) {
    return switch (this) {
      case COMPETITORS -> value >= 1;
      case MINUTES, SHOTS, SECONDS_A_SHOT -> value > 0;
      case SECONDS_A_CHANGE -> value >= 0;
      case LANES -> value >= 1 && value <= LaneQuestion.MOST_LANES;
      // Where their own number makes no sense, that alone is to be said
      case DRAWN, OVER_LIMIT -> value >= 0 && !(value > competitors);
      case CAUGHT -> value > 0 && value <= 1;
    };
  }
}
