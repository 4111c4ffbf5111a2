package lanewarden.rules;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lanewarden.metrology.OutlierTest;
import lanewarden.quantity.FigureTold;
import lanewarden.quantity.Percent;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;
import lanewarden.written.Section;
import lanewarden.written.TomlTold;
import lanewarden.written.ValueRefused;

/** Which readings are asked about, in a division's section of the file; for one thread. */
final class ScreeningSection {
  static final List<String> KEYS = List.of("jump", "outlier", "outlier-least");

  private static final Pattern TEST =
      Pattern.compile("(grubbs|dixon)\\s+at\\s+(\\S.*)", Pattern.CASE_INSENSITIVE);
  private static final Sentence FORM = Sentence.of(BookTold.TEST);
  private static final Speed NO_GAP = Speed.parse("0 ft/s");
  private static final double DIXON_LEVEL = 0.05;

  private final Section section;
  private final int counted;

  /**
   * @param counted how many readings count, so that no more ever stand; empty if it is faulty
   */
  ScreeningSection(Section section, OptionalInt counted) {
    this.section = section;
    this.counted = counted.orElse(OutlierTest.FEWEST);
  }

  /** The clauses, or empty with the faults noted on the page. */
  Optional<Screening> screening() {
    Optional<Speed> jump =
        section.optionalValue(
            "jump",
            Sentence.of(FigureTold.SPEED, "10 ft/s"),
            text -> Plausible.JUMP.of(Speed.parse(text)));
    boolean neverJumps = counted < 2 && section.has("jump");
    if (neverJumps) {
      tooFew("jump", Sentence.of(BookTold.NONE_BEFORE));
    }
    if (!section.has("outlier")) {
      section.leftOut("outlier-least", Sentence.of(BookTold.NO_TEST));
      return neverJumps || (section.has("jump") && jump.isEmpty())
          ? Optional.empty()
          : Optional.of(new Screening(jump, Optional.empty()));
    }
    Optional<Speed> least =
        section.value(
            "outlier-least",
            Sentence.of(FigureTold.SPEED, "3 ft/s"),
            text -> Plausible.GAP.of(Speed.parse(text)));
    Optional<OutlierTest> test =
        section.value("outlier", FORM, text -> test(text, least.orElse(NO_GAP)));
    return test.isEmpty()
            || least.isEmpty()
            || neverJumps
            || !canBeMade(test.get())
            || (section.has("jump") && jump.isEmpty())
        ? Optional.empty()
        : Optional.of(new Screening(jump, test));
  }

  /** Whether the test can be made of as many readings as count; else a fault is noted. */
  private boolean canBeMade(OutlierTest test) {
    if (counted < OutlierTest.FEWEST) {
      tooFew("outlier", Sentence.of(BookTold.TEST_TAKES, OutlierTest.FEWEST));
      return false;
    }
    if (test instanceof OutlierTest.Dixon && counted > OutlierTest.Dixon.MOST) {
      section.fault(
          "outlier",
          Sentence.of(BookTold.DIXON_AT_MOST, counted, OutlierTest.Dixon.MOST),
          Sentence.of(BookTold.TOGETHER_AS, "Dixon", "counted", counted),
          Sentence.of(BookTold.GRUBBS_OR_FEWER));
      return false;
    }
    return true;
  }

  private void tooFew(String key, Sentence because) {
    section.fault(
        key,
        Sentence.of(TomlTold.LEFT_OUT, because),
        Sentence.of(BookTold.TOGETHER_AS, key, "counted", counted),
        Sentence.of(BookTold.OUT_OR_COUNT_MORE));
  }

  private static OutlierTest test(String text, Speed least) {
    Matcher matcher = TEST.matcher(text.strip());
    if (!matcher.matches()) {
      throw new ValueRefused(Sentence.of(BookTold.NAME_TEST));
    }
    double level = Percent.parse(matcher.group(2)).fraction().doubleValue();
    if (matcher.group(1).toLowerCase(Locale.ROOT).equals("dixon")) {
      if (level != DIXON_LEVEL) {
        throw new ValueRefused(Sentence.of(BookTold.DIXON_LEVEL));
      }
      return new OutlierTest.Dixon(least);
    }
    if (level < 0.001 || level > 0.2) {
      throw new ValueRefused(Sentence.of(BookTold.LEVEL));
    }
    return new OutlierTest.Grubbs(OutlierTest.Side.BOTH, level, least);
  }
}
