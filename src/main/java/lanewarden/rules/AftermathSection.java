package lanewarden.rules;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import lanewarden.quantity.QuantityException;
import lanewarden.quantity.Speed;
import lanewarden.written.NearMatch;
import lanewarden.written.Section;

/** What comes after a verdict, in a division's section of the file; for one thread. */
final class AftermathSection {

  private static final String BAND = "a band such as \"up to 1 %: re-check\"";

  private final Section section;

  AftermathSection(Section section) {
    this.section = section;
  }

  /**
   * What comes after a verdict, or empty with the faults noted on the page.
   *
   * @param checked whether anything is checked at all
   * @param speed the speed limit that bands are counted from, if it could be read
   * @param energy whether there is an energy limit
   */
  Optional<Aftermath> aftermath(boolean checked, Optional<SpeedLimit> speed, boolean energy) {
    OptionalInt rechecks =
        checked || section.has("rechecks")
            ? section.whole("rechecks", 0, ShootingSection.MOST)
            : OptionalInt.of(0);
    Map<Phase, Consequence> fails = fails(rechecks.orElse(0));
    List<Band> bands = bands(speed, energy);
    Set<Lapse> lapses = lapses();
    if (rechecks.isEmpty()) {
      return Optional.empty();
    }
    requireRechecks(rechecks.getAsInt(), bands);
    return Optional.of(new Aftermath(rechecks.getAsInt(), fails, bands, lapses));
  }

  private Map<Phase, Consequence> fails(int rechecks) {
    Map<String, Consequence> words = new LinkedHashMap<>();
    Stream.of(Consequence.values()).forEach(c -> words.put(c.word(), c));
    Map<Phase, Consequence> fails = new EnumMap<>(Aftermath.usual(rechecks));
    for (Phase phase : Phase.values()) {
      section
          .optionalChoice("fail-" + phase.word(), words)
          .ifPresent(consequence -> fails.put(phase, consequence));
    }
    return fails;
  }

  private void requireRechecks(int rechecks, List<Band> bands) {
    if (rechecks > 0) {
      return;
    }
    for (Phase phase : Phase.values()) {
      String key = "fail-" + phase.word();
      if (section.is(key, Consequence.RECHECK.word())) {
        noRecheckLeft(key);
      }
    }
    if (bands.stream().anyMatch(band -> band.consequence() == Consequence.RECHECK)) {
      noRecheckLeft("bands");
    }
  }

  private void noRecheckLeft(String key) {
    section.fault(
        key,
        "another consequence, since rechecks = 0 leaves no re-check",
        "\"" + Consequence.RECHECK.word() + "\"",
        "allow a re-check, or write barred, struck or judge");
  }

  private List<Band> bands(Optional<SpeedLimit> speed, boolean energy) {
    List<Band> bands = section.optionalValues("bands", BAND, AftermathSection::band);
    if (energy || section.is("limit", "none")) {
      section.leftOut("bands", "they are counted from a speed limit and nothing else");
      return List.of();
    }
    return speed.isPresent() && inOrder(bands, speed.get()) ? bands : List.of();
  }

  private static Band band(String text) {
    try {
      return Band.parse(text);
    } catch (QuantityException e) {
      throw new IllegalArgumentException(e.mend(), e);
    }
  }

  private boolean inOrder(List<Band> bands, SpeedLimit limit) {
    Speed before = limit.allowed();
    for (Band band : bands) {
      if (band.width().speed().filter(s -> s.unit() != limit.limit().unit()).isPresent()) {
        section.fault(
            "bands",
            "speeds in " + limit.limit().unit().symbol() + ", the unit of the limit",
            "\"" + band.written() + "\"",
            "write it in " + limit.limit().unit().symbol() + " or as a percentage");
        return false;
      }
      if (!band.edge(limit.allowed()).isMoreThan(before)) {
        section.fault(
            "bands",
            "the narrowest band first, each reaching further than the one before",
            "\"" + band.written() + "\"",
            "put them in order");
        return false;
      }
      before = band.edge(limit.allowed());
    }
    return true;
  }

  private Set<Lapse> lapses() {
    List<String> words = Stream.of(Lapse.values()).map(Lapse::word).toList();
    return new LinkedHashSet<>(
        section.optionalValues(
            "lapses",
            "one of " + String.join(", ", words),
            text ->
                Lapse.ofWord(text.strip())
                    .orElseThrow(() -> new IllegalArgumentException(mend(text, words)))));
  }

  private static String mend(String word, List<String> words) {
    return NearMatch.of(word, words)
        .map(near -> "did you mean \"" + near + "\"?")
        .orElse("take one of them");
  }
}
