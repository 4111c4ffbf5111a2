package lanewarden.audit.slip;

import java.util.List;
import lanewarden.audit.findings.Finding;
import lanewarden.audit.wording.Wording;

/** A slip that cannot be made or found; says what, why, what to do and a code. */
public final class SlipRefused extends Exception {
  private static final long serialVersionUID = 1L;

  /** Whose fault it is. */
  public enum Nature {
    /** A wrong word or number. */
    USAGE,
    /** The ledger failed its proof. */
    PROOF
  }

  private final Nature nature;
  private final String code;
  private final String what;
  private final String why;
  private final String remedy;

  private SlipRefused(Nature nature, String code, String what, String why, String remedy) {
    super(what + " " + why + " " + remedy);
    this.nature = nature;
    this.code = code;
    this.what = what;
    this.why = why;
    this.remedy = remedy;
  }

  static SlipRefused unsound(int faults) {
    return new SlipRefused(
        Nature.PROOF,
        "SLIP-UNSOUND",
        "The slip was not written.",
        "The ledger is not sound ("
            + Wording.count(faults, "fault")
            + "), so no outcome in it is proved.",
        "Run verify on it and look at what it says.");
  }

  static SlipRefused contradicted(long check, List<Finding> found) {
    return new SlipRefused(
        Nature.PROOF,
        "SLIP-CONTRADICTED",
        "The slip of check " + check + " was not written.",
        "The ledger contradicts itself about this very check: "
            + found.get(0).words()
            + (found.size() > 1 ? " And " + (found.size() - 1) + " more." : ""),
        "Make the report, which tells everything that was found, and let a judge decide: a recheck"
            + " under a protest has a slip of its own.");
  }

  static SlipRefused noCheck(String which) {
    return new SlipRefused(
        Nature.USAGE,
        "SLIP-CHECK",
        "The slip was not written.",
        "The ledger has no check of a bib or name " + which + ", and none numbered so.",
        "Write the bib as it was called, or the number of the check as the report prints it.");
  }

  static SlipRefused several(String which, List<String> competitors) {
    return new SlipRefused(
        Nature.USAGE,
        "SLIP-SEVERAL",
        "The slip was not written.",
        "\"" + which + "\" is in several names: " + String.join(", ", competitors) + ".",
        "Write the bib of the one that is meant.");
  }

  static SlipRefused noCode(String where) {
    return new SlipRefused(
        Nature.USAGE,
        "SLIP-CODE",
        "The slip was not looked up.",
        "No code of a slip was found: " + where,
        "Photograph the code flat, sharp and whole, or type the line beneath it.");
  }

  /** Whose fault it is. */
  public Nature nature() {
    return nature;
  }

  /** The same for every occurrence of its cause. */
  public String code() {
    return code;
  }

  /** What happened. */
  public String what() {
    return what;
  }

  /** Why it happened. */
  public String why() {
    return why;
  }

  /** What to do. */
  public String remedy() {
    return remedy;
  }
}
