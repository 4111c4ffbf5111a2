package lanewarden.command;

/** The words that an official types at the line. */
enum LineWord implements SessionWord {
  /** Calls a competitor whose name begins with one of these words. */
  CALL("BIB-OR-NAME [because WHY]", "call somebody; a bare bib does too: 101 because another bow"),
  /** States bow and arrow. */
  SETUP(
      "FIGURES",
      "state bow and arrow: setup arrow 352.5, draw 60, certified 62, length 29, brace 7"),
  /** Ticks conditions. */
  TICK("[NUMBER]", "tick every condition of the rule, or the one with this number"),
  /** Takes a reading from the instrument's display. */
  TYPED("SPEED", "take a reading that you type, such as: typed 301.2 or typed 88.4 m/s"),
  /** Declares a reading void. */
  VOID("[#SHOT] REASON", "declare the last reading void, or that of a shot: void #2 glare"),
  /** Lets a reading in doubt count. */
  KEEP("[#SHOT] REASON", "let the first reading in doubt count, or that of a shot"),
  /** The competitor leaves. */
  NEXT("", "the competitor leaves the line after a verdict"),
  /** Ends the check. */
  END("REASON", "end the check without a verdict"),
  /** Tells how it stands. */
  STATUS("", "tell again how the line stands"),
  /** What came from the instrument. */
  WIRE("", "show what the instrument said lately, byte for byte, and whether it fits its profile"),
  /** Waits. */
  WAIT("", "wait until the check is decided or a minute is quiet; for scripts"),
  /** Writes what waits. */
  RETRY("", "write again what could not be written, as after a full disk"),
  /** The official leaves. */
  OUT("", "sign out and leave; a running check stays at the line"),
  /** The line closes. */
  CLOSE("[because WHY]", "close the line for today, sign out and leave; why, if not verified"),
  /** The instrument is verified. */
  PROVE("", "begin a verification: the next shots go through instrument and reference"),
  /** What the second instrument shows. */
  REFERENCE("SPEED", "type what the second instrument shows of the last shot of a verification"),
  /** The verification ends early. */
  BREAK("REASON", "break the verification off; if its shots are out already, the line is held"),
  /** The line is held. */
  HOLD("REASON", "hold the line for a doubt about the instrument: no calls, no verdicts"),
  /** The line is stopped for safety. */
  STOP("[REASON]", "stop the line, it is not clear: no reading, no calls; the check stays"),
  /** The line is clear again. */
  CLEAR("", "say that the line is clear again, once the range officer has cleared it"),
  /** A hold is lifted. */
  LIFT("REASON", "lift a hold that was put on by hand; else only a good verification does"),
  /** Somebody disputes a check. */
  PROTEST(
      "CHECK [as OCCASION] by WHO because WHY",
      "take down a protest, or as spot check, re-test, referral"),
  /** A check in dispute is shot again. */
  RECHECK("PROTEST", "call the archer of a protest: the recheck stands beside the check"),
  /** A judge rules. */
  RULE(
      "PROTEST upheld|dismissed CHECK: CONSEQUENCE because WHY",
      "a judge on duty rules, and says which check counts"),
  /** Something was written down wrongly. */
  CORRECT("CHECK bib|division|#SHOT RIGHT because WHY", "correct what was written down wrongly"),
  /** A second person confirms. */
  CONFIRM("CORRECTION", "confirm somebody else's correction; only then is it in effect"),
  /** Another phase of the event begins. */
  PHASE("WORD [because WHY]", "begin a phase: before, during, after; back only with a reason"),
  /** Somebody enters late. */
  LATE("BIB DIVISION NAME", "put somebody on the roster who entered late"),
  /** Draws who is to be checked. */
  DRAW("DIVISION SEED", "draw a division's random share from digits thrown before witnesses"),
  /** Puts the changed rule book in force. */
  ADOPT("REASON", "put the changed rule book in force; a script's next line is the passphrase"),
  /** An official comes on duty. */
  IN("NAME", "sign in, in place of who is on duty; a script's next line is the passphrase"),
  /** Enrols an official. */
  ENROL(
      "NAME [as judge]",
      "enrol an official; a script's next lines are the organizer's passphrase and the new one"),
  /** Suspends an official. */
  SUSPEND("NAME because WHY", "suspend an official; a script's next line is the passphrase"),
  /** An official gets a new key. */
  REPLACE(
      "NAME because WHY",
      "suspend the official's key and make a new one; a script's next lines as with enrol"),
  /** A suspended official may sign again. */
  READMIT("NAME", "let a suspended official sign again; a script's next line is the passphrase"),
  /** Makes the seal of reports. */
  SEAL("", "make the key that seals reports; a script's next line is the passphrase"),
  /** Signs another station's head. */
  WITNESS("STATION SEQ-HASH", "sign the head of another station's ledger, as printed there"),
  /** Lists the words. */
  HELP("", "list these words");

  private final String after;
  private final String meaning;

  LineWord(String after, String meaning) {
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
    return switch (this) {
      case ADOPT, IN, ENROL, SUSPEND, REPLACE, READMIT, SEAL -> true;
      default -> false;
    };
  }

  /** All words, a line each. */
  static String list() {
    return SessionWord.list(values());
  }
}
