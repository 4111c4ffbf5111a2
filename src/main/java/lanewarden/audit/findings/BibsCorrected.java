package lanewarden.audit.findings;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lanewarden.audit.wording.Wording;
import lanewarden.journal.Check;

/**
 * Lets what was found about a check name the bib that counts, once a correction took effect.
 *
 * <p>Owned by one thread.
 */
final class BibsCorrected {
  private static final String END = ")";
  private static final String MORE = ";";

  private final List<Finding> findings;
  private final Map<Long, Check> known = new HashMap<>();

  BibsCorrected(List<Finding> findings) {
    this.findings = findings;
  }

  /** Notes whose a check is until further notice. */
  void opened(Check check) {
    known.put(check.number(), check);
  }

  /** A correction took effect with this entry: what was found before names the former bib too. */
  void corrected(long entry, Check now) {
    Check before = known.put(now.number(), now);
    if (before == null || before.opened().bib().equals(now.opened().bib())) {
      return;
    }
    String former = begun(before);
    String right = begun(now) + "; until entry " + entry + " bib " + before.opened().bib();
    findings.replaceAll(
        found ->
            new Finding(
                found.kind(),
                found.entries(),
                found
                    .words()
                    .replace(former + END, right + END)
                    .replace(former + MORE, right + MORE),
                found.times()));
  }

  private static String begun(Check check) {
    String words = Wording.check(check);
    return words.substring(0, words.length() - END.length());
  }
}
