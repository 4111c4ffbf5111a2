package lanewarden.audit.slip;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import lanewarden.audit.findings.Evidence;
import lanewarden.audit.findings.Finding;
import lanewarden.audit.findings.LedgerFold;
import lanewarden.audit.press.Announcer;
import lanewarden.audit.press.Destination;
import lanewarden.audit.press.Ink;
import lanewarden.audit.press.Press;
import lanewarden.audit.press.Template;
import lanewarden.audit.press.Typefaces;
import lanewarden.audit.wording.CheckRow;
import lanewarden.audit.wording.OutcomeMark;
import lanewarden.audit.wording.ProtestSheet;
import lanewarden.audit.wording.Wording;
import lanewarden.bench.Advice;
import lanewarden.journal.Check;
import lanewarden.journal.CheckSought;
import lanewarden.journal.Interpreter;
import lanewarden.ledger.Head;
import lanewarden.ledger.LedgerException;
import lanewarden.ledger.Verification;
import lanewarden.rules.RuleBook;

/**
 * Slips: one check on a small sheet, for the archer or the bow.
 *
 * <p>A slip says what the ledger says and nothing else; its code leads back to the ledger. May be
 * used again and by any thread; a single call stays on its caller's thread.
 */
public final class Slips {
  private static final int CODE_MILLIMETRES = 34;

  private final Clock clock;
  private final Interpreter interpreter;

  /**
   * @param clock for the time a slip was made
   * @param interpreter reads anew what instruments sent
   */
  public Slips(Clock clock, Interpreter interpreter) {
    this.clock = clock;
    this.interpreter = interpreter;
  }

  /**
   * A slip that was written.
   *
   * @param check the number of its check
   * @param outcome as printed, in a word
   * @param text what its code says
   */
  public record Written(long check, String outcome, String text) {}

  /**
   * Writes the slip of a check.
   *
   * @param ledgerFile only read
   * @param which names it as {@link CheckSought} takes it; of a bib the last check is meant
   * @param pdf its folder must be there; the file appears whole or not at all
   * @throws LedgerException if the file cannot be read as a ledger at all
   * @throws SlipRefused if the ledger is not sound, contradicts itself about the check, or has no
   *     such check
   * @throws IOException if the slip cannot be written
   */
  public Written write(Path ledgerFile, String which, Path pdf)
      throws LedgerException, SlipRefused, IOException {
    Destination destination = Destination.of(pdf, ledgerFile);
    Announcer nobody = new Announcer(step -> {});
    LedgerFold fold = new LedgerFold(interpreter, nobody, 0);
    Verification verification = Verification.of(ledgerFile, List.of(), fold);
    Evidence evidence = fold.finish(verification);
    if (!verification.sound()) {
      throw SlipRefused.unsound(verification.faults().size());
    }
    List<String> several = new CheckSought(which).several(evidence.standing());
    if (!several.isEmpty()) {
      throw SlipRefused.several(which, several);
    }
    Check check = find(evidence, which).orElseThrow(() -> SlipRefused.noCheck(which));
    // A slip sticks to a bow, and whoever looks at it reads the outcome and no more: beside a clean
    // pass no warning is large enough, so there is no slip of what the ledger itself contradicts.
    List<Finding> against = evidence.contradictions(check);
    if (!against.isEmpty()) {
      throw SlipRefused.contradicted(check.number(), against);
    }
    // A sound ledger with a check has a station and a head.
    Head head = verification.head().orElseThrow();
    SlipText text =
        new SlipText(verification.station().orElseThrow(), check.number(), head.printed());
    Instant made = clock.instant();
    destination.deliver(
        out -> {
          try (Typefaces faces = Typefaces.open();
              OutputStream buffered = new BufferedOutputStream(out)) {
            Ink ink = faces.ink();
            String html =
                new Template(Slips.class, "slip", ink).fill(page(evidence, check, text, made, ink));
            new Press(Slips.class, nobody, 0, Announcer.WHOLE)
                .print(html, faces, made, List.of(), buffered);
          }
        });
    return new Written(check.number(), OutcomeMark.of(check).word(), text.toString());
  }

  /** The only one of that number, or the last of that bib or name. */
  private static Optional<Check> find(Evidence evidence, String which) {
    return new CheckSought(which)
        .among(evidence.standing()).stream().reduce((earlier, later) -> later);
  }

  /** Reckoned from what the ledger says, and no part of it. */
  private static List<String> advice(Evidence evidence, Check check) {
    return evidence
        .division(check)
        .flatMap(division -> check.overrun(division.rule()))
        .map(Advice::on)
        .map(Advice::paragraphs)
        .orElse(List.of());
  }

  private static SlipPage page(
      Evidence evidence, Check check, SlipText text, Instant made, Ink ink) {
    CheckRow row = evidence.row(check);
    return new SlipPage(
        evidence
            .standing()
            .ruleBook(check.ruleBook())
            .map(RuleBook::event)
            .orElse("Event without a rule book"),
        text.station(),
        row.bib(),
        evidence.division(check).map(d -> d.code() + " " + d.name()).orElse(row.division()),
        row.attempt(),
        row.number(),
        evidence.standing().docket().instead(check.number()).isPresent()
            ? row.outcome().overruled()
            : row.outcome(),
        row.reason(),
        row.follows(),
        check.inQuestion(),
        ProtestSheet.onSlip(evidence.standing(), check),
        evidence.division(check).map(Wording::limit).orElse("no rule"),
        row.readings(),
        row.arrow(),
        row.bow(),
        row.official(),
        Wording.time(check.verdict().map(Check.GivenVerdict::at).orElse(check.at())),
        advice(evidence, check),
        Wording.time(made),
        text.head().toString(),
        SquareCode.svg(
            text.toString(), CODE_MILLIMETRES, ink.escape("Square code that says " + text)),
        text.toString());
  }
}
