package lanewarden.command;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lanewarden.journal.ProtestFact;
import lanewarden.station.CheckRecords;
import lanewarden.station.Protests;
import lanewarden.station.Station;
import lanewarden.station.StationException;

/**
 * Protests, rulings and corrections as an official types them at the line.
 *
 * @param protests where they are signed
 * @param checks among which a check is meant
 */
record DocketWords(Protests protests, CheckRecords checks) {
  private static final String NUMBER = "([0-9]{1,9})";
  private static final String BECAUSE = "\\s+because\\s+(.+)";
  private static final String CHECK = "(.+?)";
  private static final Pattern FILED =
      form(CHECK + "(?:\\s+as\\s+(.+?))?\\s+by\\s+(.+?)" + BECAUSE);
  private static final Pattern RULED =
      form(NUMBER + "\\s+(upheld|dismissed)\\s+" + NUMBER + "\\s*:\\s*(.+?)" + BECAUSE);
  private static final Pattern CORRECTED =
      form(CHECK + "\\s+(bib|division|#[0-9]{1,3})\\s+(.+?)" + BECAUSE);

  /** Those of a station. */
  static DocketWords at(Station station) {
    return new DocketWords(station.protests(), station.records());
  }

  private static Pattern form(String pattern) {
    return Pattern.compile(pattern, Pattern.CASE_INSENSITIVE);
  }

  /** For example {@code 101 as spot check by the range captain because the string was changed}. */
  void file(String typed) throws StationException, CommandRefused {
    Matcher words = match(FILED, typed, LineWord.PROTEST);
    protests.file(
        checks.last(words.group(1)),
        cause(Optional.ofNullable(words.group(2)).orElse(ProtestFact.Cause.PROTEST.word())),
        words.group(3),
        words.group(4));
  }

  /** For example {@code 40 upheld 45: may shoot on because the recheck was within}. */
  void rule(String typed) throws StationException, CommandRefused {
    Matcher words = match(RULED, typed, LineWord.RULE);
    protests.rule(
        number(words.group(1)),
        answer(words.group(2)),
        number(words.group(3)),
        words.group(4),
        words.group(5));
  }

  /** For example {@code 101 #2 301.2 because the digits were exchanged}. */
  void correct(String typed) throws StationException, CommandRefused {
    Matcher words = match(CORRECTED, typed, LineWord.CORRECT);
    long check = checks.last(words.group(1));
    String part = words.group(2).toLowerCase(Locale.ROOT);
    String right = words.group(3);
    String reason = words.group(4);
    if (part.startsWith("#")) {
      protests.correctReading(check, Integer.parseInt(part.substring(1)), right, reason);
    } else if (part.equals(ProtestFact.Part.BIB.word())) {
      protests.correctBib(check, right, reason);
    } else {
      protests.correctDivision(check, right, reason);
    }
  }

  /** The number of a correction. */
  void confirm(String typed) throws StationException, CommandRefused {
    protests.confirm(number(match(form(NUMBER), typed, LineWord.CONFIRM).group(1)));
  }

  /** The number of a protest. */
  static long protest(String typed) throws CommandRefused {
    return number(match(form(NUMBER), typed, LineWord.RECHECK).group(1));
  }

  /** The cause of this word. */
  static ProtestFact.Cause cause(String word) throws CommandRefused {
    String plain = word.strip().toLowerCase(Locale.ROOT);
    Optional<ProtestFact.Cause> meant =
        Stream.of(ProtestFact.Cause.values()).filter(c -> c.word().equals(plain)).findFirst();
    return meant.orElseThrow(
        () ->
            CommandRefused.misstep(
                "OCCASION-UNKNOWN",
                "Nothing was filed.",
                "\"" + word.strip() + "\" is no occasion that is known here.",
                "Say one of: "
                    + Stream.of(ProtestFact.Cause.values())
                        .map(ProtestFact.Cause::word)
                        .collect(Collectors.joining(", "))
                    + "."));
  }

  /** The answer of this word. */
  static ProtestFact.Answer answer(String word) throws CommandRefused {
    String plain = word.strip().toLowerCase(Locale.ROOT);
    Optional<ProtestFact.Answer> meant =
        Stream.of(ProtestFact.Answer.values()).filter(a -> a.word().equals(plain)).findFirst();
    return meant.orElseThrow(
        () ->
            CommandRefused.misstep(
                "RULING-UNKNOWN",
                "Nothing was signed.",
                "\"" + word.strip() + "\" is no ruling.",
                "Say upheld or dismissed."));
  }

  private static long number(String digits) {
    return Long.parseLong(digits);
  }

  private static Matcher match(Pattern pattern, String typed, LineWord word) throws CommandRefused {
    Matcher matcher = pattern.matcher(typed);
    if (!matcher.matches()) {
      throw CommandRefused.misstep(
          "WORDS-INCOMPLETE",
          "Nothing was signed.",
          typed.isEmpty() ? "Nothing follows the word." : "\"" + typed + "\" was not understood.",
          "Type it as: " + word.form() + ".");
    }
    return matcher;
  }
}
