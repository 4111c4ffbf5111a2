package lanewarden.audit.findings;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import lanewarden.audit.wording.Wording;
import lanewarden.journal.FrameFact;
import lanewarden.ledger.Entry;

/**
 * The practice days that were kept with the event.
 *
 * <p>Owned by one thread until it is full; then only read.
 */
public final class Practices {
  private final List<Kept> all = new ArrayList<>();

  private record Kept(long entry, Instant at, String signer, FrameFact.PracticeKept fact) {}

  /** A practice day that was kept with the event, in words. */
  public record Day(
      String entry, String title, String file, String sha256, String time, String official) {}

  void add(Entry entry, FrameFact.PracticeKept kept) {
    all.add(new Kept(entry.sequence(), entry.at(), entry.signer(), kept));
  }

  /**
   * A line each, in the order of the ledger.
   *
   * @param names by thumbprint
   */
  public List<Day> pages(Map<String, String> names) {
    return all.stream()
        .map(
            kept ->
                new Day(
                    String.valueOf(kept.entry()),
                    kept.fact().title(),
                    kept.fact().file(),
                    kept.fact().sha256(),
                    Wording.time(kept.at()),
                    names.getOrDefault(kept.signer(), kept.signer())))
        .toList();
  }
}
