package lanewarden.chronograph;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import lanewarden.quantity.SpeedUnit;
import lanewarden.written.NearMatch;
import lanewarden.written.Section;

/**
 * Reads the section {@code [sentence]} of a profile, and whether its parts fit together: evidence
 * that a line carries must be checked, and what is to be checked must be in the line.
 */
final class WrittenSentence {
  private static final Map<String, Checksum> CHECKSUMS =
      new TreeMap<>(Map.of("none", Checksum.NONE, "xor", Checksum.XOR, "sum", Checksum.SUM));
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
              "gate3",
              "at1",
              "at2",
              "at3"));

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
    WrittenGates gates = new WrittenGates(root, section);
    if (pattern.isEmpty() || checksum.isEmpty()) {
      return Optional.empty();
    }
    Set<String> groups = pattern.get().groups();
    groupsAreKnown(groups);
    checksumFits(groups, checksum.get());
    unitFits(groups, unitIfNone);
    fits(
        section, groups.contains("status"), !goodStatus.isEmpty(), "status", "good_status = \"A\"");
    GateTimes times = gates.times(groups, plausible);
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
                times));
  }

  private Set<String> goodStatus() {
    return section
        .optionalText("good_status")
        .map(words -> (Set<String>) new LinkedHashSet<>(Arrays.asList(words.strip().split("\\s+"))))
        .orElse(Set.of());
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
    boolean timed = groups.stream().anyMatch(group -> group.matches("(gate|at)[1-9]"));
    if (!groups.contains("speed") && !timed) {
      section.fault(
          "pattern",
          "a group named speed, or gate times",
          "neither",
          "put (?<speed>…) around the number; where the line has none, put (?<gate1>…) around the"
              + " time between gates, or (?<at1>…) and (?<at2>…) around the moments at them");
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
    if (groups.contains("unit") && !groups.contains("speed")) {
      section.fault(
          "pattern",
          "a group named speed beside a group named unit",
          "only the unit",
          "put (?<speed>…) around the speed, or write (?:…) around the unit if there is none");
    }
    fits(section, groups.contains("unit"), !units.isEmpty(), "unit", "a table [[unit]]");
  }

  /** Notes a fault unless the line and the profile both have it, or neither. */
  static void fits(
      Section section, boolean inPattern, boolean inProfile, String group, String profile) {
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
