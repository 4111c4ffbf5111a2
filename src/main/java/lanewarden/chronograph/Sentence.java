package lanewarden.chronograph;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;
import org.jspecify.annotations.Nullable;

/**
 * Reads one whole line as the profile says it is written. Every check must pass; a damaged line is
 * never mended. Holds no state.
 */
final class Sentence {
  /** What a line said. */
  sealed interface Outcome {
    /** Whether the line had the form and the checksum, whatever it then said. */
    boolean undamaged();
  }

  /** A speed, and the instrument's number of the line if it has one. */
  record Said(Speed speed, @Nullable String sequence) implements Outcome {
    @Override
    public boolean undamaged() {
      return true;
    }
  }

  /** No speed. */
  record Unfit(Reason reason, String words) implements Outcome {
    @Override
    public boolean undamaged() {
      return reason != Reason.PATTERN && reason != Reason.CHECKSUM;
    }
  }

  private final SentenceForm form;

  Sentence(SentenceForm form) {
    this.form = form;
  }

  /**
   * Reads a line.
   *
   * @param text the line without its terminator, one character a byte
   */
  Outcome read(String text) {
    try {
      SentencePattern.Fields fields = matched(text);
      checkChecksum(fields);
      checkStatus(fields);
      Speed speed = form.saysSpeed() ? said(fields) : computed(fields);
      return new Said(speed, fields.field("sequence").orElse(null));
    } catch (Misread misread) {
      return new Unfit(misread.reason(), misread.words());
    }
  }

  private Speed said(SentencePattern.Fields fields) throws Misread {
    Speed speed = Speed.of(number(fields.field("speed").orElse("")), unit(fields));
    checkRange(speed);
    List<Passage> passages = form.gates().passages(fields::field);
    form.gates().agree(passages, speed);
    form.gates().agree(passages, speed.unit());
    return speed;
  }

  private Speed computed(SentencePattern.Fields fields) throws Misread {
    SpeedUnit unit = unit(fields);
    List<Passage> passages = form.gates().passages(fields::field);
    form.gates().agree(passages, unit);
    Speed speed = GateTimes.speed(passages, unit);
    checkRange(speed);
    return speed;
  }

  private SentencePattern.Fields matched(String text) throws Misread {
    Optional<SentencePattern.Fields> fields =
        text.startsWith(form.start()) ? form.pattern().match(text) : Optional.empty();
    return fields.orElseThrow(
        () ->
            new Misread(
                Reason.PATTERN,
                "The line does not have the form of this instrument's sentence: damaged on the way,"
                    + " two lines run together, or the wrong profile. Shoot again."));
  }

  private void checkChecksum(SentencePattern.Fields fields) throws Misread {
    if (form.checksum() == Checksum.NONE) {
      return;
    }
    String written = fields.field("checksum").orElse("");
    String computed = form.checksum().hex(fields.field("covered").orElse(""));
    if (!written.equalsIgnoreCase(computed)) {
      throw new Misread(
          Reason.CHECKSUM,
          "The line carries checksum \"%s\", its characters give %s: it was damaged on the way. Shoot again; if this repeats, check cable and baud rate."
              .formatted(written, computed));
    }
  }

  private void checkStatus(SentencePattern.Fields fields) throws Misread {
    if (!form.pattern().groups().contains("status")) {
      return;
    }
    String status = fields.field("status").orElse("");
    if (!form.goodStatus().contains(status)) {
      throw new Misread(
          Reason.STATUS,
          "The instrument reports status \"%s\", not \"%s\": it does not trust its own measurement. Check light and arrow path, then shoot again."
              .formatted(status, String.join("\" or \"", form.goodStatus())));
    }
  }

  private static BigDecimal number(String written) throws Misread {
    Numeral numeral = Numeral.of(written);
    if (numeral instanceof Numeral.Finite finite) {
      if (finite.value().signum() < 0) {
        throw new Misread(
            Reason.OUT_OF_RANGE, "\"" + written + "\" is below zero: no arrow. Shoot again.");
      }
      return finite.value();
    }
    if (numeral instanceof Numeral.Infinite) {
      throw new Misread(
          Reason.OUT_OF_RANGE,
          "\"" + written + "\" means beyond the instrument's range. Shoot again.");
    }
    throw new Misread(
        Reason.NOT_A_NUMBER, "\"" + written + "\" is no measured number. Shoot again.");
  }

  private SpeedUnit unit(SentencePattern.Fields fields) throws Misread {
    Optional<String> word = fields.field("unit");
    if (word.isEmpty()) {
      SpeedUnit fixed = form.unitIfNone();
      if (fixed == null) {
        throw new Misread(Reason.UNIT, "The line has no unit. Set the instrument to send one.");
      }
      return fixed;
    }
    SpeedUnit unit = form.unitWords().get(word.get());
    if (unit == null) {
      throw new Misread(
          Reason.UNIT,
          "\"%s\" is no unit of this instrument, which are: %s. Set the instrument to one of them."
              .formatted(word.get(), String.join(", ", form.unitWords().keySet())));
    }
    return unit;
  }

  private void checkRange(Speed speed) throws Misread {
    if (!form.plausible().holds(speed)) {
      throw new Misread(
          Reason.OUT_OF_RANGE,
          "Outside %s, so no arrow: a misread, or the wrong unit. Shoot again."
              .formatted(form.plausible()));
    }
  }
}
