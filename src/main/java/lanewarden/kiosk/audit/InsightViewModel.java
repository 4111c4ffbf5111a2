package lanewarden.kiosk.audit;

import java.nio.file.Path;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import lanewarden.kiosk.instrument.ChartViewModel;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.protest.DocketWords;
import lanewarden.kiosk.protest.DossierPage;
import lanewarden.station.CheckRecords;
import lanewarden.station.InstrumentChart;
import lanewarden.station.LedgerRecords;
import lanewarden.station.Trouble;

/** What can be looked into in a ledger alone; used on the screen's thread. */
final class InsightViewModel {

  /**
   * Checks that were looked for.
   *
   * @param cautions why not all is proved or shown
   * @param pages those that can be shown, the newest first
   */
  record Checks(List<String> cautions, List<DossierPage> pages) {}

  /** What was found, and how it is told. */
  private record Found<T>(T shown, Ending told) {}

  private final LedgerViewModel ledgers;
  private final ErrandViewModel errand;
  private final DocketWords words;
  private final Texts texts;

  InsightViewModel(
      LedgerViewModel ledgers, ErrandViewModel errand, DocketWords words, Texts texts) {
    this.ledgers = ledgers;
    this.errand = errand;
    this.words = words;
    this.texts = texts;
  }

  /**
   * Looks into checks.
   *
   * @param which a bib, whose checks are all meant, or the number of a check
   * @param shows takes what was found
   */
  void checks(String ledger, String which, Consumer<Checks> shows, Consumer<Trouble> missed) {
    ask(
        "records.check",
        ledger,
        file -> checks(LedgerRecords.of(file), file, which),
        shows,
        missed);
  }

  private Found<Checks> checks(LedgerRecords found, Path file, String which) throws Exception {
    CheckRecords records = found.checks();
    List<Long> meant = found.meant(which);
    List<DossierPage> pages = new ArrayList<>();
    List<String> cautions = new ArrayList<>();
    if (!found.sound()) {
      cautions.add(texts.of("records.told.docket-unproved"));
    }
    if (meant.isEmpty()) {
      cautions.add(texts.of("records.check.none"));
    }
    for (long number : meant) {
      if (records.hasRule(number)) {
        pages.add(DossierPage.of(records.of(number).orElseThrow(), words, texts));
      } else {
        cautions.add(texts.of("records.check.no-rule", number));
      }
    }
    Ending.Lines lines = new Ending.Lines().fact(texts.of("records.told.ledger", file));
    cautions.forEach(lines::wrong);
    return new Found<>(
        new Checks(cautions, pages),
        new Ending(found.sound(), texts.of("records.check.told", pages.size()), lines.all()));
  }

  /**
   * Looks at the charts of the instrument.
   *
   * @param shows takes them
   */
  void chart(String ledger, Consumer<ChartViewModel> shows, Consumer<Trouble> missed) {
    ask(
        "records.chart",
        ledger,
        file -> {
          LedgerRecords found = LedgerRecords.of(file);
          Ending.Lines lines = new Ending.Lines().fact(texts.of("records.told.ledger", file));
          if (!found.sound()) {
            lines.wrong(texts.of("records.told.docket-unproved"));
          }
          int shots = found.chart().map(InstrumentChart::compared).map(List::size).orElse(0);
          return new Found<>(
              found, new Ending(found.sound(), texts.of("records.chart.told", shots), lines.all()));
        },
        found -> {
          ChartViewModel charts = new ChartViewModel(texts, ZoneId.systemDefault());
          charts.take(found);
          shows.accept(charts);
        },
        missed);
  }

  /** Looks something up off the screen's thread. */
  @FunctionalInterface
  private interface Search<T> {
    Found<T> in(Path ledger) throws Exception;
  }

  private <T> void ask(
      String name, String ledger, Search<T> search, Consumer<T> shows, Consumer<Trouble> missed) {
    errand.ask(
        () -> search.in(ledgers.places().ledger(ledger)),
        found -> {
          ledgers.named(ledger);
          errand.end(texts.of(name), found.told());
          shows.accept(found.shown());
        },
        missed);
  }
}
