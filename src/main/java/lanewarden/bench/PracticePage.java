package lanewarden.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import lanewarden.quantity.Extremes;
import lanewarden.quantity.FigureTold;
import lanewarden.quantity.Force;
import lanewarden.quantity.Length;
import lanewarden.quantity.Mass;
import lanewarden.quantity.PowerStroke;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;
import lanewarden.written.CsvCell;
import lanewarden.written.CsvFaults;
import lanewarden.written.CsvRow;
import lanewarden.written.WrittenRefused;

/** The lines of a practice file being read; for one thread. */
final class PracticePage {
  private static final List<PracticeColumn> CONDITIONS =
      List.of(
          PracticeColumn.RATED_DRAW_WEIGHT,
          PracticeColumn.RATED_DRAW_LENGTH,
          PracticeColumn.RATED_ARROW_MASS);

  private record Pair(String bow, String arrow) {}

  private final CsvFaults faults;
  private final Map<String, StatedFigures> bows = new LinkedHashMap<>();
  private final Map<String, StatedFigures> arrows = new LinkedHashMap<>();
  private final Map<Pair, List<PracticeShot>> shots = new LinkedHashMap<>();

  private PracticePage(CsvFaults faults) {
    this.faults = faults;
  }

  /**
   * @throws WrittenRefused with every fault
   */
  static Practice read(String file, byte[] utf8) throws WrittenRefused {
    CsvFaults faults = new CsvFaults(file);
    PracticePage page = new PracticePage(faults);
    PracticeColumn.TABLE.read(file, utf8, faults).forEach(page::take);
    page.bows.values().forEach(page::checkBow);
    page.arrows.values().forEach(page::checkArrow);
    faults.refuseIfAny();
    return new Practice(file, page.series(), utf8);
  }

  private void take(CsvRow<PracticeColumn> row) {
    CsvCell bow = row.required(PracticeColumn.BOW);
    CsvCell arrow = row.required(PracticeColumn.ARROW);
    row.requireWords(bow, PracticeTold.BOW_NAME);
    row.requireWords(arrow, PracticeTold.ARROW_NAME);
    takeBow(row, bow);
    Optional<Mass> mass =
        arrows
            .computeIfAbsent(
                arrow.text(), a -> new StatedFigures(PracticeTold.SAME_FOR_ARROW, arrow, faults))
            .take(
                row,
                PracticeColumn.ARROW_MASS,
                Sentence.of(FigureTold.MASS, "350 gr"),
                Mass::parse);
    checkMass(row, PracticeColumn.ARROW_MASS, mass);
    Optional<Speed> speed =
        row.requiredQuantity(
            PracticeColumn.SPEED, Sentence.of(FigureTold.SPEED, "298 ft/s"), Speed::parse);
    PracticeShot.Word word = word(row);
    Optional<CsvCell> remark = row.filled(PracticeColumn.REMARK);
    remark.ifPresent(cell -> row.requireWords(cell, PracticeTold.REMARK));
    if (speed.isPresent()) {
      Pair pair = new Pair(bow.text(), arrow.text());
      if (!shots.containsKey(pair) && shots.size() == Practice.MOST_SET_UPS) {
        faults.note(
            bow,
            Sentence.of(PracticeTold.SET_UPS, Practice.MOST_SET_UPS),
            Sentence.of(PracticeTold.ONE_MORE),
            Sentence.of(PracticeTold.FEWER));
      }
      shots
          .computeIfAbsent(pair, p -> new ArrayList<>())
          .add(
              new PracticeShot(
                  speed.get(), word, remark.map(CsvCell::text).orElse(""), bow.line()));
    }
  }

  private void takeBow(CsvRow<PracticeColumn> row, CsvCell label) {
    StatedFigures bow =
        bows.computeIfAbsent(
            label.text(), b -> new StatedFigures(PracticeTold.SAME_FOR_BOW, label, faults));
    Sentence force = Sentence.of(FigureTold.FORCE, "60 lbf");
    Sentence length = Sentence.of(FigureTold.LENGTH, "29 in");
    bow.take(row, PracticeColumn.DRAW_WEIGHT, force, Force::parse);
    Optional<Length> draw = bow.take(row, PracticeColumn.DRAW_LENGTH, length, Length::parse);
    row.atMost(PracticeColumn.DRAW_LENGTH, draw, FigureTold.DRAW_LENGTH, Extremes.LONGEST_DRAW);
    bow.take(row, PracticeColumn.BRACE_HEIGHT, length, Length::parse);
    bow.take(
        row, PracticeColumn.RATED_SPEED, Sentence.of(FigureTold.SPEED, "335 ft/s"), Speed::parse);
    bow.take(row, PracticeColumn.RATED_DRAW_WEIGHT, force, Force::parse);
    bow.take(row, PracticeColumn.RATED_DRAW_LENGTH, length, Length::parse);
    checkMass(
        row,
        PracticeColumn.RATED_ARROW_MASS,
        bow.take(
            row,
            PracticeColumn.RATED_ARROW_MASS,
            Sentence.of(FigureTold.MASS, "350 gr"),
            Mass::parse));
  }

