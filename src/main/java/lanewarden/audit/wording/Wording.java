package lanewarden.audit.wording;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import lanewarden.journal.Check;
import lanewarden.journal.Fact;
import lanewarden.quantity.Speed;
import lanewarden.rules.Division;
import lanewarden.rules.Verdict;

/** How things read in the report. */
public final class Wording {
  private static final int SHORT_HASH = 12;
  private static final int PRINTABLE_FROM = 0x20;
  private static final int PRINTABLE_TO = 0x7e;
  private static final DateTimeFormatter DATE =
      DateTimeFormatter.ofPattern("uuuu-MM-dd", Locale.ROOT).withZone(ZoneOffset.UTC);
  private static final DateTimeFormatter CLOCK =
      DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT).withZone(ZoneOffset.UTC);

  private Wording() {}

  static String date(Instant at) {
    return DATE.format(at);
  }

  static String clock(Instant at) {
    return CLOCK.format(at);
  }

  /** Day and time in UTC, to the second. */
  public static String time(Instant at) {
    return date(at) + " " + clock(at) + " UTC";
  }

  /** How long something lasted, to the second, for example {@code 1 h 2 min 3 s}. */
  public static String lasted(Duration time) {
    String hours = time.toHours() == 0 ? "" : number(time.toHours()) + " h ";
    String minutes = time.toMinutes() == 0 ? "" : time.toMinutesPart() + " min ";
    return hours + minutes + time.toSecondsPart() + " s";
  }

  /** A count and its noun, for example {@code 1 check} and {@code 2 checks}. */
  public static String count(long count, String noun) {
    return count(count, noun, noun + "s");
  }

  /** The same for a noun whose plural is not made by an s. */
  public static String count(long count, String noun, String nouns) {
    return number(count) + " " + (count == 1 ? noun : nouns);
  }

  /** A number with its thousands set apart. */
  public static String number(long number) {
    return String.format(Locale.ROOT, "%,d", number);
  }

  /** A figure with its sign, be it plus or minus, as print has it; nothing is plus. */
  public static String signed(double figure, int decimals) {
    String written = String.format(Locale.ROOT, "%+." + decimals + "f", figure);
    boolean nothing = written.chars().noneMatch(c -> c >= '1' && c <= '9');
    return written.replace('-', nothing ? '+' : '−');
  }

  /** A text between quotation marks, which no mark in it ends. */
  public static String quoted(String text) {
    return "“" + text.replace('“', '"').replace('”', '"') + "”";
  }

  /** Words as they begin a sentence. */
  public static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  /** A check by its number and whose it is. */
  public static String check(Check check) {
    return "Check "
        + check.number()
        + " (bib "
        + check.opened().bib()
        + ", "
        + check.opened().name()
        + ")";
  }

  /** A verdict with its reason. */
  public static String verdict(Verdict verdict) {
    return quoted(verdict.word()) + " (" + verdict.reason() + ")";
  }

  /** When verifications of the instrument are due. */
  public static String plan(Fact.VerificationPlanned plan) {
    List<String> when = new ArrayList<>();
    if (plan.beforeOpening()) {
      when.add("at the opening");
    }
    if (plan.every() != null) {
      when.add("after " + count(plan.every(), "competitor"));
    }
    if (plan.atEnd()) {
      when.add("at the end");
    }
    return when.isEmpty() ? "never" : String.join(", ", when);
  }

  /** Enough of a hash to tell two apart. */
  public static String shortHash(String hash) {
    return hash.length() <= SHORT_HASH ? hash : hash.substring(0, SHORT_HASH) + "…";
  }

  /** Entry numbers, with runs drawn together: {@code 3, 5–9, 12}. */
  public static String numbers(List<Long> numbers) {
    if (numbers.isEmpty()) {
      return "none";
    }
    List<String> parts = new ArrayList<>();
    int from = 0;
    for (int i = 1; i <= numbers.size(); i++) {
      if (i == numbers.size() || numbers.get(i) != numbers.get(i - 1) + 1) {
        parts.add(run(numbers, from, i));
        from = i;
      }
    }
    return String.join(", ", parts);
  }

  private static String run(List<Long> numbers, int from, int to) {
    long first = numbers.get(from);
    long last = numbers.get(to - 1);
    if (to - from <= 2) {
      return numbers.subList(from, to).stream()
          .map(String::valueOf)
          .collect(Collectors.joining(", "));
    }
    return first + "–" + last;
  }

  /** A speed without zeros that say nothing: {@code 309 ft/s} for 309.00 ft/s. */
  public static String plain(Speed speed) {
    return Speed.of(digits(speed.value()), speed.unit()).toString();
  }

  /** The limit of a division in words, with what is allowed. */
  public static String limit(Division division) {
    List<String> limits = new ArrayList<>();
    division
        .rule()
        .speed()
        .ifPresent(
            speed ->
                limits.add(
                    speed.limit()
                        + (speed.allowed().compareTo(speed.limit()) == 0
                            ? ", no tolerance"
                            : ", allowed " + plain(speed.allowed()))));
    division.rule().energy().ifPresent(energy -> limits.add(energy.limit().toString()));
    return limits.isEmpty() ? "no limit" : String.join("; ", limits);
  }

  private static String digits(BigDecimal value) {
    return value.stripTrailingZeros().toPlainString();
  }

  /** Bytes for the eye: printable ASCII as it is, all else by its escape. */
  public static String bytes(byte[] raw) {
    StringBuilder text = new StringBuilder();
    for (byte b : raw) {
      int value = Byte.toUnsignedInt(b);
      if (value == '\r') {
        text.append("\\r");
      } else if (value == '\n') {
        text.append("\\n");
      } else if (value == '\\') {
        text.append("\\\\");
      } else if (value >= PRINTABLE_FROM && value <= PRINTABLE_TO) {
        text.append((char) value);
      } else {
        text.append(String.format(Locale.ROOT, "\\x%02X", value));
      }
    }
    return text.toString();
  }
}
