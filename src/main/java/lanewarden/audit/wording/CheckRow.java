package lanewarden.audit.wording;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lanewarden.bow.Arrow;
import lanewarden.journal.Check;
import lanewarden.journal.Fact;
import lanewarden.journal.Flood;
import lanewarden.journal.Sequel;
import lanewarden.journal.TakenShot;
import lanewarden.quantity.Energy;
import lanewarden.quantity.EnergyUnit;
import lanewarden.quantity.Mass;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;
import lanewarden.rules.Doubt;
import lanewarden.rules.Phase;
import lanewarden.rules.SetUp;
import org.jspecify.annotations.Nullable;

/**
 * One check as a row of the report.
 *
 * @param number the entry that opened it
 * @param verdictEntry the entry of the verdict that stands, or a dash
 * @param readings every reading in the order taken
 * @param notes what the eye must not miss: voids, typed readings, faulty entries
 * @param reason the signed reason, or why the check ended without a verdict
 * @param follows what was signed to follow it, or nothing
 * @param arrow the mass as stated last, or that it was not
 * @param bow the draw weights as stated last, or nothing
 * @param worth how far the figure that decided can be believed, and the speed at the bow
 * @param energy what the arrow carried at the fastest reading that counts, or nothing
 * @param official who signed the verdict, or the opening where there is none
 */
