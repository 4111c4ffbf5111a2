package lanewarden.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lanewarden.bench.PracticeSetUp;
import lanewarden.bench.PracticeShot;
import lanewarden.station.LineView;
import lanewarden.station.PracticeView;

/** Tells in words what changed in a practice from one view to the next, and at the line beside. */
final class PracticeNarration {

  /** A shot with the set-up that it is of. */
  private record Shot(String setUp, PracticeShot shot) {
    Notice told() {
      return Notice.of("shot", "line " + shot.line() + ": " + shot.speed() + ", " + setUp + said())
          .with("line", shot.line())
          .with("speed", shot.speed().toString())
          .with("setUp", setUp)
          .with("misread", shot.word().name().toLowerCase(Locale.ROOT));
    }

    private String said() {
      return switch (shot.word()) {
        case NONE -> "";
        case MISREAD -> ", struck out as a misread";
        case GOOD -> ", counts whatever the tests say";
      };
    }
  }

  private PracticeNarration() {}

  /** How line and practice stand when one comes to them. */
  static List<Notice> of(LineView now) {
    List<Notice> told = new ArrayList<>(Narration.of(now));
    PracticeView practice = now.practice();
    practice.setUp().ifPresent(setUp -> told.add(stated(setUp)));
    told.add(listening(practice));
    practice.file().ifPresent(file -> told.add(file(file)));
    practice.trouble().ifPresent(trouble -> told.add(Narration.trouble(trouble)));
    return told;
  }

  /** What changed. */
  static List<Notice> between(LineView before, LineView now) {
    List<Notice> told = new ArrayList<>(Narration.between(before, now));
    if (before.practice().changes() != now.practice().changes()) {
      told.addAll(between(before.practice(), now.practice()));
    }
    return told;
  }

  private static List<Notice> between(PracticeView before, PracticeView now) {
    List<Notice> told = new ArrayList<>();
    if (!now.setUp().equals(before.setUp())) {
      told.add(
          now.setUp()
              .map(PracticeNarration::stated)
              .orElse(Notice.of("set-up", "none: an empty practice begins")));
    }
    if (now.listening() != before.listening()) {
      told.add(listening(now));
    }
    Map<Integer, Shot> known =
        shots(before).collect(Collectors.toMap(s -> s.shot().line(), s -> s));
    List<Shot> fresh = shots(now).filter(s -> !s.equals(known.get(s.shot().line()))).toList();
    fresh.forEach(shot -> told.add(shot.told()));
    now.file()
        .filter(file -> !now.file().equals(before.file()))
        .ifPresent(file -> told.add(file(file)));
    if (fresh.isEmpty() && told.isEmpty()) {
      now.news()
          .filter(news -> !news.taken())
          .ifPresent(news -> told.add(Notice.of("refused", "Not taken: " + news.words())));
    }
    if (!now.trouble().equals(before.trouble())) {
      told.add(
          now.trouble()
              .map(Narration::trouble)
              .orElse(Notice.of("trouble", "over: every shot is in the file")));
    }
    return told;
  }

  private static Stream<Shot> shots(PracticeView view) {
    return view.practice().stream()
        .flatMap(practice -> practice.series().stream())
        .flatMap(series -> series.shots().stream().map(shot -> new Shot(series.name(), shot)))
        .sorted(Comparator.comparingInt(s -> s.shot().line()));
  }

  /** Every shot so far, in the order in which they came. */
  static List<Notice> listed(PracticeView view) {
    return shots(view).map(Shot::told).toList();
  }

  /** Whether a shot stands on this line. */
  static boolean hasLine(PracticeView view, int line) {
    return shots(view).anyMatch(s -> s.shot().line() == line);
  }

  private static Notice stated(PracticeSetUp setUp) {
    String figures =
        Stream.of(setUp.mass(), setUp.drawWeight(), setUp.drawLength(), setUp.braceHeight())
            .flatMap(Optional::stream)
            .map(String::valueOf)
            .collect(Collectors.joining(", "));
    return Notice.of("set-up", setUp.name() + " is shot now: " + figures)
        .with("bow", setUp.bow())
        .with("arrow", setUp.arrow());
  }

  private static Notice listening(PracticeView view) {
    return Notice.of(
            "readings",
            view.listening()
                ? "come here, and none to the line: nobody can be called"
                : "go to the line; listen brings them here, typed takes one")
        .with("listening", view.listening());
  }

  private static Notice file(Path file) {
    return Notice.of("file", "every shot is in " + file).with("file", file.toString());
  }
}
