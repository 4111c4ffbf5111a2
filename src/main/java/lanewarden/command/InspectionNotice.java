package lanewarden.command;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lanewarden.station.LedgerInspection;

/** What a verification found, for the terminal: in lines, or as the members of a JSON object. */
final class InspectionNotice {

  private InspectionNotice() {}

  static void tell(LedgerInspection found, Terminal terminal) {
    found.station().ifPresent(station -> tell(terminal, "station", station));
    tell(terminal, "entries", Long.toString(found.entries()));
    found.head().ifPresent(head -> tell(terminal, "head", head));
    found.organizer().ifPresent(thumbprint -> tell(terminal, "organizer", thumbprint));
    found.officials().forEach(o -> tell(terminal, "official", o.thumbprint() + "  " + o.name()));
    if (found.compared() > 0) {
      tell(terminal, "heads", found.compared() + " compared with this ledger");
    }
    found.faults().forEach(fault -> tell(terminal, "fault", fault.words()));
    int faults = found.faults().size();
    tell(
        terminal,
        "sound",
        faults == 0
            ? "yes: every signature and every link holds"
            : "NO: " + faults + (faults == 1 ? " fault" : " faults"));
  }

  private static void tell(Terminal terminal, String kind, String words) {
    terminal.result(Notice.of(kind, words).line());
  }

  static Map<String, Object> members(LedgerInspection found) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("sound", found.sound());
    members.put("entries", found.entries());
    found.station().ifPresent(station -> members.put("station", station));
    found.head().ifPresent(head -> members.put("head", head));
    found.organizer().ifPresent(thumbprint -> members.put("organizer", thumbprint));
    members.put(
        "officials",
        found.officials().stream()
            .map(o -> Map.of("name", o.name(), "thumbprint", o.thumbprint()))
            .toList());
    members.put("headsCompared", found.compared());
    members.put("faults", faults(found));
    return members;
  }

  private static List<Map<String, Object>> faults(LedgerInspection found) {
    return found.faults().stream()
        .map(f -> Map.<String, Object>of("entry", f.entry(), "kind", f.kind(), "words", f.words()))
        .toList();
  }
}
