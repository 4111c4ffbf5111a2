package lanewarden.chronograph;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;

/** What whole lines show of the faults in a profile's section {@code [sentence]}. */
final class LinesTried {
  private final SentenceForm form;

  LinesTried(SentenceForm form) {
    this.form = form;
  }

  List<Finding> findings(List<String> lines) {
    List<SentencePattern.Fields> fields = new ArrayList<>();
    List<String> others = new ArrayList<>();
    for (String line : lines) {
      Optional<SentencePattern.Fields> read =
          line.startsWith(form.start()) ? form.pattern().match(line) : Optional.empty();
      read.ifPresentOrElse(fields::add, () -> others.add(line));
    }
    List<Finding> findings = new ArrayList<>();
    others.stream().findFirst().ifPresent(line -> unread(line, others.size(), lines, findings));
    checksum(fields, findings);
    unknown(
        fields,
        "unit",
        form.unitWords().keySet(),
        "[[unit]] word",
        "Add a table [[unit]] for it.",
        findings);
    unknown(
        fields,
        "status",
        form.goodStatus(),
        "[sentence] good_status",
        "If it means a good measurement, add it.",
        findings);
    range(fields, findings);
    return findings;
  }

  private void unread(String line, int count, List<String> all, List<Finding> findings) {
    String shown = RawBytes.ofText(line).escaped();
    String share = count + " of " + all.size() + " lines do not fit, such as \"" + shown + "\": ";
    if (!line.startsWith(form.start())) {
      findings.add(
          new Finding(
              "[sentence] start",
              share
                  + "it does not begin with \""
                  + form.start()
                  + "\". Mend start, or take it out."));
      return;
    }
    int reach = form.pattern().reach(line);
    String where =
        reach == line.length()
            ? "it fits as far as it goes, but the pattern asks for more after it."
            : "it fits up to character %d; the pattern does not take \"%s\" after \"%s\"."
                .formatted(
                    reach,
                    RawBytes.ofText(line.substring(reach, reach + 1)).escaped(),
                    RawBytes.ofText(line.substring(0, reach)).escaped());
    findings.add(new Finding("[sentence] pattern", share + where + " Mend the pattern there."));
  }

  private void checksum(List<SentencePattern.Fields> lines, List<Finding> findings) {
    Checksum written = form.checksum();
    if (written == Checksum.NONE || lines.isEmpty() || fits(lines, written)) {
      return;
    }
    String none = "No line carries the checksum that " + word(written) + " gives";
    String words =
        Stream.of(Checksum.XOR, Checksum.SUM)
            .filter(kind -> fits(lines, kind))
            .findFirst()
            .map(
                kind ->
                    none
                        + ", but "
                        + word(kind)
                        + " fits. Write checksum = \""
                        + word(kind)
                        + "\".")
            .orElse(
                none
                    + ", and no other kind known here fits. Check what the group covered must hold:"
                    + " with the start or without, with the sign before the digits or without.");
    findings.add(new Finding("[sentence] checksum", words));
  }

  /** Whether most lines carry the checksum of this kind; by chance, one in 256 would. */
  private static boolean fits(List<SentencePattern.Fields> lines, Checksum kind) {
    long fitting =
        lines.stream()
            .filter(
                line ->
                    kind.hex(line.field("covered").orElse(""))
                        .equalsIgnoreCase(line.field("checksum").orElse("")))
            .count();
    return fitting * 2 > lines.size();
  }

  private static String word(Checksum kind) {
    return kind.name().toLowerCase(Locale.ROOT);
  }

  private static void unknown(
      List<SentencePattern.Fields> lines,
      String group,
      Set<String> known,
      String key,
      String mend,
      List<Finding> findings) {
    Set<String> strange = new TreeSet<>();
    lines.forEach(
        line -> line.field(group).filter(w -> !known.contains(w)).ifPresent(strange::add));
    if (!strange.isEmpty()) {
      findings.add(
          new Finding(
              key,
              "The %s came as \"%s\"; the profile knows \"%s\". %s"
                  .formatted(
                      group, String.join("\", \"", strange), String.join("\", \"", known), mend)));
    }
  }

  private void range(List<SentencePattern.Fields> lines, List<Finding> findings) {
    List<Speed> speeds = new ArrayList<>();
    lines.forEach(line -> speed(line).ifPresent(speeds::add));
    List<Speed> outside = speeds.stream().filter(s -> !form.plausible().holds(s)).toList();
    if (outside.isEmpty()) {
      return;
    }
    SpeedUnit fixed = form.unitIfNone();
    boolean otherUnit =
        fixed != null
            && outside.size() == speeds.size()
            && outside.stream().allMatch(s -> form.plausible().holds(inOther(s)));
    findings.add(
        new Finding(
            otherUnit ? "[sentence] unit" : "[sentence] least, most",
            "%d of %d speeds are outside %s, such as %s. %s"
                .formatted(
                    outside.size(),
                    speeds.size(),
                    form.plausible(),
                    outside.get(0),
                    otherUnit
                        ? "In the other unit all would be inside: check unit."
                        : "If they were arrows, widen the range; else the instrument misreads.")));
  }

  private Optional<Speed> speed(SentencePattern.Fields line) {
    SpeedUnit unit = line.field("unit").map(form.unitWords()::get).orElse(form.unitIfNone());
    boolean measured =
        line.field("status").map(form.goodStatus()::contains).orElse(true) && unit != null;
    return line.field("speed")
        .map(Numeral::of)
        .filter(number -> measured && number instanceof Numeral.Finite)
        .map(number -> ((Numeral.Finite) number).value())
        .filter(value -> value.signum() >= 0)
        .map(value -> Speed.of(value, Objects.requireNonNull(unit)));
  }

  private static Speed inOther(Speed speed) {
    SpeedUnit other =
        speed.unit() == SpeedUnit.FEET_PER_SECOND
            ? SpeedUnit.METRES_PER_SECOND
            : SpeedUnit.FEET_PER_SECOND;
    return Speed.of(speed.value(), other);
  }
}
