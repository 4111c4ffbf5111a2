package lanewarden.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanewarden.journal.Check;
import lanewarden.quantity.Mass;
import lanewarden.quantity.Quantity;
import lanewarden.rules.SetUp;
import lanewarden.station.CheckView;
import org.jspecify.annotations.Nullable;

/** Tells what is stated and ticked for a check, and what it waits for. */
final class Preparation {

  private Preparation() {}

  /** What was stated and ticked since; of a check that was not seen before, all of it. */
  static List<Notice> between(Optional<CheckView> before, CheckView now) {
    List<Notice> told = new ArrayList<>();
    String grounds = now.check().opened().grounds();
    if (before.isEmpty() && grounds != null) {
      told.add(Notice.of("grounds", grounds).with("check", now.check().number()));
    }
    SetUp known = before.map(CheckView::check).map(Check::setUp).orElseGet(SetUp::unknown);
    boolean asked = !now.division().rule().figuresAsked().isEmpty();
    if (!known.equals(now.check().setUp()) || (before.isEmpty() && asked)) {
      told.add(setUp(now.check()));
    }
    if (!now.leastArrow().equals(before.flatMap(CheckView::leastArrow))) {
      now.leastArrow().ifPresent(mass -> told.add(least(mass, now.check())));
    }
    now.division().rule().conditions().stream()
        .filter(now.check().ticked()::contains)
        .filter(c -> before.filter(b -> b.check().ticked().contains(c)).isEmpty())
        .forEach(c -> told.add(Notice.of("tick", c).with("check", now.check().number())));
    return told;
  }

  /** What the check waits for, where that is no shot and was not told before. */
  static List<Notice> waits(Optional<CheckView> before, CheckView now) {
    boolean waits = now.outcome().isEmpty() && !now.takesShots();
    boolean told = before.filter(b -> b.words().equals(now.words())).isPresent();
    return waits && !told
        ? List.of(Notice.of("waits", now.words()).with("check", now.check().number()))
        : List.of();
  }

  private static Notice setUp(Check check) {
    SetUp figures = check.setUp();
    List<String> words = new ArrayList<>();
    add(words, "arrow mass ", figures.arrowMass());
    add(words, "draw weight ", figures.drawWeight());
    add(words, "certified draw weight ", figures.certifiedDrawWeight());
    add(words, "draw length ", figures.drawLength());
    add(words, "brace height ", figures.braceHeight());
    return Notice.of("set-up", words.isEmpty() ? "nothing stated" : String.join(", ", words))
        .with("check", check.number());
  }

  private static Notice least(Mass mass, Check check) {
    return Notice.of("least", "the lightest arrow admitted with this draw weight: " + mass)
        .with("check", check.number())
        .with("leastArrow", mass.toString());
  }

  private static void add(List<String> words, String name, @Nullable Quantity<?, ?> figure) {
    if (figure != null) {
      words.add(name + figure);
    }
  }
}
