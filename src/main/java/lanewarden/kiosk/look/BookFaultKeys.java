package lanewarden.kiosk.look;

import java.util.Optional;
import lanewarden.quantity.Sentence;
import lanewarden.rules.BookTold;
import lanewarden.written.TomlTold;

/** Under which key the screens have what is wrong in a rule book, or in any TOML file. */
final class BookFaultKeys {

  private BookFaultKeys() {}

  /** The key of a form; empty if it tells no such fault. */
  static Optional<String> of(Sentence.Form form) {
    if (form instanceof TomlTold told) {
      return Optional.of(key(told));
    }
    if (form instanceof BookTold told) {
      return Optional.of(key(told));
    }
    return Optional.empty();
  }

  private static String key(TomlTold told) {
    return switch (told) {
      case LEFT_OUT -> "fault.toml.left-out";
      case TAKE_OUT -> "fault.toml.take-out";
      case TEXT -> "fault.toml.text";
      case TEXT_QUOTED -> "fault.toml.text-quoted";
      case WRITE_TEXT -> "fault.toml.write-text";
      case WHOLE -> "fault.toml.whole";
      case WITHOUT_QUOTES -> "fault.toml.without-quotes";
      case NUMBER_LIKE -> "fault.toml.number-like";
      case TRUE_OR_FALSE -> "fault.toml.true-or-false";
      case WRITE_TRUE -> "fault.toml.write-true";
      case DATE -> "fault.toml.date";
      case DATE_UNQUOTED -> "fault.toml.date-unquoted";
      case DATE_LIKE -> "fault.toml.date-like";
      case TEXTS -> "fault.toml.texts";
      case WRITE_TEXTS -> "fault.toml.write-texts";
      case ONE_OR_MORE -> "fault.toml.one-or-more";
      case EMPTY_LIST -> "fault.toml.empty-list";
      case WRITE_ITEMS -> "fault.toml.write-items";
      case ITEMS_AT_MOST -> "fault.toml.items-at-most";
      case ITEMS -> "fault.toml.items";
      case KEEP_NEEDED -> "fault.toml.keep-needed";
      case BLANK_ITEM -> "fault.toml.blank-item";
      case QUOTED -> "fault.toml.quoted";
      case ONE_OF -> "fault.toml.one-of";
      case TAKE_ONE -> "fault.toml.take-one";
      case WORD_QUOTED -> "fault.toml.word-quoted";
      case TABLE -> "fault.toml.table";
      case LIST -> "fault.toml.list";
      case ADD_SECTION -> "fault.toml.add-section";
      case OWN_LINE -> "fault.toml.own-line";
      case TABLES -> "fault.toml.tables";
      case OWN_LINES -> "fault.toml.own-lines";
      case KNOWN -> "fault.toml.known";
      case UNKNOWN -> "fault.toml.unknown";
      case LINE_OUT -> "fault.toml.line-out";
      case LINE_OUT_OR -> "fault.toml.line-out-or";
      case ADD_KEY -> "fault.toml.add-key";
      case TOML -> "fault.toml.toml";
      case NESTED -> "fault.toml.nested";
      case TOO_DEEP -> "fault.toml.too-deep";
      case LIST_LIKE -> "fault.toml.list-like";
      case NO_MONTH -> "fault.toml.no-month";
      case NO_DAY -> "fault.toml.no-day";
      case NO_SUCH_DAY -> "fault.toml.no-such-day";
      case KEEP_ONE -> "fault.toml.keep-one";
      case SMALLER -> "fault.toml.smaller";
      case REAL_DATE -> "fault.toml.real-date";
      case CHARACTER -> "fault.toml.character";
      case CONTROL -> "fault.toml.control";
      case CLOSE_TEXT -> "fault.toml.close-text";
      case COMMA_BETWEEN -> "fault.toml.comma-between";
      case COMMA_OUT -> "fault.toml.comma-out";
      case KEY_VALUE -> "fault.toml.key-value";
    };
  }

