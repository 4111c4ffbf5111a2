package lanewarden.command;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import lanewarden.audit.AuditSummary;
import lanewarden.audit.findings.Finding;
import lanewarden.audit.wording.Wording;
import lanewarden.journal.Outcome;

/** What an audit found, for the terminal: in lines, or as the members of a JSON object. */
final class AuditNotice {

  private AuditNotice() {}

  static void tell(AuditSummary found, Terminal terminal) {
    tell(terminal, "entries", Long.toString(found.entries()));
    tell(terminal, "checks", checks(found));
    tell(terminal, "checked", Wording.count(found.competitors(), "competitor"));
    found.wrong().forEach(fault -> tell(terminal, "fault", fault.words()));
    found.findings().forEach(finding -> tell(terminal, kind(finding), words(finding)));
    int contradictions = found.contradictions().size();
    tell(
        terminal,
        "follows",
        contradictions == 0
            ? "yes: every verdict follows, nothing contradicts the rules"
            : "NO: " + Wording.count(contradictions, "contradiction") + " to the rules");
    tell(
        terminal,
        "sound",
        found.sound()
            ? "yes: every signature and every link holds"
            : "NO: " + Wording.count(found.faults().size(), "fault"));
  }

  private static void tell(Terminal terminal, String kind, String words) {
    terminal.result(Notice.of(kind, words).line());
  }

  private static String kind(Finding finding) {
    return finding.isContradiction() ? "CONTRADICTION" : "finding";
  }

  private static String words(Finding finding) {
    return finding.heading()
        + ". "
        + finding.words()
        + (finding.entries().isEmpty() ? "" : entries(finding.entries()));
  }

  private static String entries(List<Long> numbers) {
    return (numbers.size() == 1 ? " Entry " : " Entries ")
        + numbers.stream().map(String::valueOf).collect(Collectors.joining(", "));
  }

  private static String checks(AuditSummary found) {
    StringBuilder words = new StringBuilder().append(found.checks()).append(':');
    for (Outcome outcome : Outcome.values()) {
      int count = found.outcomes().getOrDefault(outcome, 0);
      if (count > 0) {
        words.append(' ').append(count).append(' ').append(outcome.word()).append(',');
      }
    }
    words.append(' ').append(found.withoutVerdict()).append(" without a verdict");
    if (found.inQuestion() > 0) {
      words.append(", ").append(found.inQuestion()).append(" in question");
    }
    return words.toString();
  }

  static Map<String, Object> members(AuditSummary found) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("sound", found.sound());
    members.put("contradictions", found.contradictions().size());
    members.put("entries", found.entries());
    members.put("checks", found.checks());
    members.put("competitorsChecked", found.competitors());
    for (Outcome outcome : Outcome.values()) {
      members.put(outcome.word(), found.outcomes().getOrDefault(outcome, 0));
    }
    members.put("without a verdict", found.withoutVerdict());
    members.put("in question", found.inQuestion());
    members.put("faults", found.wrong().stream().map(AuditNotice::members).toList());
    members.put("findings", found.findings().stream().map(AuditNotice::members).toList());
    return members;
  }

  private static Map<String, Object> members(AuditSummary.Wrong fault) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("entry", fault.entry());
    members.put("kind", fault.kind());
    members.put("words", fault.words());
    return members;
  }

  private static Map<String, Object> members(Finding finding) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("contradiction", finding.isContradiction());
    members.put("heading", finding.heading());
    members.put("words", finding.words());
    members.put("entries", finding.entries());
    return members;
  }
}
