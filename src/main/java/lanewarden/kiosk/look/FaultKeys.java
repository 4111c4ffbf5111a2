package lanewarden.kiosk.look;

import java.util.Optional;
import lanewarden.bench.PracticeTold;
import lanewarden.quantity.FigureTold;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Slip;
import lanewarden.roster.RosterTold;
import lanewarden.station.FormTold;
import lanewarden.written.CsvTold;
import lanewarden.written.FaultTold;
import lanewarden.written.FileTold;

/** Under which key the screens have what is wrong within a file or a form. */
final class FaultKeys {

  private FaultKeys() {}

  /** The key of a form; empty if it tells no such fault. */
  static Optional<String> of(Sentence.Form form) {
    if (form instanceof FigureTold told) {
      return Optional.of(key(told));
    }
    if (form instanceof Slip told) {
      return Optional.of(key(told));
    }
    if (form instanceof FileTold told) {
      return Optional.of(key(told));
    }
    if (form instanceof CsvTold told) {
      return Optional.of(key(told));
    }
    if (form instanceof RosterTold told) {
      return Optional.of(key(told));
    }
    if (form instanceof PracticeTold told) {
      return Optional.of(key(told));
    }
    if (form instanceof FaultTold told) {
      return Optional.of(key(told));
    }
    if (form instanceof FormTold told) {
      return Optional.of(key(told));
    }
    return BookFaultKeys.of(form);
  }

  private static String key(FigureTold told) {
    return switch (told) {
      case SPEED -> "fault.figure.speed";
      case MASS -> "fault.figure.mass";
      case FORCE -> "fault.figure.force";
      case LENGTH -> "fault.figure.length";
      case ENERGY -> "fault.figure.energy";
      case MOMENTUM -> "fault.figure.momentum";
      case PERCENTAGE -> "fault.figure.percentage";
      case PER_POUND -> "fault.figure.per-pound";
      case NOT_NEGATIVE -> "fault.figure.not-negative";
      case PERCENTAGE_NOT_NEGATIVE -> "fault.figure.percentage-not-negative";
      case PER_POUND_MORE -> "fault.figure.per-pound-more";
      case DIGITS_THEN_UNIT -> "fault.figure.digits-then-unit";
      case THEN_PERCENT -> "fault.figure.then-percent";
      case THEN_PER_POUND -> "fault.figure.then-per-pound";
      case GRAINS_FOR_EACH -> "fault.figure.grains-for-each";
      case ADD_UNIT -> "fault.figure.add-unit";
      case USE_UNIT -> "fault.figure.use-unit";
      case WRITE -> "fault.figure.write";
      case STROKE -> "fault.figure.stroke";
      case A_LENGTH -> "fault.figure.a-length";
      case WHOLE_ARROW -> "fault.figure.whole-arrow";
      case ARROW -> "fault.figure.arrow";
      case DRAW_LENGTH -> "fault.figure.draw-length";
      case EXCHANGED -> "fault.figure.exchanged";
      case STROKE_FIGURES -> "fault.figure.stroke-figures";
    };
  }

  private static String key(Slip told) {
    return switch (told) {
      case MINUS -> "fault.slip.minus";
      case COMMA -> "fault.slip.comma";
      case EXPONENT -> "fault.slip.exponent";
    };
  }

  private static String key(FileTold told) {
    return switch (told) {
      case NOTHING -> "fault.file.nothing";
      case NEAR -> "fault.file.near";
      case NEAR_TEXT -> "fault.file.near-text";
      case BYTES_AT_MOST -> "fault.file.bytes-at-most";
      case BYTES -> "fault.file.bytes";
      case CUT_DOWN -> "fault.file.cut-down";
      case UTF_8 -> "fault.file.encoding";
      case NOT_UTF_8 -> "fault.file.not-encoded";
      case SAVE_UTF_8 -> "fault.file.save-encoded";
    };
  }

