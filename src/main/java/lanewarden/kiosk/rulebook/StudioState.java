package lanewarden.kiosk.rulebook;

import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.control.Label;
import lanewarden.kiosk.look.Texts;
import lanewarden.station.RuleDraft;

/** Says whether the open rule book is saved, and where it is an event's, whether it is in force. */
final class StudioState extends Label {
  private final RuleBookViewModel model;
  private final Optional<Adoption> adoption;
  private final Texts texts;
  private final BooleanBinding adoptable;

  /** SHA-256 of the event's rule book in force, once it is known. */
  private final ObjectProperty<Optional<String>> inForce =
      new SimpleObjectProperty<>(Optional.empty());

  private boolean signed;

  /**
   * @param adoption how it comes into force, where it is an event's
   */
  StudioState(RuleBookViewModel model, Optional<Adoption> adoption, Texts texts) {
    this.model = model;
    this.adoption = adoption;
    this.texts = texts;
    setId("studio-state");
    adoptable =
        Bindings.createBooleanBinding(
            () -> isEvents() && isWhole() && !isInForce(), model.draft(), inForce);
    model
        .draft()
        .addListener(
            (all, before, now) -> {
              signed = false;
              say();
            });
    model.saved().addListener((all, before, now) -> say());
    inForce.addListener((all, before, now) -> say());
    look();
    say();
  }

  private void look() {
    adoption.ifPresent(
        event ->
            event.inForce(
                sha256 -> inForce.set(Optional.of(sha256)),
                trouble -> model.trouble().set(Optional.of(trouble))));
  }

  /** Whether it can be put in force as it is: it is the event's, right, saved and not in force. */
  BooleanBinding adoptable() {
    return adoptable;
  }

  /** Says that it was put in force just now. */
  void adopted() {
    signed = true;
    say();
    look();
  }

  private void say() {
    setText(
        signed
            ? texts.of("studio.adopted")
            : force().map(known -> saving() + " " + known).orElseGet(this::saving));
  }

  private String saving() {
    RuleDraft draft = model.draft().get();
    int faults = draft.faults().size();
    return model
        .saved()
        .get()
        .map(writing -> saved(writing, faults > 0))
        .orElseGet(
            () ->
                faults > 0
                    ? texts.of("studio.faulty", faults, draft.target().getFileName())
                    : texts.of(draft.isChanged() ? "studio.changed" : "studio.unchanged"));
  }

  private String saved(RuleDraft.Writing writing, boolean faulty) {
    return texts.of(
        switch (writing) {
          case NOTHING -> "studio.saved.nothing";
          case NEW -> faulty ? "studio.saved.draft" : "studio.saved.new";
          case REPLACED -> faulty ? "studio.saved.draft" : "studio.saved";
        });
  }

  private Optional<String> force() {
    return inForce
        .get()
        .filter(known -> isEvents() && isWhole())
        .map(known -> texts.of(isInForce() ? "studio.in-force" : "studio.not-in-force"));
  }

  /** Whether this is the file that the event's rules come from. */
  private boolean isEvents() {
    return adoption.filter(a -> a.ruleBook().equals(model.draft().get().opened())).isPresent();
  }

  private boolean isWhole() {
    return !model.draft().get().isChanged() && model.draft().get().faults().isEmpty();
  }

  private boolean isInForce() {
    return inForce.get().filter(model.draft().get().sha256()::equals).isPresent();
  }
}
