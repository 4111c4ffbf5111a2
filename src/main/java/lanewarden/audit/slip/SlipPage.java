package lanewarden.audit.slip;

import java.util.List;
import lanewarden.audit.wording.CheckRow;
import lanewarden.audit.wording.OutcomeMark;

/**
 * Everything that a slip shows; texts are not escaped yet.
 *
 * @param limit of the division, with what is allowed
 * @param arrow mass as stated, or that it was not weighed
 * @param bow as stated, or nothing
 * @param follows what follows the outcome, or nothing
 * @param inQuestion whether the line was held since, so that the outcome counts for nothing
 * @param disputes a sentence for each protest that the check has a part in: what was ruled, and the
 *     outcomes of both checks
 * @param advice what would bring the set-up inside, a paragraph each with its cautions last; empty
 *     where there is none
 * @param made when the slip was made
 * @param head the ledger's last entry when it was made
 * @param code the square code, in SVG
 * @param codeText what the code says
 */
record SlipPage(
    String event,
    String station,
    String bib,
    String division,
    int attempt,
    long check,
    OutcomeMark outcome,
    String reason,
    String follows,
    boolean inQuestion,
    List<String> disputes,
    String limit,
    List<CheckRow.Reading> readings,
    String arrow,
    String bow,
    String official,
    String time,
    List<String> advice,
    String made,
    String head,
    String code,
    String codeText) {}