  private static String key(CsvTold told) {
    return switch (told) {
      case COMMAS -> "fault.table.commas";
      case SEPARATE -> "fault.table.separate";
      case COLUMN -> "fault.table.column";
      case WITHOUT -> "fault.table.without";
      case ADD_COLUMN -> "fault.table.add-column";
      case ONE_OF -> "fault.table.one-of";
      case COLUMN_OUT -> "fault.table.column-out";
      case ONCE -> "fault.table.once";
      case SECOND_OUT -> "fault.table.second-out";
      case QUOTES_CLOSED -> "fault.table.quotes-closed";
      case CLOSE_QUOTES -> "fault.table.close-quotes";
      case NO_QUOTE -> "fault.table.no-quote";
      case QUOTES_AROUND -> "fault.table.quotes-around";
      case WORDS -> "fault.table.words";
      case WRITE -> "fault.table.write";
      case WITHOUT_SPACES -> "fault.table.without-spaces";
      case SPACES_OUT -> "fault.table.spaces-out";
      case MORE_THAN_ZERO -> "fault.table.more-than-zero";
      case WRITE_MEASURED -> "fault.table.write-measured";
      case WRITE_DECLARED -> "fault.table.write-declared";
      case OR_EMPTY -> "fault.table.or-empty";
      case AT_LEAST -> "fault.table.at-least";
      case OTHER_COLUMN_OR_MEASURED -> "fault.table.other-column-or-measured";
      case AT_MOST -> "fault.table.at-most";
      case OTHER_COLUMN_OR_UNIT -> "fault.table.other-column-or-unit";
      case HEADER_AND_ROWS -> "fault.table.header-and-rows";
      case ONE_LINE -> "fault.table.one-line";
      case SAVE_WHOLE -> "fault.table.save-whole";
      case FIELDS -> "fault.table.fields";
      case FILL_UP -> "fault.table.fill-up";
      case MEND_COMMAS -> "fault.table.mend-commas";
      case HEADER_LIKE -> "fault.table.header-like";
      case HEADER_ONLY -> "fault.table.header-only";
    };
  }

  private static String key(RosterTold told) {
    return switch (told) {
      case COMPETITOR -> "fault.list.competitor";
      case WRITE_HEADER -> "fault.list.write-header";
      case ADD_LINES -> "fault.list.add-lines";
      case NAME -> "fault.list.name";
      case DIVISION_CODE -> "fault.list.division-code";
      case BIB -> "fault.list.bib";
      case AS_SHOWN -> "fault.list.as-shown";
      case BIB_OF_ITS_OWN -> "fault.list.bib-of-its-own";
      case BIB_AGAIN -> "fault.list.bib-again";
      case OWN_BIB -> "fault.list.own-bib";
      case DIVISION -> "fault.list.division";
      case CORRECT -> "fault.list.correct";
    };
  }

  private static String key(PracticeTold told) {
    return switch (told) {
      case SHOT -> "fault.practice.shot";
      case WRITE_HEADER -> "fault.practice.write-header";
      case ADD_LINES -> "fault.practice.add-lines";
      case BOW_NAME -> "fault.practice.bow-name";
      case ARROW_NAME -> "fault.practice.arrow-name";
      case REMARK -> "fault.practice.remark";
      case SET_UPS -> "fault.practice.set-ups";
      case ONE_MORE -> "fault.practice.one-more";
      case FEWER -> "fault.practice.fewer";
      case MISREAD -> "fault.practice.misread";
      case YES_OR_NO -> "fault.practice.yes-or-no";
      case MASS_NEEDED -> "fault.practice.mass-needed";
      case WEIGH -> "fault.practice.weigh";
      case RATED -> "fault.practice.rated";
      case WRITE_CONDITIONS -> "fault.practice.write-conditions";
      case SAME_FOR_BOW -> "fault.practice.same-for-bow";
      case SAME_FOR_ARROW -> "fault.practice.same-for-arrow";
      case TWO_FIGURES -> "fault.practice.two-figures";
      case WRITE_ON_BOTH -> "fault.practice.write-on-both";
    };
  }

  private static String key(FaultTold told) {
    return switch (told) {
      case AT -> "fault.at";
      case AT_KEY -> "fault.at-key";
      case ON_LINE -> "fault.on-line";
      case EXPECTED -> "fault.expected";
      case EXPECTED_KEY -> "fault.expected-key";
      case MENDED -> "fault.mended";
    };
  }

  private static String key(FormTold told) {
    return switch (told) {
      case MORE -> "fault.form.more";
      case EXPECTED -> "fault.form.expected";
      case EXPECTED_ONLY -> "fault.form.expected-only";
      case EXPECTED_ASKED -> "fault.form.expected-asked";
      case FILL_IN -> "fault.form.fill-in";
      case TYPE_AGAIN -> "fault.form.type-again";
      case WHOLE_CHARACTERS -> "fault.form.whole-characters";
      case TYPE_ONCE_MORE -> "fault.form.type-once-more";
      case SHARE_BELOW -> "fault.form.share-below";
      case WRITE_BELOW -> "fault.form.write-below";
      case SPEED_MORE -> "fault.form.speed-more";
      case WRITE_MORE -> "fault.form.write-more";
      case LIGHTER -> "fault.form.lighter";
      case WEIGH_WHOLE -> "fault.form.weigh-whole";
      case MASS_AND_READINGS -> "fault.form.mass-and-readings";
      case MASS_FIRST -> "fault.form.mass-first";
      case DRAW_AND_FORCE -> "fault.form.draw-and-force";
      case EACH_POINT -> "fault.form.each-point";
    };
  }
}