  private static void checkMass(
      CsvRow<PracticeColumn> row, PracticeColumn column, Optional<Mass> mass) {
    row.atLeast(column, mass, FigureTold.WHOLE_ARROW, Extremes.LIGHTEST_ARROW);
    row.atMost(column, mass, FigureTold.ARROW, Extremes.HEAVIEST_ARROW);
  }

  private PracticeShot.Word word(CsvRow<PracticeColumn> row) {
    Optional<CsvCell> cell = row.filled(PracticeColumn.MISREAD);
    String written = cell.map(CsvCell::text).orElse("");
    Optional<PracticeShot.Word> word =
        Arrays.stream(PracticeShot.Word.values())
            .filter(w -> w.written().equals(written))
            .findFirst();
    if (word.isEmpty()) {
      faults.wrong(
          cell.orElseThrow(),
          Sentence.of(PracticeTold.MISREAD),
          Sentence.of(PracticeTold.YES_OR_NO));
    }
    return word.orElse(PracticeShot.Word.NONE);
  }

  private void checkArrow(StatedFigures arrow) {
    if (arrow.lacks(PracticeColumn.ARROW_MASS)) {
      faults.wrong(
          arrow.label(), Sentence.of(PracticeTold.MASS_NEEDED), Sentence.of(PracticeTold.WEIGH));
    }
  }

  private void checkBow(StatedFigures bow) {
    Optional<CsvCell> brace = bow.cell(PracticeColumn.BRACE_HEIGHT);
    if (brace.isPresent()) {
      bow.get(PracticeColumn.DRAW_LENGTH, Length.class)
          .map(draw -> new PowerStroke(draw, length(bow, PracticeColumn.BRACE_HEIGHT)))
          .filter(stroke -> !stroke.isSome())
          .ifPresent(
              none ->
                  faults.note(
                      brace.get(),
                      PowerStroke.DEMANDED,
                      none.figures(),
                      Sentence.of(FigureTold.EXCHANGED)));
    }
    Optional<CsvCell> rated = bow.cell(PracticeColumn.RATED_SPEED);
    List<String> missing =
        CONDITIONS.stream().filter(bow::lacks).map(PracticeColumn::title).toList();
    if (rated.isPresent() && !missing.isEmpty()) {
      faults.wrong(
          rated.get(),
          Sentence.of(PracticeTold.RATED),
          Sentence.of(PracticeTold.WRITE_CONDITIONS, String.join(", ", missing)));
    }
  }

  private static Length length(StatedFigures bow, PracticeColumn column) {
    return bow.get(column, Length.class).orElseThrow();
  }

  /** Called where nothing is wrong: then every bow and arrow has what it must have. */
  private List<Series> series() {
    List<Series> series = new ArrayList<>();
    shots.forEach(
        (pair, taken) ->
            series.add(
                new Series(
                    bow(pair.bow(), figures(bows, pair.bow())),
                    pair.arrow(),
                    figures(arrows, pair.arrow())
                        .get(PracticeColumn.ARROW_MASS, Mass.class)
                        .orElseThrow(),
                    taken)));
    return series;
  }

  private static StatedFigures figures(Map<String, StatedFigures> all, String label) {
    return Objects.requireNonNull(all.get(label));
  }

  private static PracticeBow bow(String label, StatedFigures figures) {
    Optional<Rating> rating =
        figures
            .get(PracticeColumn.RATED_SPEED, Speed.class)
            .map(
                speed ->
                    new Rating(
                        speed,
                        figures.get(PracticeColumn.RATED_DRAW_WEIGHT, Force.class).orElseThrow(),
                        length(figures, PracticeColumn.RATED_DRAW_LENGTH),
                        figures.get(PracticeColumn.RATED_ARROW_MASS, Mass.class).orElseThrow()));
    return new PracticeBow(
        label,
        figures.get(PracticeColumn.DRAW_WEIGHT, Force.class),
        figures.get(PracticeColumn.DRAW_LENGTH, Length.class),
        figures.get(PracticeColumn.BRACE_HEIGHT, Length.class),
        rating);
  }
}
