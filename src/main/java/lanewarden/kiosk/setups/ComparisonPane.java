package lanewarden.kiosk.setups;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javafx.beans.value.ObservableValue;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import lanewarden.bench.ComparisonSheet;
import lanewarden.bench.PairDifference;
import lanewarden.kiosk.look.Mark;
import lanewarden.kiosk.look.PanelFrame;
import lanewarden.kiosk.look.ScreenFrame;
import lanewarden.kiosk.look.Sign;
import lanewarden.kiosk.look.TextSize;
import lanewarden.kiosk.look.Texts;
import lanewarden.quantity.Sentence;

/**
 * What the shots show: the means as a picture, the figures, which differences are real, and what
 * stays to the limits.
 */
final class ComparisonPane extends VBox {
  private final Texts texts;
  private final MeansPicture picture;
  private Optional<ComparisonSheet> shown = Optional.empty();

  // Held here, so that it is followed as long as this lives
  private final ObservableValue<TextSize> size = ScreenFrame.sizeAt(this);

  ComparisonPane(Texts texts) {
    this.texts = texts;
    picture = new MeansPicture(texts);
    setId("setups-told");
    size.addListener((all, before, now) -> show(shown));
  }

  /** Tells of a comparison, or that nothing was shot. */
  void show(Optional<ComparisonSheet> sheet) {
    shown = sheet;
    getChildren().clear();
    if (sheet.isEmpty()) {
      say(texts.of("setups.nothing"));
      return;
    }
    tell(sheet.get());
  }

  private void tell(ComparisonSheet sheet) {
    head(texts.of(sheet.summary()));
    for (Sentence out : sheet.leftOut()) {
      getChildren().add(flagged(texts.of("setups.left-out", texts.of(out))));
    }
    picture.show(sheet);
    getChildren().add(picture);
    legend(sheet);
    getChildren().add(figures(sheet));
    pairs(sheet);
    if (!sheet.margins().isEmpty()) {
      head(texts.of("setups.margins", sheet.unit().symbol()));
      getChildren().add(margins(sheet));
    }
    section(texts.of("setups.rated"), told(sheet.expectations()));
    section(texts.of("setups.masses"), told(sheet.masses()));
    section(texts.of("setups.notes"), told(sheet.readings()));
  }

  /** Below the picture, where it takes the lines it needs: in one it would be cut off. */
  private void legend(ComparisonSheet sheet) {
    Label legend =
        new Label(
            texts.of(
                sheet.expectations().isEmpty()
                    ? "setups.picture.legend"
                    : "setups.picture.legend.rated",
                sheet.unit().symbol()));
    legend.setId("setups-legend");
    legend.getStyleClass().add("setups-legend");
    PanelFrame.wrap(legend);
    getChildren().add(legend);
  }

  private void head(String words) {
    Label label = new Label(words);
    label.getStyleClass().add("docket-title");
    PanelFrame.wrap(label);
    getChildren().add(label);
  }

  private void say(String words) {
    Label label = new Label(words);
    PanelFrame.wrap(label);
    getChildren().add(label);
  }

  private List<String> told(List<Sentence> sentences) {
    return sentences.stream().map(texts::of).toList();
  }

  private void section(String title, List<String> sentences) {
    if (!sentences.isEmpty()) {
      head(title);
      sentences.forEach(this::say);
    }
  }

  private Node flagged(String words) {
    Mark mark = new Mark();
    mark.show(Sign.NOT_DECIDED);
    Label label = new Label(words);
    PanelFrame.wrap(label);
    HBox.setHgrow(label, Priority.ALWAYS);
    HBox row = new HBox(mark, label);
    row.getStyleClass().add("docket-row");
    row.setAccessibleRole(AccessibleRole.TEXT);
    row.setAccessibleText(words);
    return row;
  }

  private Node figures(ComparisonSheet sheet) {
    return table(
        "setups-table",
        1,
        List.of(
            texts.of("setups.column.place"),
            texts.of("setups.column.set-up"),
            texts.of("setups.column.arrow"),
            texts.of("setups.column.shots"),
            texts.of("setups.column.mean", sheet.unit().symbol()),
            texts.of("setups.column.reach"),
            texts.of("setups.column.spread"),
            sheet.energyUnit().symbol(),
            sheet.momentumUnit().symbol()),
        sheet.lines().stream().map(this::cells).toList());
  }