  private static String key(BookTold told) {
    return switch (told) {
      case CODE -> "fault.book.code";
      case SHORT_CODE -> "fault.book.short-code";
      case NAME -> "fault.book.name";
      case FEWER_WORDS -> "fault.book.fewer-words";
      case FEWER_WORDS_ON_A_LINE -> "fault.book.fewer-words-on-a-line";
      case ONE_LINE -> "fault.book.one-line";
      case SOME_WORDS -> "fault.book.some-words";
      case OWN_CODE -> "fault.book.own-code";
      case SECOND_TIME -> "fault.book.second-time";
      case GIVE_OWN_CODE -> "fault.book.give-own-code";
      case DIVISIONS_AT_MOST -> "fault.book.divisions-at-most";
      case ONE_DIVISION -> "fault.book.one-division";
      case NONE -> "fault.book.none";
      case ADD_DIVISION -> "fault.book.add-division";
      case WRITE_FORMAT -> "fault.book.write-format";
      case OTHER_FORMAT -> "fault.book.other-format";
      case SPEED_FROM -> "fault.book.speed-from";
      case PERCENTAGE_FROM -> "fault.book.percentage-from";
      case ENERGY_FROM -> "fault.book.energy-from";
      case DRAW_WEIGHT_FROM -> "fault.book.draw-weight-from";
      case PER_POUND_FROM -> "fault.book.per-pound-from";
      case CHECK_FIGURE -> "fault.book.check-figure";
      case ENERGY -> "fault.book.energy";
      case DRAW_WEIGHT -> "fault.book.draw-weight";
      case LIMIT -> "fault.book.limit";
      case GUARD -> "fault.book.guard";
      case TOLERANCE -> "fault.book.tolerance";
      case ACCURACY -> "fault.book.accuracy";
      case ROUNDING -> "fault.book.rounding";
      case HOW_AND_STEP -> "fault.book.how-and-step";
      case STEP_MORE_THAN_ZERO -> "fault.book.step-more-than-zero";
      case UNIT_OF_LIMIT -> "fault.book.unit-of-limit";
      case IN_UNIT -> "fault.book.in-unit";
      case IN_UNIT_OR_SHARE -> "fault.book.in-unit-or-share";
      case NO_SPEED_LIMIT -> "fault.book.no-speed-limit";
      case NO_ENERGY_LIMIT -> "fault.book.no-energy-limit";
      case GUARDED_ONLY -> "fault.book.guarded-only";
      case ONLY_USER -> "fault.book.only-user";
      case NO_LIMIT -> "fault.book.no-limit";
      case NO_DRAW_WEIGHT -> "fault.book.no-draw-weight";
      case NO_SHOT -> "fault.book.no-shot";
      case NOT_CHECKED -> "fault.book.not-checked";
      case FROM_SPEED_LIMIT -> "fault.book.from-speed-limit";
      case NO_TEST -> "fault.book.no-test";
      case ABOUT_SPEED -> "fault.book.about-speed";
      case NO_SPREAD -> "fault.book.no-spread";
      case NONE_BEFORE -> "fault.book.none-before";
      case TEST_TAKES -> "fault.book.test-takes";
      case K_OF_N -> "fault.book.k-of-n";
      case TOGETHER -> "fault.book.together";
      case TOGETHER_AS -> "fault.book.together-as";
      case OUT_OR_OWN_DIVISION -> "fault.book.out-or-own-division";
      case OUT_OR_COUNT_MORE -> "fault.book.out-or-count-more";
      case OUT_OR_K_OF_N -> "fault.book.out-or-k-of-n";
      case TENTH -> "fault.book.tenth";
      case NARROWER -> "fault.book.narrower";
      case DIXON_AT_MOST -> "fault.book.dixon-at-most";
      case GRUBBS_OR_FEWER -> "fault.book.grubbs-or-fewer";
      case TEST -> "fault.book.test";
      case NAME_TEST -> "fault.book.name-test";
      case DIXON_LEVEL -> "fault.book.dixon-level";
      case LEVEL -> "fault.book.level";
      case MORE_THAN_LEAST_ARROW -> "fault.book.more-than-least-arrow";
      case RAISE_OR_LOWER -> "fault.book.raise-or-lower";
      case AT_LEAST_DRAW -> "fault.book.at-least-draw";
      case OTHER_TEXT -> "fault.book.other-text";
      case SECOND_OUT -> "fault.book.second-out";
      case SHARE -> "fault.book.share";
      case SHARE_DRAWN -> "fault.book.share-drawn";
      case OTHER_CONSEQUENCE -> "fault.book.other-consequence";
      case ALLOW_RECHECK -> "fault.book.allow-recheck";
      case BAND -> "fault.book.band";
      case WRITE_BAND -> "fault.book.write-band";
      case BAND_MORE_THAN_ZERO -> "fault.book.band-more-than-zero";
      case BEHIND_COLON -> "fault.book.behind-colon";
      case FURTHER -> "fault.book.further";
      case IN_ORDER -> "fault.book.in-order";
      case BAND_HOLDS -> "fault.book.band-holds";
      case WIDER -> "fault.book.wider";
      case SHOTS_AT_LEAST -> "fault.book.shots-at-least";
      case MORE_SHOTS -> "fault.book.more-shots";
      case VOIDS_OF_ONE -> "fault.book.voids-of-one";
      case VOIDS -> "fault.book.voids";
      case FORGIVE_FEWER -> "fault.book.forgive-fewer";
      case WITHIN_AT_MOST -> "fault.book.within-at-most";
      case ASK_FEWER -> "fault.book.ask-fewer";
    };
  }
}
