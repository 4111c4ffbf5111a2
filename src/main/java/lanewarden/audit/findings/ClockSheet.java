package lanewarden.audit.findings;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lanewarden.audit.wording.Wording;

/**
 * How far the station's clock can be trusted, for the report.
 *
 * @param sentences in words, one a line
 */
public record ClockSheet(List<String> sentences) {

  /** Copies the list. */
  public ClockSheet {
    sentences = List.copyOf(sentences);
  }

  static ClockSheet of(List<ClockExaminer.Opening> openings, Optional<Instant> latest) {
    if (openings.isEmpty() || latest.isEmpty()) {
      return new ClockSheet(List.of("No entry could be read, so nothing is known of the clock."));
    }
    List<String> sentences = new ArrayList<>();
    sentences.add(
        "The ledger was open for writing "
            + Wording.count(openings.size(), "time")
            + ". While it was, each entry holds two times: that of the computer’s clock, and the"
            + " seconds since opening by a clock that cannot be set.");
    sentences.add(steps(openings));
    sentences.add(drift(openings));
    sentences.add(order(openings));
    sentences.add(
        "While the ledger was closed nothing watched the clock, and a clock that was wrong all the"
            + " time shows nowhere. The order of the entries does not rest on it: each entry holds"
            + " the hash of the one before.");
    return new ClockSheet(sentences);
  }

  private static String steps(List<ClockExaminer.Opening> openings) {
    ClockExaminer.Step largest =
        openings.stream()
            .map(ClockExaminer.Opening::largest)
            .max(Comparator.comparing(step -> step.by().abs()))
            .orElseThrow();
    return largest.by().isZero()
        ? "The two never jumped apart by more than 2 s: nobody set the clock while the ledger was"
            + " open."
        : "The largest step: at entry "
            + largest.entry()
            + " the clock "
            + ClockExaminer.jumped(largest.by())
            + ". Times on its two sides cannot be compared without that.";
  }

  private static String drift(List<ClockExaminer.Opening> openings) {
    Duration most =
        openings.stream()
            .map(opening -> opening.drift().abs())
            .max(Comparator.naturalOrder())
            .orElseThrow();
    return "Apart from steps, they drifted apart by at most "
        + ClockExaminer.inSeconds(most)
        + " within one opening.";
  }

  private static String order(List<ClockExaminer.Opening> openings) {
    List<Long> back =
        openings.stream()
            .filter(ClockExaminer.Opening::isBack)
            .map(ClockExaminer.Opening::entry)
            .toList();
    return back.isEmpty()
        ? "No opening began earlier, by the clock, than the last entry before it."
        : "By the clock, what was opened with "
            + (back.size() == 1 ? "entry " : "entries ")
            + Wording.numbers(back)
            + " began earlier than an entry before it: the clock was set back while the ledger was"
            + " closed.";
  }
}