  private void pairs(ComparisonSheet sheet) {
    String unit = sheet.unit().symbol();
    for (PairDifference.Sense sense : PairDifference.Sense.values()) {
      List<String> told =
          sheet.pairs().stream()
              .filter(pair -> pair.sense().equals(sense.inWords()))
              .map(pair -> difference(sense, pair))
              .toList();
      switch (sense) {
        case REAL -> section(texts.of("setups.real", unit), told);
        case NOISE -> section(texts.of("setups.noise", unit), told);
        case UNKNOWN -> section(texts.of("setups.unknown", unit), told);
      }
    }
  }

  private String difference(PairDifference.Sense sense, ComparisonSheet.Pair pair) {
    return switch (sense) {
      case REAL ->
          texts.of(
              "setups.really",
              pair.faster(),
              pair.slower(),
              texts.number(pair.by()),
              texts.number(pair.from()),
              texts.number(pair.to()));
      case NOISE ->
          texts.of(
              "setups.alike",
              pair.faster(),
              pair.slower(),
              texts.number(pair.by()),
              texts.number(pair.from()),
              texts.number(pair.to()));
      case UNKNOWN -> texts.of("setups.few", pair.faster(), pair.slower(), texts.number(pair.by()));
    };
  }

  private Node margins(ComparisonSheet sheet) {
    return table(
        "setups-margins",
        0,
        List.of(
            texts.of("setups.column.set-up"),
            texts.of("setups.column.division"),
            texts.of("setups.column.allowed"),
            texts.of("setups.column.margin"),
            texts.of("setups.column.from"),
            texts.of("setups.column.to"),
            texts.of("setups.column.mean-is")),
        sheet.margins().stream().map(this::cells).toList());
  }

  private List<String> cells(ComparisonSheet.Line line) {
    return List.of(
        line.place(),
        line.setUp(),
        texts.number(line.arrow()),
        texts.of(line.shots()),
        texts.number(line.mean()),
        texts.number(line.reach()),
        texts.number(line.deviation()),
        texts.number(line.energy()),
        texts.number(line.momentum()));
  }

  private List<String> cells(ComparisonSheet.Margin margin) {
    return List.of(
        margin.setUp(),
        margin.division(),
        texts.number(margin.allowed()),
        texts.number(margin.margin()),
        texts.number(margin.from()),
        texts.number(margin.to()),
        texts.of(margin.words()));
  }

  /** A table; with large text it would be wider than the window, so each row is told instead. */
  private Node table(String id, int names, List<String> titles, List<List<String>> rows) {
    Pane table = size.getValue().isLarge() ? told(names, titles, rows) : drawn(names, titles, rows);
    table.setId(id);
    return table;
  }

  /** The name of each row, and below it every other cell behind the title of its column. */
  private VBox told(int names, List<String> titles, List<List<String>> rows) {
    VBox all = new VBox();
    for (List<String> row : rows) {
      Label name = new Label(row.get(names));
      name.getStyleClass().add("docket-title");
      Label rest =
          new Label(
              IntStream.range(0, row.size())
                  .filter(column -> column != names)
                  .mapToObj(column -> texts.of("setups.cell", titles.get(column), row.get(column)))
                  .collect(Collectors.joining(" · ")));
      PanelFrame.wrap(name, rest);
      all.getChildren().addAll(name, rest);
    }
    return all;
  }

  /** A table whose one column of names takes what room there is. */
  private static GridPane drawn(int names, List<String> titles, List<List<String>> rows) {
    GridPane table = new GridPane();
    table.getStyleClass().add("setups-table");
    for (int column = 0; column < titles.size(); column++) {
      ColumnConstraints constraints = new ColumnConstraints();
      if (column == names) {
        constraints.setHgrow(Priority.ALWAYS);
      } else {
        constraints.setMinWidth(Region.USE_PREF_SIZE);
      }
      table.getColumnConstraints().add(constraints);
      Label title = new Label(titles.get(column));
      title.getStyleClass().add("setups-title");
      table.add(title, column, 0);
    }
    for (List<String> row : rows) {
      Label[] labels = row.stream().map(Label::new).toArray(Label[]::new);
      PanelFrame.wrap(labels);
      table.addRow(table.getRowCount(), labels);
    }
    return table;
  }
}
