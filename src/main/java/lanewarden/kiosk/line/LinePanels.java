package lanewarden.kiosk.line;

import java.util.List;
import lanewarden.kiosk.look.Panels;
import lanewarden.kiosk.look.Texts;

/** The panels that open over the line. */
final class LinePanels {
  private final LineViewModel model;
  private final Texts texts;
  private final Panels panels;

  LinePanels(LineViewModel model, Texts texts, Panels panels) {
    this.model = model;
    this.texts = texts;
    this.panels = panels;
  }

  void type() {
    open(
        List.of(),
        model::type,
        new EntryPanel.Wording(
            texts.of("type.title"),
            texts.of("type.words"),
            texts.of("type.field"),
            texts.of("type.act")));
  }

  void voidLast() {
    model.check().flatMap(CheckPage::lastStanding).ifPresent(this::declareVoid);
  }

  void declareVoid(ShotLine shot) {
    open(
        List.of(
            texts.of("void.reason.draw"),
            texts.of("void.reason.light"),
            texts.of("void.reason.arrow"),
            texts.of("void.reason.turn")),
        (reason, done, missed) -> model.declareVoid(shot.sequence(), reason, done, missed),
        new EntryPanel.Wording(
            texts.of("void.title", shot.number(), shot.speed()),
            texts.of("void.words"),
            texts.of("reason.field"),
            texts.of("void.act")));
  }

  void endCheck() {
    open(
        List.of(
            texts.of("end.reason.withdrew"),
            texts.of("end.reason.equipment"),
            texts.of("end.reason.mistake"),
            texts.of("end.reason.safety")),
        model::endCheck,
        new EntryPanel.Wording(
            texts.of("end.title"),
            texts.of("end.words"),
            texts.of("reason.field"),
            texts.of("end.act")));
  }

  void signOut() {
    open(
        List.of(),
        (text, done, missed) -> model.signOut(done, missed),
        new EntryPanel.Wording(
            texts.of("sign-out.title"), texts.of("sign-out.words"), "", texts.of("sign-out.act")));
  }

  void closeLine() {
    open(
        List.of(),
        (text, done, missed) -> model.closeLine(done, missed),
        new EntryPanel.Wording(
            texts.of("close.title"), texts.of("close.words"), "", texts.of("close.act")));
  }

  private void open(
      List<String> picks, EntryViewModel.Handover handover, EntryPanel.Wording wording) {
    EntryViewModel entry = new EntryViewModel(picks, handover, panels::close);
    panels.open(new EntryPanel(entry, wording, texts, panels::close));
  }
}
