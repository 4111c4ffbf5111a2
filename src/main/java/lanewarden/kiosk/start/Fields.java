package lanewarden.kiosk.start;

import java.util.List;
import java.util.Map;
import javafx.beans.property.StringProperty;
import javafx.scene.Node;
import lanewarden.kiosk.form.FormField;
import lanewarden.kiosk.form.TextEntry;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.trouble.TroubleWords;
import lanewarden.station.EventForm;
import lanewarden.station.EventFormFindings;

/** Makes the fields of the form, each with what is wrong beside it. */
record Fields(Draft draft, Texts texts) {

  /** A field to type in. */
  FormField text(String field, String name, String example) {
    StringProperty text = draft.text(field);
    TextEntry entry = new TextEntry(false, texts.of(example), List.of(), typed -> text.set(typed));
    FormField shown = any(field, name, example, entry);
    text.addListener((all, before, now) -> shown.show(now));
    shown.show(text.get());
    return shown;
  }

  /** Any field. */
  FormField any(String field, String name, String example, FormField.Entry entry) {
    FormField shown = new FormField(field, texts.of(name), texts.of(example), entry);
    follow(field, shown);
    return shown;
  }

  /** A field of which column is taken for one of the roster's. */
  FormField column(String title, String name, ColumnTurner turner) {
    String field = EventForm.COLUMN + title;
    FormField shown =
        new FormField(
            field,
            name,
            "",
            new FormField.Entry() {
              @Override
              public Node node() {
                return turner;
              }

              @Override
              public void show(String text) {
                turner.setText(text);
              }

              @Override
              public void describe(String words) {
                turner.setAccessibleHelp(words);
              }
            });
    follow(field, shown);
    return shown;
  }

  private void follow(String field, FormField shown) {
    draft.faults().addListener((all, before, now) -> shown.show(told(now, field, texts)));
    shown.show(told(draft.faults().get(), field, texts));
  }

  /** What is wrong with a field, in the language of the screens. */
  static List<String> told(
      Map<String, List<EventFormFindings.Fault>> faults, String field, Texts texts) {
    return faults.getOrDefault(field, List.of()).stream()
        .map(fault -> TroubleWords.inField(fault.code(), texts.of(fault.words()), texts))
        .toList();
  }

  /** Where typing goes in a field. */
  static Node input(FormField field) {
    Node input = field.lookup(".text-input");
    return input == null ? field : input;
  }
}
