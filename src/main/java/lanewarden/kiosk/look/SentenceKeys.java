package lanewarden.kiosk.look;

import lanewarden.bench.Advised;
import lanewarden.bench.Foretold;
import lanewarden.bench.Told;
import lanewarden.bow.BowLimit;
import lanewarden.journal.Sequel;
import lanewarden.metrology.Compared;
import lanewarden.metrology.Guarding;
import lanewarden.metrology.OutlierTest;
import lanewarden.metrology.Straying;
import lanewarden.quantity.Sentence;
import lanewarden.rules.Afterwards;
import lanewarden.rules.Because;
import lanewarden.rules.Consequence;
import lanewarden.rules.Demand;
import lanewarden.rules.Doubt;
import lanewarden.rules.Lapse;
import lanewarden.rules.Odds;
import lanewarden.rules.Worked;
import lanewarden.station.Reckoned;
import lanewarden.station.Verified;

/** Under which key the screens have a sentence of the rooms behind them. */
final class SentenceKeys {

  private SentenceKeys() {}

  /**
   * The key of a form.
   *
   * @throws IllegalArgumentException if the screens know no such sentence
   */
  static String of(Sentence.Form form) {
    if (form instanceof Because because) {
      return ReasonKeys.of(because);
    }
    if (form instanceof Consequence consequence) {
      return ReasonKeys.of(consequence);
    }
    if (form instanceof Sequel sequel) {
      return ReasonKeys.of(sequel);
    }
    if (form instanceof Doubt.Kind kind) {
      return ReasonKeys.of(kind);
    }
    if (form instanceof BowLimit.Need need) {
      return ReasonKeys.of(need);
    }
    if (form instanceof OutlierTest.Name name) {
      return ReasonKeys.of(name);
    }
    if (form instanceof Demand demand) {
      return RuleKeys.of(demand);
    }
    if (form instanceof Afterwards afterwards) {
      return RuleKeys.of(afterwards);
    }
    if (form instanceof Lapse lapse) {
      return RuleKeys.of(lapse);
    }
    if (form instanceof Worked worked) {
      return RuleKeys.of(worked);
    }
    if (form instanceof Odds odds) {
      return RuleKeys.of(odds);
    }
    if (form instanceof Guarding guarding) {
      return RuleKeys.of(guarding);
    }
    if (form instanceof Reckoned reckoned) {
      return RuleKeys.of(reckoned);
    }
    if (form instanceof Compared compared) {
      return InstrumentKeys.of(compared);
    }
    if (form instanceof Verified verified) {
      return InstrumentKeys.of(verified);
    }
    if (form instanceof Advised advised) {
      return BenchKeys.of(advised);
    }
    if (form instanceof Foretold foretold) {
      return BenchKeys.of(foretold);
    }
    if (form instanceof Told told) {
      return BenchKeys.of(told);
    }
    if (form instanceof Straying straying) {
      return BenchKeys.of(straying);
    }
    return FaultKeys.of(form)
        .orElseThrow(
            () -> new IllegalArgumentException("no screen has the sentence " + form.english()));
  }
}
