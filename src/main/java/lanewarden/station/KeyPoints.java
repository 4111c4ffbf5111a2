package lanewarden.station;

import java.nio.file.Files;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import lanewarden.ledger.Enrolled;
import lanewarden.ledger.KeyLabel;
import lanewarden.station.SelfCheck.Point;
import lanewarden.station.SelfCheck.State;
import lanewarden.station.SelfCheck.Subject;

/** What a check-up finds about the keys of an event: how many there are, never whose. */
final class KeyPoints {

  private KeyPoints() {}

  /** The organizer's key should lie elsewhere: who has the laptop should not have it too. */
  static Point organizer(EventFolder folder) {
    if (!Files.exists(folder.organizerKey())) {
      return Point.good(
          Subject.ORGANIZER_KEY, "It does not lie in the event's folder, as it should be.", "");
    }
    return new Point(
        Subject.ORGANIZER_KEY,
        State.ATTENTION,
        "It lies in the event's folder, though the station does not need it.",
        folder.organizerKey().toString(),
        "Move it to a safe place once the officials are enrolled. Whoever has it and its passphrase"
            + " could write the whole ledger anew.");
  }

  /**
   * Who can sign here: enrolled, not suspended, and with a key in the folder.
   *
   * @param signers who may sign, as the ledger has them
   */
  static List<Point> officials(EventFolder folder, List<Enrolled> signers) {
    List<KeyLabel> keys;
    try {
      keys = folder.keys().labels();
    } catch (StationException e) {
      return List.of(Point.unread(Subject.OFFICIALS, "A key", e.trouble()));
    }
    Set<String> here = keys.stream().map(KeyLabel::thumbprint).collect(Collectors.toSet());
    long able = signers.stream().filter(one -> here.contains(one.thumbprint())).count();
    long away = signers.size() - able;
    String found = able + " can sign here" + (away == 0 ? "." : ", " + away + " have no key here.");
    Point officials =
        able == 0
            ? new Point(
                Subject.OFFICIALS,
                State.WRONG,
                found,
                "",
                "Have the organizer enrol an official, or bring the key files back into the"
                    + " folder of the keys.")
            : Point.good(Subject.OFFICIALS, found, "");
    return List.of(officials, judge(signers));
  }

  private static Point judge(List<Enrolled> signers) {
    long judges = signers.stream().filter(Enrolled::isJudge).count();
    return judges > 0
        ? Point.good(Subject.JUDGE, judges + (judges == 1 ? " is named." : " are named."), "")
        : new Point(
            Subject.JUDGE,
            State.ATTENTION,
            "None is named: protests can be taken down, but nobody can rule on them here.",
            "",
            "Have the organizer enrol a judge, before there is a protest.");
  }
}
