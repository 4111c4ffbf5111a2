package lanewarden.rules;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lanewarden.quantity.QuantityException;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;
import lanewarden.written.FileTold;
import lanewarden.written.NearMatch;
import lanewarden.written.Section;
import lanewarden.written.Section.Item;
import lanewarden.written.TomlTold;
import lanewarden.written.ValueRefused;

/** What comes after a verdict, in a division's section of the file; for one thread. */
final class AftermathSection {

  private static final String BANDS = "bands";
  private static final String LAPSES = "lapses";
  private static final Sentence BAND = Sentence.of(BookTold.BAND);

  private final Section section;

  AftermathSection(Section section) {
    this.section = section;
  }

  /** Notes a fault for everything of it that is written, since no verdict is ever given. */
  Aftermath none() {
    Stream.concat(
            Stream.of("rechecks", BANDS, LAPSES),
            Stream.of(Phase.values()).map(AftermathSection::key))
        .forEach(key -> section.leftOut(key, Sentence.of(BookTold.NOT_CHECKED)));
    return Aftermath.plain(0);
  }

  private static String key(Phase phase) {
    return "fail-" + phase.word();
  }

  /**
   * What comes after a verdict, or empty with the faults noted on the page.
   *
   * @param needed whether the number of re-checks must be written
   * @param speed the speed limit that bands are counted from, if it could be read
   * @param shooting how it is measured, if it is and could be read
   */
  Optional<Aftermath> aftermath(
      boolean needed, Optional<SpeedLimit> speed, Optional<Shooting> shooting) {
    OptionalInt rechecks =
        needed || section.has("rechecks")
            ? section.whole("rechecks", 0, ShootingSection.MOST)
            : OptionalInt.of(0);
    Map<Phase, Consequence> fails = fails(rechecks.orElse(0));
    List<Item<Band>> bands = bands(speed, shooting);
    Set<Lapse> lapses = lapses();
    if (rechecks.isEmpty()) {
      return Optional.empty();
    }
    requireRechecks(rechecks.getAsInt(), bands);
    return Optional.of(
        new Aftermath(
            rechecks.getAsInt(), fails, bands.stream().map(Item::value).toList(), lapses));
  }

  private Map<Phase, Consequence> fails(int rechecks) {
    Map<String, Consequence> words = Worded.words(Consequence.values());
    Map<Phase, Consequence> fails = new EnumMap<>(Aftermath.usual(rechecks));
    for (Phase phase : Phase.values()) {
      section
          .optionalChoice(key(phase), words)
          .ifPresent(consequence -> fails.put(phase, consequence));
    }
    return fails;
  }

  private void requireRechecks(int rechecks, List<Item<Band>> bands) {
    if (rechecks > 0) {
      return;
    }
    for (Phase phase : Phase.values()) {
      if (section.is(key(phase), Consequence.RECHECK.word())) {
        noRecheckLeft(key(phase), 0, Consequence.RECHECK.word());
      }
    }
    bands.stream()
        .filter(band -> band.value().consequence() == Consequence.RECHECK)
        .forEach(band -> noRecheckLeft(BANDS, band.number(), band.value().written()));
  }

  private void noRecheckLeft(String key, int item, String found) {
    section.fault(
        key,
        item,
        Sentence.of(BookTold.OTHER_CONSEQUENCE),
        Sentence.verbatim("\"" + found + "\""),
        Sentence.of(BookTold.ALLOW_RECHECK));
  }

  private List<Item<Band>> bands(Optional<SpeedLimit> speed, Optional<Shooting> shooting) {
    List<Item<Band>> bands = section.optionalItems(BANDS, BAND, AftermathSection::band);
    if (section.has("energy") || section.is("limit", "none")) {
      section.leftOut(BANDS, Sentence.of(BookTold.FROM_SPEED_LIMIT));
      return List.of();
    }
    return speed.isPresent() && inOrder(bands, speed.get(), shooting) ? bands : List.of();
  }

  private static Band band(String text) {
    Band band;
    try {
      band = Band.parse(text);
    } catch (QuantityException e) {
      throw new ValueRefused(e.mend(), e);
    }
    return Plausible.band(band);
  }

  private boolean inOrder(List<Item<Band>> bands, SpeedLimit limit, Optional<Shooting> shooting) {
    Speed before = limit.allowed();
    boolean atEdge = limit.side() == Side.BELOW;
    for (Item<Band> item : bands) {
      Band band = item.value();
      if (band.width().speed().filter(s -> s.unit() != limit.limit().unit()).isPresent()) {
        section.fault(
            BANDS,
            item.number(),
            Sentence.of(BookTold.UNIT_OF_LIMIT, limit.limit().unit().symbol()),
            Sentence.verbatim("\"" + band.written() + "\""),
            Sentence.of(BookTold.IN_UNIT_OR_SHARE, limit.limit().unit().symbol()));
        return false;
      }
      if (!band.edge(limit.allowed()).isMoreThan(before)) {
        section.fault(
            BANDS,
            item.number(),
            Sentence.of(BookTold.FURTHER),
            Sentence.verbatim("\"" + band.written() + "\""),
            Sentence.of(BookTold.IN_ORDER));
        return false;
      }
      Speed edge = band.edge(limit.allowed());
      Optional<Rounding> rounding = shooting.flatMap(AftermathSection::roundingOfFigure);
      if (rounding.isPresent() && !holdsSome(rounding.get(), before, atEdge, edge)) {
        section.fault(
            BANDS,
            item.number(),
            Sentence.of(BookTold.BAND_HOLDS, rounding.get().ofReadings()),
            Sentence.verbatim("\"" + band.written() + "\""),
            Sentence.of(BookTold.WIDER));
        return false;
      }
      before = edge;
      atEdge = false;
    }
    return true;
  }

  /** How the deciding figure is rounded; empty where it is not, as a mean of rounded readings. */
  private static Optional<Rounding> roundingOfFigure(Shooting how) {
    int counted = how.plan().counted();
    boolean mean =
        how.decision() instanceof Decision.Mean
            || (how.decision() instanceof Decision.Median && counted % 2 == 0);
    return mean && counted > 1
        ? Optional.empty()
        : Optional.of(how.treatment().rounding()).filter(rounding -> !rounding.isNone());
  }

  /**
   * Whether a rounded speed lies between two edges, the upper included, the lower if it says so.
   */
  private static boolean holdsSome(Rounding rounding, Speed lower, boolean included, Speed upper) {
    int fastest = rounding.readable(upper).compareTo(lower);
    return fastest > 0 || (included && fastest == 0);
  }

  private Set<Lapse> lapses() {
    List<String> words = Stream.of(Lapse.values()).map(Lapse::word).toList();
    List<Item<Lapse>> lapses =
        section.optionalItems(
            LAPSES,
            Sentence.of(TomlTold.ONE_OF, String.join(", ", words)),
            text ->
                Lapse.ofWord(text.strip()).orElseThrow(() -> new ValueRefused(mend(text, words))));
    DivisionSection.requireDifferent(section, LAPSES, lapses, Lapse::word);
    return lapses.stream().map(Item::value).collect(Collectors.toSet());
  }

  private static Sentence mend(String word, List<String> words) {
    return NearMatch.of(word, words)
        .map(near -> Sentence.of(FileTold.NEAR_TEXT, near))
        .orElse(Sentence.of(TomlTold.TAKE_ONE));
  }
}
