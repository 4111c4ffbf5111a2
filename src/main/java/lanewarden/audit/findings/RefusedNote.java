package lanewarden.audit.findings;

import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lanewarden.audit.findings.Finding.Kind;
import lanewarden.audit.wording.Wording;
import lanewarden.journal.Fact;
import lanewarden.journal.Flood;
import lanewarden.journal.Standing;
import lanewarden.journal.Untimely;

/**
 * What is told of a refused line, rightly refused or not: its reason, its bytes, and the speed that
 * they say.
 */
final class RefusedNote {
  /** Reasons that rest on what came before, not on the bytes. */
  private static final Set<String> BY_WHAT_CAME_BEFORE =
      Set.of(Untimely.REPEATED.word(), "torn", "overlong");

  private RefusedNote() {}

  /**
   * The finding.
   *
   * @param says the speed that its bytes say, in words
   * @param unseen whether lines just before it were only counted
   */
  static Finding of(
      long entry, Fact.LineRefused line, Standing standing, Optional<String> says, boolean unseen) {
    boolean open = unseen && says.isPresent() && BY_WHAT_CAME_BEFORE.contains(line.reason());
    return new Finding(
        Kind.LINE_REFUSED,
        List.of(entry),
        where(line, standing)
            + ", "
            + line.source()
            + ": "
            + line.reason()
            + ". "
            + line.words()
            + says.map(speed -> " Its bytes say " + speed + ".").orElse("")
            + (open
                ? " Lines just before it were only counted, so nothing shows whether it was refused"
                    + " rightly."
                : "")
            + " Bytes: "
            + bytes(line.raw()),
        Flood.lines(line));
  }

  private static String where(Fact.LineRefused line, Standing standing) {
    return line.check() == null
        ? standing
            .verification()
            .map(round -> "During verification " + round.number())
            .orElse("No check was running")
        : "Check " + line.check();
  }

  private static String bytes(String base64) {
    try {
      return Wording.bytes(Base64.getDecoder().decode(base64));
    } catch (IllegalArgumentException notBase64) {
      return Wording.quoted(base64) + " (not base64)";
    }
  }
}
