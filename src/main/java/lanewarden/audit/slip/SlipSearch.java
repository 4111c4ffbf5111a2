package lanewarden.audit.slip;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanewarden.audit.findings.Evidence;
import lanewarden.audit.findings.LedgerFold;
import lanewarden.audit.press.Announcer;
import lanewarden.audit.wording.CheckRow;
import lanewarden.audit.wording.OutcomeMark;
import lanewarden.audit.wording.Wording;
import lanewarden.journal.Check;
import lanewarden.journal.FactRefused;
import lanewarden.journal.Interpreter;
import lanewarden.journal.Standing;
import lanewarden.ledger.Examined;
import lanewarden.ledger.LedgerException;
import lanewarden.ledger.LedgerFault;
import lanewarden.ledger.Verification;
import org.jspecify.annotations.Nullable;

/**
 * Looks up in a ledger what a slip's code names, and compares then with now.
 *
 * <p>Owned by one thread.
 */
public final class SlipSearch {
  private final SlipText slip;
  private final Standing standing = new Standing();
  private final List<String> troubles = new ArrayList<>();
  private @Nullable String then;

  private SlipSearch(SlipText slip) {
    this.slip = slip;
  }

  /**
   * What became of a slip.
   *
   * @param check its number
   * @param bib whose check it is; empty where the ledger has no such check
   * @param printed the outcome when the slip was printed; empty where that cannot be told
   * @param now the outcome that stands; empty where the ledger has no such check
   * @param troubles why the slip and this ledger do not fit together; none where they do
   */
  public record Found(
      long check,
      Optional<String> bib,
      Optional<String> printed,
      Optional<String> now,
      List<String> troubles) {
    /** Copies the list. */
    public Found {
      troubles = List.copyOf(troubles);
    }

    /** Whether the slip is this ledger's, and what it says still stands. */
    public boolean stands() {
      return troubles.isEmpty() && printed.isPresent() && printed.equals(now);
    }
  }

  /**
   * Looks a slip up.
   *
   * @param textOrPicture what a scanner read from the code, or the file of a picture of it
   * @param interpreter reads anew what instruments sent
   * @throws SlipRefused if neither holds the code of a slip
   * @throws LedgerException if the file cannot be read as a ledger at all
   * @throws IOException if the picture cannot be read
   */
  public static Found find(Path ledgerFile, String textOrPicture, Interpreter interpreter)
      throws SlipRefused, LedgerException, IOException {
    SlipText slip = read(textOrPicture);
    SlipSearch search = new SlipSearch(slip);
    LedgerFold fold = new LedgerFold(interpreter, new Announcer(step -> {}), 0);
    Verification found =
        Verification.of(ledgerFile, List.of(slip.head()), fold.andThen(search::take));
    return search.compare(found, fold.finish(found));
  }

  private static SlipText read(String textOrPicture) throws SlipRefused, IOException {
    Optional<Path> picture = picture(textOrPicture);
    String text = textOrPicture;
    if (picture.isPresent()) {
      text =
          SquareCode.read(picture.get())
              .orElseThrow(
                  () -> SlipRefused.noCode("the picture " + textOrPicture + " shows none."));
    }
    try {
      return SlipText.parse(text);
    } catch (IllegalArgumentException e) {
      throw SlipRefused.noCode(String.valueOf(e.getMessage()));
    }
  }

  private static Optional<Path> picture(String text) {
    try {
      return Optional.of(Path.of(text)).filter(Files::isRegularFile);
    } catch (InvalidPathException noPath) {
      return Optional.empty();
    }
  }

  private void take(Examined examined) {
    try {
      standing.apply(examined.entry());
    } catch (FactRefused e) {
      troubles.add(String.valueOf(e.getMessage()));
    }
    if (examined.entry().sequence() == slip.head().sequence()) {
      then = check().map(this::words).orElse(null);
    }
  }

  private Optional<Check> check() {
    return standing.checks().stream().filter(c -> c.number() == slip.check()).findFirst();
  }

  private Found compare(Verification found, Evidence evidence) {
    found.faults().stream().map(LedgerFault::words).forEach(troubles::add);
    if (!found.station().equals(Optional.of(slip.station()))) {
      troubles.add(
          "The slip is of the station "
              + Wording.quoted(slip.station())
              + ", the ledger of "
              + found.station().map(Wording::quoted).orElse("none that can be read")
              + ".");
    }
    Optional<Check> now = check();
    if (now.isEmpty()) {
      troubles.add("The ledger has no check " + slip.check() + ".");
    } else if (then == null && found.faults().isEmpty()) {
      troubles.add(
          "The slip cannot be genuine: at the head "
              + slip.head()
              + " that it bears, there was no check "
              + slip.check()
              + " yet.");
    }
    now.map(evidence::contradictions).orElseGet(List::of).stream()
        .map(one -> "The ledger contradicts itself about this very check: " + one.words())
        .forEach(troubles::add);
    return new Found(
        slip.check(),
        now.map(c -> c.opened().bib()),
        Optional.ofNullable(then),
        now.map(this::words),
        troubles);
  }

  /**
   * What a slip prints that may change later: whose check it is, its outcome with the reason, and
   * which check counts in its place by a judge's ruling.
   */
  private String words(Check check) {
    Optional<Long> instead = standing.docket().instead(check.number());
    OutcomeMark mark = OutcomeMark.of(check);
    return (instead.isPresent() ? mark.overruled() : mark).word()
        + " ("
        + CheckRow.reason(check)
        + "), bib "
        + check.opened().bib()
        + ", "
        + check.opened().division()
        + instead.map(counts -> "; check " + counts + " counts").orElse("");
  }
}
