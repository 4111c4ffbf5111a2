package lanewarden.kiosk.start;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.form.Chooser;
import lanewarden.kiosk.form.FormField;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.PanelFrame;
import lanewarden.kiosk.look.Row;
import lanewarden.kiosk.look.Texts;
import lanewarden.quantity.Sentence;
import lanewarden.roster.RosterSheet;
import lanewarden.station.CompetitorList;
import lanewarden.station.EventForm;
import lanewarden.station.EventFormFindings;

/** The list of competitors, which of its columns are which, and what becomes of it. */
final class RosterStep implements StepPane {
  private final Draft draft;
  private final Texts texts;
  private final VBox node;
  private final FormField file;
  private final List<KeyButton> buttons;
  private final List<ColumnTurner> turners = new ArrayList<>();
  private final RosterPreview preview;
  private final Label size = new Label();
  private final Label leftOut = new Label();
  private final VBox faults = new VBox();

  /**
   * @param more fields below the list's own
   */
  RosterStep(Draft draft, Texts texts, Chooser chooser, FormField... more) {
    this.draft = draft;
    this.texts = texts;
    Fields fields = new Fields(draft, texts);
    file = fields.text(EventForm.ROSTER, "make.roster", "make.roster.example");
    VBox columns = new VBox();
    columns.getStyleClass().add("form");
    columns.setId("columns");
    columns.setMinWidth(Region.USE_PREF_SIZE);
    RosterSheet.wanted().forEach(wanted -> columns.getChildren().add(column(fields, wanted)));
    preview = new RosterPreview(texts.of("make.roster"));
    preview.setId("roster-preview");
    size.setId("roster-size");
    size.getStyleClass().add("field-title");
    leftOut.setId("roster-left-out");
    PanelFrame.wrap(size, leftOut);
    faults.setId("roster-faults");
    faults.getStyleClass().add("roster-faults");
    leftOut.visibleProperty().bind(leftOut.textProperty().isNotEmpty());
    leftOut.managedProperty().bind(leftOut.visibleProperty());
    VBox result = new VBox(size, leftOut, faults, preview);
    result.getStyleClass().add("roster-result");
    HBox.setHgrow(result, Priority.ALWAYS);
    Row halves = new Row(columns, result);
    halves.getStyleClass().add("start-halves");
    node = new VBox(file);
    node.getChildren().addAll(more);
    node.getChildren().add(halves);
    node.getStyleClass().add("form");
    buttons =
        List.of(
            new KeyButton(
                texts.of("make.choose-roster"),
                KeyCode.F4,
                () ->
                    chooser
                        .file(texts.of("make.choose-roster.title"))
                        .ifPresent(p -> draft.choose(EventForm.ROSTER, p))),
            new KeyButton(texts.of("make.read-again"), KeyCode.F5, draft::changed));
    draft.findings().addListener((all, before, now) -> show(now));
    show(draft.findings().get());
  }

  private FormField column(Fields fields, RosterSheet.Wanted wanted) {
    String name = name(wanted.title(), texts);
    ColumnTurner turner = new ColumnTurner(draft, texts, wanted.title(), name);
    turners.add(turner);
    return fields.column(
        wanted.title(),
        texts.of(wanted.required() ? "make.column.required" : "make.column.optional", name),
        turner);
  }

  /**
   * What one of the roster's columns is called in the language of the screens.
   *
   * @throws IllegalArgumentException if the roster has no such column
   */
  static String name(String title, Texts texts) {
    return texts.of(
        switch (title) {
          case "bib" -> "make.column.bib";
          case "name" -> "make.column.name";
          case "division" -> "make.column.division";
          case "arrow-mass" -> "make.column.arrow-mass";
          case "draw-weight" -> "make.column.draw-weight";
          case "certified-draw-weight" -> "make.column.certified-draw-weight";
          case "draw-length" -> "make.column.draw-length";
          case "brace-height" -> "make.column.brace-height";
          default -> throw new IllegalArgumentException("no column of the roster: " + title);
        });
  }

  private void show(Optional<EventFormFindings> found) {
    List<String> headers =
        found.flatMap(EventFormFindings::sheet).map(RosterSheet::headers).orElse(List.of());
    turners.forEach(turner -> turner.show(headers));
    size.setText(
        found
            .flatMap(EventFormFindings::sheet)
            .map(sheet -> texts.of("make.roster.size", sheet.size()))
            .orElseGet(() -> texts.of("make.roster.none")));
    leftOut.setText(
        found
            .map(EventFormFindings::leftOut)
            .filter(out -> !out.isEmpty())
            .map(this::told)
            .orElse(""));
    faults.getChildren().clear();
    found.map(EventFormFindings::rosterFaults).ifPresent(this::tell);
    preview.show(
        found
            .flatMap(EventFormFindings::mapped)
            .map(mapped -> titles(found.get()))
            .orElse(List.of()),
        found.flatMap(EventFormFindings::mapped).map(RosterSheet.Mapped::rows).orElse(List.of()));
  }

  /** Nobody shall miss a column without a word. */
  private String told(List<CompetitorList.Column> out) {
    return texts.of(
        "make.roster.left-out",
        out.stream()
            .map(
                column ->
                    column
                        .near()
                        .map(
                            near ->
                                texts.of("make.roster.near", column.heading(), name(near, texts)))
                        .orElse(column.heading()))
            .collect(Collectors.joining(", ")));
  }

  private void tell(List<Sentence> told) {
    for (Sentence fault : told) {
      Label line = new Label(texts.of(fault));
      PanelFrame.wrap(line);
      faults.getChildren().add(line);
    }
  }

  private List<String> titles(EventFormFindings found) {
    return RosterSheet.wanted().stream()
        .map(RosterSheet.Wanted::title)
        .filter(found.columns()::containsKey)
        .map(title -> name(title, texts))
        .toList();
  }

  /** Turns the lines of the list by PgUp and PgDn; any other key is not its own. */
  @Override
  public boolean press(KeyCode code) {
    return preview.press(code);
  }

  @Override
  public Node node() {
    return node;
  }

  @Override
  public Node first() {
    return Fields.input(file);
  }

  @Override
  public List<KeyButton> buttons() {
    return buttons;
  }
}
