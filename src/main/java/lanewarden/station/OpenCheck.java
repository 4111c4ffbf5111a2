package lanewarden.station;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanewarden.journal.Check;
import lanewarden.journal.Fact;
import lanewarden.journal.SetUpStated;
import lanewarden.journal.TakenShot;
import lanewarden.quantity.Quantity;
import lanewarden.rules.SetUp;
import org.jspecify.annotations.Nullable;

/**
 * The check at the line and what an official can do with it: each act is the facts that it amounts
 * to, with the verdict that it brings.
 *
 * @param view the check with its rule
 */
record OpenCheck(CheckView view) {

  /** What an official does with it. */
  @FunctionalInterface
  interface Act {
    List<Fact> facts(OpenCheck check) throws StationException;
  }

  private Check check() {
    return view.check();
  }

  private List<Fact> with(List<? extends Fact> acts, Check after) {
    List<Fact> facts = new ArrayList<>(acts);
    facts.addAll(Flagging.on(after, view.division()));
    Ruling.on(after, view.division()).ifPresent(facts::add);
    return facts;
  }

  /** A reading of this check is void; a verdict that rested on it falls. */
  List<Fact> voided(long reading, String reason) throws StationException {
    if (!check().standing().contains(reading)) {
      throw StationException.misstep(
          "NO-SUCH-READING",
          "Nothing was declared void.",
          saying(reading, "is void already"),
          "Choose a reading of the check at the line that stands.");
    }
    Fact.ReadingVoided act = new Fact.ReadingVoided(check().number(), reading, Reason.of(reason));
    return with(List.of(act), check().declareVoid(act));
  }

  /** Something about a reading, by the number of its shot: nobody knows that of its entry. */
  private String saying(long reading, String words) {
    return check().shots().stream()
        .filter(shot -> shot.sequence() == reading)
        .findFirst()
        .map(shot -> "Shot " + shot.reading().shot() + " " + words + ".")
        .orElse("The reading is not one of the check at the line.");
  }

  /** The last reading that stands is void. */
  List<Fact> lastVoided(String reason) throws StationException {
    Optional<TakenShot> last = check().lastStanding();
    if (last.isEmpty()) {
      throw StationException.misstep(
          "NO-READING",
          "Nothing was declared void.",
          "The check at the line has no reading that stands.",
          "Wait for a reading first.");
    }
    return voided(last.get().sequence(), reason);
  }

  /** A reading in doubt counts all the same; the verdict that waited for it may fall. */
  List<Fact> kept(long reading, String reason) throws StationException {
    if (view.openDoubts().stream().noneMatch(shot -> shot.sequence() == reading)) {
      throw StationException.misstep(
          "NOT-IN-DOUBT",
          "Nothing was changed.",
          saying(reading, "is not one that waits for an official's word"),
          "Choose one that the screen marks as in doubt.");
    }
    Fact.ReadingKept act = new Fact.ReadingKept(check().number(), reading, Reason.of(reason));
    return with(List.of(act), check().keep(act));
  }

  /** The first reading in doubt counts all the same. */
  List<Fact> firstKept(String reason) throws StationException {
    if (view.openDoubts().isEmpty()) {
      throw StationException.misstep(
          "NOT-IN-DOUBT",
          "Nothing was changed.",
          "No reading of the check at the line waits for an official's word.",
          "Go on: every reading that is not void counts.");
    }
    return kept(view.openDoubts().get(0).sequence(), reason);
  }

  /** Bow and arrow were weighed; a verdict that rested on other figures falls. */
  List<Fact> stated(SetUpText typed) throws StationException {
    SetUpStated act = typed.stated(check().number(), check().setUp());
    Check after = check().state(act);
    if (check().outcome().isPresent()
        && isSame(check().setUp(), after.setUp())
        && check().weighed().equals(after.weighed())) {
      throw StationException.misstep(
          "SET-UP-SAME",
          "Bow and arrow were not stated anew.",
          "The figures are those on which the verdict rests, weighed already.",
          "Nothing is to be done; if something was weighed otherwise, state that.");
    }
    return with(List.of(act), after);
  }

  private static boolean isSame(SetUp before, SetUp now) {
    return isSame(before.arrowMass(), now.arrowMass())
        && isSame(before.drawWeight(), now.drawWeight())
        && isSame(before.certifiedDrawWeight(), now.certifiedDrawWeight())
        && isSame(before.drawLength(), now.drawLength())
        && isSame(before.braceHeight(), now.braceHeight());
  }

  private static <Q extends Quantity<?, Q>> boolean isSame(@Nullable Q before, @Nullable Q now) {
    if (before == null || now == null) {
      return before == null && now == null;
    }
    return before.compareTo(now) == 0;
  }

  /** The official saw that a condition was kept. */
  List<Fact> ticked(String condition) throws StationException {
    if (!view.unticked().contains(condition)) {
      throw StationException.misstep(
          "NO-SUCH-CONDITION",
          "Nothing was ticked.",
          view.unticked().isEmpty()
              ? "The rule asks for no condition here that is not ticked already."
              : "To be ticked are: " + String.join("; ", view.unticked()) + ".",
          "Choose one of those that the rule names and that is not ticked yet.");
    }
    return ticked(List.of(condition));
  }

  /** The official saw that every condition was kept. */
  List<Fact> allTicked() throws StationException {
    List<String> conditions = view.unticked();
    return conditions.isEmpty() ? ticked("") : ticked(conditions);
  }

  private List<Fact> ticked(List<String> conditions) throws StationException {
    if (view.outcome().isPresent()) {
      throw StationException.misstep(
          "ALREADY-DECIDED",
          "Nothing was ticked.",
          "The check is decided: " + view.outcome().get().word() + ".",
          "Let the competitor go, or call the next.");
    }
    List<Fact.ConditionTicked> acts = new ArrayList<>();
    Check after = check();
    for (String condition : conditions) {
      Fact.ConditionTicked act = new Fact.ConditionTicked(check().number(), condition);
      acts.add(act);
      after = after.tick(act);
    }
    return with(acts, after);
  }

  /** The competitor leaves the line after a verdict. */
  Fact closed() throws StationException {
    if (check().outcome().isEmpty()) {
      throw StationException.misstep(
          "CHECK-RUNNING",
          "The check of " + check().opened().bib() + " " + check().opened().name() + " goes on.",
          "It is not decided yet: " + view.words() + ".",
          "Do what it lacks, or end it with a reason.");
    }
    return new Fact.CheckClosed(check().number(), null);
  }

  /**
   * The check ends without a verdict; one that has its verdict is closed, which takes no reason.
   */
  List<Fact> ended(String reason) throws StationException {
    if (check().outcome().isPresent()) {
      throw StationException.misstep(
          "ALREADY-DECIDED",
          "The check was not ended, and no reason was signed.",
          "It has its verdict, which stands: " + check().outcome().get().word() + ".",
          "Let the competitor go, without a reason: at a terminal, type next.");
    }
    return List.of(new Fact.CheckClosed(check().number(), Reason.of(reason)));
  }
}
