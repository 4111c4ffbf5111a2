package lanewarden.kiosk.start;

import java.util.List;
import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.form.ChoiceEntry;
import lanewarden.kiosk.form.Chooser;
import lanewarden.kiosk.form.FormField;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.PanelFrame;
import lanewarden.kiosk.look.Texts;
import lanewarden.station.EventForm;
import lanewarden.station.Packed;
import lanewarden.station.StationSettings;

/** Where readings come from, on which port, and how the instrument speaks. */
final class InstrumentStep implements StepPane {
  private final NewEventViewModel model;
  private final Texts texts;
  private final VBox node;
  private final ChoiceEntry kinds;
  private final FlowPane ports = new FlowPane();
  private final List<KeyButton> buttons;

  /** One way to get readings, and how it is called. */
  private record Way(StationSettings.Kind kind, String words) {}

  InstrumentStep(NewEventViewModel model, Texts texts, Chooser chooser) {
    this.model = model;
    this.texts = texts;
    Fields fields = new Fields(model.draft(), texts);
    kinds = kinds();
    FormField kind = kind(fields);
    FormField port = fields.text(EventForm.PORT, "make.port", "make.port.example");
    FormField profile = fields.text(EventForm.PROFILE, "make.profile", "make.profile.example");
    ports.getStyleClass().add("port-picks");
    ports.setId("ports");
    VBox serial = new VBox(port, ports);
    serial.getStyleClass().add("form-part");
    VBox speaking = new VBox(profile, profiles());
    speaking.getStyleClass().add("form-part");
    Label about = new Label();
    about.setId("kind-words");
    PanelFrame.wrap(about);
    node = new VBox(kind, about, serial, speaking);
    node.getStyleClass().add("form");
    model.kind().addListener((all, before, now) -> show(about, serial, now));
    show(about, serial, model.kind().get());
    model.ports().addListener((ListChangeListener<String>) change -> list());
    list();
    buttons =
        List.of(
            new KeyButton(
                texts.of("make.choose-profile"),
                KeyCode.F4,
                () ->
                    chooser
                        .file(texts.of("make.choose-profile.title"))
                        .ifPresent(p -> model.draft().choose(EventForm.PROFILE, p))),
            new KeyButton(texts.of("make.look-again"), KeyCode.F5, model::lookForPorts));
  }

  private List<Way> ways() {
    return List.of(
        new Way(StationSettings.Kind.SERIAL, texts.of("make.kind.serial")),
        new Way(StationSettings.Kind.TYPED, texts.of("make.kind.typed")),
        new Way(StationSettings.Kind.SIMULATOR, texts.of("make.kind.simulator")));
  }

  private ChoiceEntry kinds() {
    List<Way> ways = ways();
    String usual = ways.get(0).words();
    return new ChoiceEntry(
        ways.stream().map(Way::words).toList(),
        usual,
        false,
        chosen -> model.kind().set(of(ways, chosen.isBlank() ? usual : chosen)));
  }

  private FormField kind(Fields fields) {
    List<Way> ways = ways();
    FormField field = fields.any("kind", "make.kind", "make.kind.example", kinds);
    model.kind().addListener((all, before, now) -> field.show(words(ways, now)));
    field.show(words(ways, model.kind().get()));
    return field;
  }

  private static StationSettings.Kind of(List<Way> ways, String words) {
    return ways.stream().filter(w -> w.words().equals(words)).findFirst().orElseThrow().kind();
  }

  private static String words(List<Way> ways, StationSettings.Kind kind) {
    return ways.stream().filter(w -> w.kind() == kind).findFirst().orElseThrow().words();
  }

  private void show(Label about, VBox serial, StationSettings.Kind now) {
    boolean line = now == StationSettings.Kind.SERIAL;
    serial.setVisible(line);
    serial.setManaged(line);
    about.setText(
        switch (now) {
          case SERIAL -> texts.of("make.kind.serial.words");
          case TYPED -> texts.of("make.kind.typed.words");
          case SIMULATOR -> texts.of("make.kind.simulator.words");
        });
  }

  private FlowPane profiles() {
    FlowPane picks = new FlowPane();
    picks.getStyleClass().add("port-picks");
    picks.setId("profiles");
    for (Packed.Profile profile : Packed.profiles()) {
      picks.getChildren().add(pick(profile.instrument(), EventForm.PROFILE, profile.file()));
    }
    return picks;
  }

  private void list() {
    ports
        .getChildren()
        .setAll(model.ports().stream().map(p -> pick(p, EventForm.PORT, p)).toList());
    if (model.ports().isEmpty()) {
      Label none = new Label(texts.of("make.port.none"));
      PanelFrame.wrap(none);
      ports.getChildren().add(none);
    }
  }

  private Node pick(String words, String field, String text) {
    Button pick = new Button(words);
    pick.setAccessibleText(texts.of("make.pick.spoken", words));
    pick.setOnAction(e -> model.draft().text(field).set(text));
    return pick;
  }

  @Override
  public Node node() {
    return node;
  }

  @Override
  public Node first() {
    return kinds.stop();
  }

  @Override
  public List<KeyButton> buttons() {
    return buttons;
  }
}
