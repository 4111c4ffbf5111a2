package lanewarden.command;

/** The words that are typed while set-ups are shot beside each other. */
enum PracticeWord implements SessionWord {
  /** States which bow and arrow is shot. */
  SETUP(
      "BOW; ARROW[; FIGURES]",
      "shoot this bow and arrow from now on, each figure behind its word, once:"
          + " setup Heron; light; mass 352.5; draw 60; length 29; brace 7; rated 330, 70, 30, 350"),
  /** The instrument's readings come here. */
  LISTEN("", "let the instrument's readings come here, and none to the line"),
  /** They go to the line again. */
  REST("", "give the instrument's readings back to the line"),
  /** Takes a reading from the instrument's display. */
  TYPED("SPEED", "take a reading that you type, such as: typed 301.2 or typed 88.4 m/s"),
  /** Strikes a shot out. */
  MISREAD("LINE", "strike the shot on this line of the file out: it is a misread"),
  /** Lets a shot count. */
  GOOD("LINE", "let it count, however far it lies from the others"),
  /** Takes back what was said. */
  TESTS("LINE", "let the tests say again whether it is a misread"),
  /** Lists the shots. */
  SHOTS("", "list every shot with its line"),
  /** Compares. */
  COMPARE("", "say what the shots show, against the limits of the rule book in force"),
  /** Goes on with a file. */
  OPEN("FILE", "go on with a file of shots, which itself stays as it is"),
  /** Begins anew. */
  NEW("", "begin an empty practice; what was shot stays in its file"),
  /** Writes the shots. */
  WRITE("FILE", "write the shots to a new CSV file, to open or compare again"),
  /** Writes the table. */
  TABLE("FILE", "write the table of set-ups to a new CSV file"),
  /** Writes the paper. */
  PAPER("FILE", "write tables and pictures to a new PDF"),
  /** Keeps it in the ledger. */
  KEEP(
      "TITLE [by OFFICIAL]",
      "sign every shot into the ledger; a script's next line is the passphrase, if nobody is on"
          + " duty"),
  /** An official comes on duty. */
  IN("NAME", "sign in, to stop the line or keep; a script's next line is the passphrase"),
  /** The line is stopped for safety. */
  STOP("[REASON]", "stop the line, it is not clear: no reading is taken, here neither"),
  /** The line is clear again. */
  CLEAR("", "say that the line is clear again, once the range officer has cleared it"),
  /** Tells how it stands. */
  STATUS("", "tell again how line and practice stand"),
  /** Waits. */
  WAIT("", "wait until a minute is quiet; for scripts"),
  /** Leaves. */
  OUT("", "leave; the shots stay in their file"),
  /** Lists the words. */
  HELP("", "list these words");

  private final String after;
  private final String meaning;

  PracticeWord(String after, String meaning) {
    this.after = after;
    this.meaning = meaning;
  }

  @Override
  public String after() {
    return after;
  }

  @Override
  public String meaning() {
    return meaning;
  }

  @Override
  public boolean asksPassphrase() {
    return this == KEEP || this == IN;
  }

  /** All words, a line each. */
  static String list() {
    return SessionWord.list(values());
  }
}
