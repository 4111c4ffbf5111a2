package lanewarden.kiosk.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanewarden.kiosk.form.Answers;
import lanewarden.kiosk.form.Question;
import lanewarden.kiosk.look.Texts;

/**
 * Whether and where something is printed too.
 *
 * @param printers their names, the usual one first; where there is none, that is said
 */
record PrinterQuestion(List<String> printers) {
  private static final String NAME = "print";

  /** Copies the list. */
  PrinterQuestion {
    printers = List.copyOf(printers);
  }

  Question asked(Texts texts) {
    List<String> options = new ArrayList<>();
    options.add(texts.of(printers.isEmpty() ? "records.ask.print.none" : "records.ask.print.no"));
    options.addAll(printers);
    return Question.choice(NAME, texts.of("records.ask.print"), options).usually(0);
  }

  /** The printer that was chosen, if one was. */
  Optional<String> answered(Answers answers) {
    int chosen = answers.choice(NAME);
    return chosen > 0 ? Optional.of(printers.get(chosen - 1)) : Optional.empty();
  }
}
