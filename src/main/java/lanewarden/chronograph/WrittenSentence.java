package lanewarden.chronograph;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import lanewarden.quantity.Length;
import lanewarden.quantity.Percent;
import lanewarden.quantity.SpeedUnit;
import lanewarden.written.NearMatch;
import lanewarden.written.Section;

/**
 * Reads the section {@code [sentence]} of a profile, and whether its parts fit together: evidence
 * that a line carries must be checked, and what is to be checked must be in the line.
 */
final class WrittenSentence {
  private static final Map<String, Checksum> CHECKSUMS =
      Map.of("none", Checksum.NONE, "xor", Checksum.XOR, "sum", Checksum.SUM);
  private static final Set<String> FIELDS =
      new TreeSet<>(
          Set.of(
              "speed",
              "unit",
              "sequence",
              "status",
              "covered",
              "checksum",
              "gate1",
              "gate2",
              "gate3"));

  private final Section root;
  private final Section section;
  private final Map<String, SpeedUnit> units;

  WrittenSentence(Section root, Section section, Map<String, SpeedUnit> units) {
    this.root = root;
    this.section = section;
    this.units = units;
  }

  /** The form; empty if there was a fault. */
  Optional<SentenceForm> form() {
    String start = section.optionalText("start").orElse("");
    Optional<SentencePattern> pattern =
        section.value("pattern", "a Java regular expression", SentencePattern::parse);
    Optional<Checksum> checksum = section.choice("checksum", CHECKSUMS);
    Optional<SpeedUnit> unitIfNone =
        section.optionalValue("unit", "\"ft/s\" or \"m/s\"", WrittenProfile::unit);
    Set<String> goodStatus = goodStatus();
    Optional<SpeedRange> plausible = WrittenProfile.range(section);
    List<GateRule> gates = gates();
    if (pattern.isEmpty() || checksum.isEmpty()) {
      return Optional.empty();
    }
    Set<String> groups = pattern.get().groups();
    groupsAreKnown(groups);
    checksumFits(groups, checksum.get());
    unitFits(groups, unitIfNone);
    fits(groups.contains("status"), !goodStatus.isEmpty(), "status", "good_status = \"A\"");
    for (int i = 1; i <= 3; i++) {
      fits(groups.contains("gate" + i), gates.size() >= i, "gate" + i, "a table [[gate]]");
    }
    return plausible.map(
        range ->
            new SentenceForm(
                start,
                pattern.get(),
                checksum.get(),
                unitIfNone.orElse(null),
                units,
                goodStatus,
                range,
                List.copyOf(gates)));
  }

  private Set<String> goodStatus() {
    return section
        .optionalText("good_status")
        .map(words -> (Set<String>) new LinkedHashSet<>(Arrays.asList(words.strip().split("\\s+"))))
        .orElse(Set.of());
  }

  private List<GateRule> gates() {
    List<GateRule> gates = new ArrayList<>();
    for (Section gate : root.sections("gate")) {
      Optional<Length> spacing =
          gate.value("spacing", "a length such as \"609.6 mm\"", Length::parse);
      Optional<Percent> agree = gate.value("agree", "a share such as \"0.1 %\"", Percent::parse);
      gate.closed();
      if (spacing.isPresent() && agree.isPresent()) {
        gates.add(new GateRule(spacing.get(), agree.get()));
      }
    }
    return gates;
  }

  private void groupsAreKnown(Set<String> groups) {
    for (String group : groups) {
      if (!FIELDS.contains(group)) {
        section.fault(
            "pattern",
            "groups named " + String.join(", ", FIELDS),
            "a group named " + group,
            NearMatch.of(group, FIELDS)
                .map(near -> "did you mean " + near + "?")
                .orElse("write (?:…) for a group that is no field"));
      }
    }
    if (!groups.contains("speed")) {
      section.fault("pattern", "a group named speed", "none", "put (?<speed>…) around the number");
    }
  }

  private void checksumFits(Set<String> groups, Checksum checksum) {
    boolean written = groups.contains("checksum") && groups.contains("covered");
    if (checksum != Checksum.NONE && !written) {
      section.fault(
          "pattern",
          "the groups covered and checksum, because a checksum is to be checked",
          "not both",
          "put (?<covered>…) around what it covers and (?<checksum>…) around its digits");
    }
    if (checksum == Checksum.NONE && (groups.contains("checksum") || groups.contains("covered"))) {
      section.fault(
          "checksum",
          "xor or sum, because the pattern has a checksum",
          "\"none\"",
          "name the kind: a checksum that is there is always checked");
    }
  }

  private void unitFits(Set<String> groups, Optional<SpeedUnit> unitIfNone) {
    if (!groups.contains("unit") && unitIfNone.isEmpty()) {
      section.fault(
          "unit", "the unit, because the line has none", "nothing", "add unit = \"ft/s\"");
    }
    fits(groups.contains("unit"), !units.isEmpty(), "unit", "a table [[unit]]");
  }

  private void fits(boolean inPattern, boolean inProfile, String group, String profile) {
    if (inPattern && !inProfile) {
      section.fault(
          "pattern",
          profile + " beside a group named " + group,
          "only the group",
          "add it, or take the group out");
    }
    if (!inPattern && inProfile) {
      section.fault(
          "pattern",
          "a group named " + group + " beside " + profile,
          "no such group",
          "put (?<" + group + ">…) into the pattern, or take the other out");
    }
  }
}
