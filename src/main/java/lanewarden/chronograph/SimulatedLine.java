package lanewarden.chronograph;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import lanewarden.quantity.Percent;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;

/**
 * How the simulator writes a line of a profile: fixed text with places for the fields.
 *
 * <p>A place is {@code {speed 4.1}} (four digits, the point, one decimal), {@code {sequence 5}},
 * {@code {gate1 6}}, {@code {at1 6}}, {@code {unit}}, {@code {status}} or {@code {checksum}}.
 * Numbers are filled with zeros on the left. The gate times are those of the speed as written, or,
 * in a line without speed, as shot. Immutable.
 */
final class SimulatedLine {
  private static final Pattern PLACE =
      Pattern.compile("\\{([a-z]+[1-9]?)(?: ([1-9])(?:\\.([0-9]))?)?}");
  // A speed at the edge could be just beyond it after the rounding to whole counts
  private static final Percent OFF_THE_EDGE = Percent.parse("1 %");

  private final String template;
  private final SentenceForm form;

  private SimulatedLine(String template, SentenceForm form) {
    this.template = template;
    this.form = form;
  }

  /**
   * Reads a template and tries it out.
   *
   * @throws IllegalArgumentException if a line so written is not read back as the same speed; the
   *     message says why
   */
  static SimulatedLine of(String template, SentenceForm form) {
    SimulatedLine line = new SimulatedLine(template, form);
    for (Speed speed : line.trials()) {
      Speed rounded = line.asWritten(speed);
      Sentence.Outcome outcome = new Sentence(form).read(line.write(speed, 1));
      if (outcome instanceof Sentence.Unfit unfit) {
        throw new IllegalArgumentException(
            "make the pattern read the line it writes for %s, %s (refused: %s)"
                .formatted(speed, RawBytes.ofText(line.write(speed, 1)), unfit.reason().word()));
      }
      if (outcome instanceof Sentence.Said said && said.speed().compareTo(rounded) != 0) {
        throw new IllegalArgumentException(
            "its line for %s is read back as %s".formatted(rounded, said.speed()));
      }
    }
    return line;
  }

  private List<Speed> trials() {
    SpeedRange range = form.plausible();
    if (form.saysSpeed()) {
      return List.of(range.least(), range.most());
    }
    Speed most = range.most();
    BigDecimal off = most.value().multiply(OFF_THE_EDGE.fraction());
    return List.of(
        range.least().plus(OFF_THE_EDGE), Speed.of(most.value().subtract(off), most.unit()));
  }

  /**
   * Writes a line, without its terminator.
   *
   * @param sequence from 0; wraps around where the template has fewer digits
   * @throws IllegalArgumentException if the speed has more digits than the template
   */
  String write(Speed speed, long sequence) {
    Speed written = form.saysSpeed() ? asWritten(speed) : speed;
    String line = filled(written, sequence, "00");
    if (form.checksum() == Checksum.NONE) {
      return line;
    }
    // What the checksum covers is known only from the pattern, so the line is written twice
    String checksum =
        form.pattern()
            .match(line)
            .flatMap(fields -> fields.field("covered"))
            .map(form.checksum()::hex)
            .orElse("00");
    return filled(written, sequence, checksum);
  }

  /** The speed as this line can say it: in a unit the instrument has, with its decimals. */
  private Speed asWritten(Speed speed) {
    if (!form.saysSpeed()) {
      return byItsCounts(speed);
    }
    Matcher place = PLACE.matcher(template);
    int decimals = 0;
    while (place.find()) {
      if ("speed".equals(place.group(1)) && place.group(3) != null) {
        decimals = Integer.parseInt(place.group(3));
      }
    }
    return speed.to(unitFor(speed.unit()), decimals);
  }

  /** What follows from the whole counts that an arrow of this speed gives. */
  private Speed byItsCounts(Speed speed) {
    Map<String, BigDecimal> counts = form.gates().counts(speed, 0);
    try {
      List<Passage> passages =
          form.gates()
              .passages(
                  field -> Optional.ofNullable(counts.get(field)).map(BigDecimal::toPlainString));
      return GateTimes.speed(passages, unitFor(speed.unit()));
    } catch (Misread misread) {
      throw new IllegalArgumentException(
          "let the clock count faster: for " + speed + " it counts " + counts.values(), misread);
    }
  }

  private SpeedUnit unitFor(SpeedUnit wanted) {
    if (template.contains("{unit}")) {
      return form.unitWords().containsValue(wanted)
          ? wanted
          : form.unitWords().values().iterator().next();
    }
    return form.unitIfNone() == null ? wanted : form.unitIfNone();
  }

  private String filled(Speed speed, long sequence, String checksum) {
    Matcher place = PLACE.matcher(template);
    StringBuilder line = new StringBuilder();
    while (place.find()) {
      String digits = place.group(2);
      int width = digits == null ? 1 : Integer.parseInt(digits);
      String field = place.group(1);
      String text =
          switch (field) {
            case "speed" -> number(speed.value(), width);
            case "sequence" -> number(wrapped(sequence, width), width);
            case "unit" -> wordFor(speed.unit());
            case "status" -> form.goodStatus().stream().findFirst().orElse("");
            case "checksum" -> checksum;
            default -> number(count(field, speed, sequence), width);
          };
      place.appendReplacement(line, Matcher.quoteReplacement(text));
    }
    place.appendTail(line);
    return line.toString();
  }

  private static String number(BigDecimal value, int width) {
    String plain = value.toPlainString();
    int point = plain.indexOf('.');
    int before = point < 0 ? plain.length() : point;
    if (before > width) {
      throw new IllegalArgumentException(plain + " needs more than " + width + " digits");
    }
    return "0".repeat(width - before) + plain;
  }

  private static BigDecimal wrapped(long sequence, int width) {
    return BigDecimal.valueOf(sequence).remainder(BigDecimal.TEN.pow(width));
  }

  private String wordFor(SpeedUnit unit) {
    return form.unitWords().entrySet().stream()
        .filter(word -> word.getValue() == unit)
        .map(Map.Entry::getKey)
        .findFirst()
        .orElse("");
  }

  private BigDecimal count(String field, Speed speed, long shot) {
    BigDecimal count = form.gates().counts(speed, shot).get(field);
    if (count == null) {
      throw new IllegalArgumentException(
          "it has no field {"
              + field
              + "}: use speed, sequence, unit, status, checksum"
              + form.gates().fields().stream().map(", "::concat).collect(Collectors.joining()));
    }
    return count;
  }
}
