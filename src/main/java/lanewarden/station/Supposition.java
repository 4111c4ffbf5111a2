package lanewarden.station;

import lanewarden.bench.ShotScatter;

/** Something that a rule's effect supposes and no rule says, with a value to begin with. */
public enum Supposition {
  /** From one arrow of an archer to the next, a standard deviation. */
  ARROWS(Usual.ARROWS),
  /** The instrument's uncertainty that is new with each reading. */
  READING(Usual.READING),
  /** The instrument's uncertainty that all readings share. */
  CALIBRATION(Usual.CALIBRATION),
  /** Shots that give no reading that stands. */
  VOIDS(Usual.VOIDS),
  /** How far over the limit an archer is who should fail. */
  EXCESS(Usual.EXCESS),
  /** Mass of the arrow; left blank, an ordinary one, or one so light that the limit applies. */
  ARROW(Usual.ARROW),
  /** Draw weight as set. */
  DRAW(Usual.DRAW),
  /** Draw weight as certified. */
  CERTIFIED(Usual.DRAW);

  /** What is supposed where nobody says otherwise. */
  public static final class Usual {
    /** Scatter of an archer's arrows. */
    public static final String ARROWS = ShotScatter.USUAL;

    /** The instrument's, new with each reading. */
    public static final String READING = "0.5 ft/s";

    /** The instrument's, shared by all readings. */
    public static final String CALIBRATION = "1 ft/s";

    /** Void shots. */
    public static final String VOIDS = "5 %";

    /** Over the limit by. */
    public static final String EXCESS = "5 ft/s";

    /** The arrow's mass. */
    public static final String ARROW = "400 gr";

    /** The bow's draw weight, set and certified. */
    public static final String DRAW = "50 lbf";

    private Usual() {}
  }

  private final String start;

  Supposition(String start) {
    this.start = start;
  }

  /** The value it has to begin with. */
  public String start() {
    return start;
  }
}