public record CheckRow(
    long number,
    String verdictEntry,
    String date,
    String clock,
    String bib,
    String name,
    String division,
    int attempt,
    List<Reading> readings,
    List<String> notes,
    OutcomeMark outcome,
    String reason,
    String follows,
    String arrow,
    String bow,
    String energy,
    FigureWorth worth,
    String official) {

  /**
   * A reading in its row.
   *
   * @param text the value as taken, with its unit
   * @param marks in words: void, impossible, typed
   */
  public record Reading(String text, boolean voided, String marks) {}

  /**
   * The row of a check.
   *
   * @param names of those who sign, by thumbprint
   * @param faulty the numbers of the entries that are not sound
   * @param disputes what is to be noted of protests and corrections
   */
  public static CheckRow of(
      Check check,
      FigureWorth worth,
      Map<String, String> names,
      Set<Long> faulty,
      List<String> disputes) {
    Fact.CheckOpened opened = check.opened();
    String signer = check.verdict().map(Check.GivenVerdict::signer).orElse(check.signer());
    return new CheckRow(
        check.number(),
        check.verdict().map(v -> String.valueOf(v.sequence())).orElse("–"),
        Wording.date(check.at()),
        Wording.clock(check.verdict().map(Check.GivenVerdict::at).orElse(check.at())),
        opened.bib(),
        opened.name(),
        opened.division(),
        opened.attempt(),
        check.shots().stream().map(CheckRow::reading).toList(),
        notes(check, faulty, disputes),
        OutcomeMark.of(check),
        reason(check),
        follows(check),
        check.setUp().arrowMass() == null ? "not weighed" : check.setUp().arrowMass().toString(),
        bow(check.setUp()),
        energy(check, check.setUp().arrowMass()),
        worth,
        names.getOrDefault(signer, "unknown key " + Wording.shortHash(signer)));
  }

  private static Reading reading(TakenShot shot) {
    boolean typed = shot.reading().source().equals(ReadingMark.TYPED);
    List<String> marks = new ArrayList<>();
    if (!shot.stands()) {
      marks.add("void");
    }
    if (shot.kept() != null) {
      marks.add("let count");
    }
    if (shot.doubt() != null) {
      marks.add(shot.counts() ? "in doubt" : "impossible");
    }
    if (typed) {
      marks.add("typed");
    }
    return new Reading(shot.reading().speed().toString(), !shot.counts(), String.join(", ", marks));
  }

  private static List<String> notes(Check check, Set<Long> faulty, List<String> disputes) {
    List<String> notes = new ArrayList<>(disputes);
    if (check.phase() != Phase.BEFORE) {
      notes.add("Opened " + check.phase().phrase());
    }
    if (check.inQuestion()) {
      notes.add("In question since the line was held: counts for nothing");
    }
    String grounds = check.opened().grounds();
    if (grounds != null) {
      notes.add("Called on the grounds: " + grounds);
    }
    if (!check.ticked().isEmpty()) {
      notes.add("Ticked: " + check.ticked().stream().sorted().collect(Collectors.joining("; ")));
    }
    for (int i = 0; i < check.shots().size(); i++) {
      TakenShot shot = check.shots().get(i);
      shot.flags().forEach(flag -> notes.add(doubt(shot, flag) + flag.words()));
      Fact.@Nullable ReadingKept kept = shot.kept();
      if (kept != null) {
        notes.add("Shot " + (i + 1) + " let count: " + kept.reason());
      }
      Fact.@Nullable ReadingVoided voided = shot.voided();
      if (voided != null) {
        notes.add("Shot " + (i + 1) + " void: " + voided.reason());
      }
    }
    if (!check.refused().isEmpty()) {
      long lines = check.refused().stream().mapToLong(Flood::lines).sum();
      notes.add(Wording.count(lines, "line") + " refused");
    }
    List<Long> doubtful = new ArrayList<>(check.shots().stream().map(s -> s.sequence()).toList());
    doubtful.add(0, check.number());
    check.verdict().ifPresent(v -> doubtful.add(v.sequence()));
    doubtful.retainAll(faulty);
    if (!doubtful.isEmpty()) {
      notes.add(
          (doubtful.size() == 1 ? "Rests on faulty entry " : "Rests on faulty entries ")
              + Wording.numbers(doubtful));
    }
    return notes;
  }

  /** What was found against a reading stays told, and whether it still holds. */
  private static String doubt(TakenShot shot, Fact.ReadingFlagged flag) {
    Doubt.@Nullable Kind now = shot.doubt();
    if (now == null || !now.word().equals(flag.kind())) {
      return "Was in doubt: ";
    }
    return shot.counts() ? "In doubt: " : "Void: ";
  }

  /** The signed reason, or why there is none. */
  public static String reason(Check check) {
    if (check.verdict().isPresent()) {
      return check.verdict().get().fact().reason();
    }
    return check
        .closed()
        .map(closed -> Objects.requireNonNullElse(closed.reason(), "no reason given"))
        .orElse("no verdict yet");
  }

  /**
   * What follows the verdict that stands: what was signed with it, or for a recheck the ruling on
   * its protest; blank where nothing does.
   */
  public static String follows(Check check) {
    Long protest = check.opened().protest();
    if (protest != null) {
      return check.outcome().isPresent() ? Sentence.of(Sequel.RULING, protest).toString() : "";
    }
    return check
        .verdict()
        .flatMap(Check.GivenVerdict::followsInWords)
        .map(Sentence::toString)
        .orElse("");
  }

  private static String bow(SetUp setUp) {
    List<String> words = new ArrayList<>();
    if (setUp.drawWeight() != null) {
      words.add(setUp.drawWeight() + " as set");
    }
    if (setUp.certifiedDrawWeight() != null) {
      words.add(setUp.certifiedDrawWeight() + " certified");
    }
    if (setUp.drawLength() != null) {
      words.add(setUp.drawLength() + " draw length");
    }
    if (setUp.braceHeight() != null) {
      words.add(setUp.braceHeight() + " brace height");
    }
    return String.join(", ", words);
  }

  private static String energy(Check check, @Nullable Mass mass) {
    Optional<Speed> fastest =
        check.shots().stream()
            .filter(TakenShot::isSettled)
            .map(s -> s.reading().speed())
            .max(Comparator.naturalOrder());
    if (mass == null || fastest.isEmpty()) {
      return "";
    }
    Energy energy = new Arrow(mass).kineticEnergyAt(fastest.get());
    return energy.to(EnergyUnit.JOULE, 1) + " (" + energy.to(EnergyUnit.FOOT_POUND, 1) + ")";
  }
}
