package lanewarden.chronograph;

import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Tries a profile on what an instrument really sends, and says which of its keys do not fit.
 *
 * <p>Take the signals of a listened-to instrument with {@link #take}, shoot three times or more,
 * and ask for {@link #findings}. Memory is bounded: the first {@value #KEPT} bytes are looked at.
 * Safe for use by more than one thread.
 */
public final class ProfileTrial {
  private static final int KEPT = 64 * 1024;

  private final SentenceProfile profile;
  private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
  private final Map<Reason, Integer> refused = new EnumMap<>(Reason.class);
  private int readings;

  public ProfileTrial(SentenceProfile profile) {
    this.profile = profile;
  }

  /** Takes what came. */
  public synchronized void take(Signal signal) {
    if (signal instanceof Signal.Heard heard) {
      readings++;
      keep(heard.reading().raw());
    } else if (signal instanceof Signal.Refused refusal) {
      refused.merge(refusal.refusal().reason(), 1, Integer::sum);
      keep(refusal.refusal().raw());
    }
  }

  private void keep(RawBytes raw) {
    if (bytes.size() + raw.length() <= KEPT) {
      bytes.writeBytes(raw.bytes());
    }
  }

  /** How many readings were heard. */
  public synchronized int readings() {
    return readings;
  }

  /** What is wrong, the cause before its consequences; empty if the profile fits. */
  public synchronized List<Finding> findings() {
    BytesTried tried = BytesTried.of(RawBytes.of(bytes.toByteArray()), profile);
    List<Finding> findings = new ArrayList<>(tried.findings());
    if (tried.readable()) {
      findings.addAll(new LinesTried(profile.form()).findings(tried.lines()));
      repeats(findings);
      gates(findings);
    }
    if (findings.isEmpty() && readings == 0) {
      findings.add(
          new Finding(
              "[line]",
              "Bytes came, but no whole line was heard: shoot at least three times while the trial"
                  + " listens."));
    }
    return findings;
  }

  private void repeats(List<Finding> findings) {
    int repeated = refused.getOrDefault(Reason.REPEATED, 0);
    if (repeated == 0) {
      return;
    }
    boolean numbered = profile.form().pattern().groups().contains("sequence");
    String cause =
        numbered
            ? " lines carried the number of the line before. If they were new shots, the group"
                + " sequence does not hold a number that counts: take it out and give apart_ms."
            : " lines came less than "
                + profile.apart().toMillis()
                + " ms after the last. If the instrument sends each shot more than once, this is"
                + " right; if they were new shots, lower apart_ms.";
    findings.add(
        new Finding(numbered ? "[sentence] pattern" : "[sentence] apart_ms", repeated + cause));
  }

  private void gates(List<Finding> findings) {
    int disagreeing = refused.getOrDefault(Reason.GATES, 0);
    // One may be a misread; most of all are a wrong spacing
    if (disagreeing > readings) {
      findings.add(
          new Finding(
              "[[gate]] spacing",
              disagreeing
                  + " of "
                  + (disagreeing + readings)
                  + " lines carry a speed and gate times that contradict each other. Measure from"
                  + " gate to gate and check what the instrument counts in."));
    }
  }
}
