package lanewarden.kiosk.line;

import java.util.List;
import java.util.function.Consumer;
import javafx.scene.input.KeyCode;
import lanewarden.kiosk.form.FormPanel;
import lanewarden.kiosk.form.FormViewModel;
import lanewarden.kiosk.form.Question;
import lanewarden.kiosk.look.Panels;
import lanewarden.kiosk.look.Texts;
import lanewarden.station.Grounds;
import lanewarden.station.SetUpText;
import lanewarden.station.Trouble;

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
    model.check().map(CheckPage::unit).ifPresent(this::type);
  }

  private void type(String unit) {
    open(
        List.of(),
        (speed, done, missed) -> model.type(texts.typed(speed), done, missed),
        new EntryPanel.Wording(
            texts.of("type.title"),
            texts.of("type.words"),
            texts.of("type.field", unit),
            unit,
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

  void keep() {
    model.check().flatMap(CheckPage::firstInDoubt).ifPresent(this::keep);
  }

  private void keep(ShotLine shot) {
    open(
        List.of(texts.of("keep.reason.seen"), texts.of("keep.reason.bow")),
        (reason, done, missed) -> model.keep(shot.sequence(), reason, done, missed),
        new EntryPanel.Wording(
            texts.of("keep.title", shot.number(), shot.speed()),
            texts.of("keep.words"),
            texts.of("reason.field"),
            texts.of("keep.act")));
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

  void setUp() {
    model
        .check()
        .filter(check -> !check.preparation().offered().isEmpty())
        .ifPresent(
            check ->
                panels.open(
                    new SetUpPanel(
                        new SetUpViewModel(
                            check.preparation().offered(), this::state, panels::close),
                        check,
                        texts,
                        panels::close)));
  }

  private void state(SetUpText typed, Runnable done, Consumer<Trouble> missed) {
    model.state(
        new SetUpText(
            texts.typed(typed.arrowMass()),
            texts.typed(typed.drawWeight()),
            texts.typed(typed.certifiedDrawWeight()),
            texts.typed(typed.drawLength()),
            texts.typed(typed.braceHeight())),
        done,
        missed);
  }

  void phase() {
    LinePage page = model.page().get();
    open(
        LinePage.phases(texts),
        (words, done, missed) -> begin(LinePage.phaseOf(words, texts), done, missed),
        new EntryPanel.Wording(
            texts.of("phase.title"),
            texts.of("phase.words", page == null ? "" : page.phase()),
            texts.of("phase.field"),
            texts.of("phase.act")));
  }

  private void begin(String phase, Runnable done, Consumer<Trouble> missed) {
    model.begin(
        phase,
        "",
        done,
        trouble -> {
          if (trouble.code().equals(Trouble.PHASE_BACK)) {
            backTo(phase);
          } else {
            missed.accept(trouble);
          }
        });
  }

  /** A phase that lies behind takes a reason, which a panel of its own asks for. */
  private void backTo(String phase) {
    open(
        List.of(texts.of("phase.back.mistake")),
        (reason, done, missed) -> model.begin(phase, reason, done, missed),
        new EntryPanel.Wording(
            texts.of("phase.back.title"),
            texts.of("phase.back.words"),
            texts.of("reason.field"),
            texts.of("phase.back.act")));
  }

  void callAllTheSame() {
    model.grounds().get().ifPresent(this::callAllTheSame);
  }

  private void callAllTheSame(Grounds needed) {
    boolean lapses = !needed.lapses().isEmpty();
    open(
        lapses ? needed.lapses() : List.of(texts.of("grounds.judge")),
        (grounds, done, missed) -> model.call(needed.bib(), grounds, done, missed),
        new EntryPanel.Wording(
            texts.of("grounds.title", needed.bib(), needed.name()),
            texts.of(lapses ? "grounds.lapse" : "grounds.words"),
            texts.of(lapses ? "grounds.number" : "reason.field"),
            texts.of("grounds.act")));
  }

  void enterLate() {
    model.unknown().get().ifPresent(typed -> model.askForDivisions(all -> enterLate(typed, all)));
  }

  /** A text with a digit in it was meant as a bib, any other as a name. */
  private void enterLate(String typed, List<String> divisions) {
    FormViewModel form =
        new FormViewModel(
            List.of(
                Question.words("bib", texts.of("late.bib"), List.of()),
                Question.words("name", texts.of("late.name"), List.of()),
                Question.choice("division", texts.of("late.division"), divisions)),
            (answers, done, missed) ->
                model.addLate(
                    answers.words("bib"),
                    answers.words("name"),
                    divisions.get(answers.choice("division")),
                    done,
                    missed),
            panels::close);
    boolean bib = typed.codePoints().anyMatch(Character::isDigit);
    form.text(bib ? "bib" : "name").set(typed);
    panels.open(
        new FormPanel(
            "late-panel",
            form,
            new FormPanel.Wording(
                texts.of("late.title"), texts.of("late.words"), texts.of("late.act")),
            texts,
            panels::close));
  }

  void verify() {
    if (model.proving().running()) {
      showVerification();
    } else {
      model.verify(this::showVerification);
    }
  }

  private void showVerification() {
    panels.open(new VerificationPanel(model.proving(), texts, panels::close, this::breakOff));
  }

  private void breakOff() {
    open(
        List.of(texts.of("break-off.reason.reference"), texts.of("end.reason.safety")),
        model.proving()::breakOff,
        new EntryPanel.Wording(
            texts.of("break-off.title"),
            texts.of("break-off.words"),
            texts.of("reason.field"),
            texts.of("act.break-off")));
  }

  void holdOrLift() {
    LinePage page = model.page().get();
    if (page != null && page.proving().liftable()) {
      open(
          List.of(texts.of("lift.reason.unfounded"), texts.of("lift.reason.mended")),
          model.proving()::lift,
          new EntryPanel.Wording(
              texts.of("lift.title"),
              texts.of("lift.words"),
              texts.of("reason.field"),
              texts.of("act.lift")));
    } else {
      open(
          List.of(texts.of("hold.reason.knocked"), texts.of("hold.reason.readings")),
          model.proving()::hold,
          new EntryPanel.Wording(
              texts.of("hold.title"),
              texts.of("hold.words"),
              texts.of("reason.field"),
              texts.of("act.hold")));
    }
  }

  void stopOrClear() {
    if (model.stopped()) {
      clearLine();
    } else {
      stop();
    }
  }

  /** The line is stopped before anything is asked: who sees somebody forward has no time. */
  void stop() {
    if (!model.stopped()) {
      model.stop(this::askWhyStopped, panels::close);
    }
  }

  private void askWhyStopped() {
    open(
        List.of(
            texts.of("stop.reason.forward"),
            texts.of("stop.reason.lane"),
            texts.of("stop.reason.other")),
        model::sayWhyStopped,
        new EntryPanel.Wording(
            texts.of("stop.title"),
            texts.of("stop.ask"),
            texts.of("reason.field"),
            texts.of("stop.act")));
  }

  private void clearLine() {
    open(
        List.of(),
        (text, done, missed) -> model.clearLine(done, missed),
        new EntryPanel.Wording(
                texts.of("cleared.title"), texts.of("cleared.words"), "", texts.of("cleared.act"))
            .on(KeyCode.F11));
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
        (text, done, missed) -> close(done, missed),
        new EntryPanel.Wording(
            texts.of("close.title"), texts.of("close.words"), "", texts.of("close.act")));
  }

  private void close(Runnable done, Consumer<Trouble> missed) {
    model.closeLine(
        "",
        done,
        trouble -> {
          if (trouble.code().equals(Trouble.VERIFICATION_DUE)) {
            closeUnverified();
          } else {
            missed.accept(trouble);
          }
        });
  }

  /** Without the verification that is due it takes a reason, which a panel of its own asks for. */
  private void closeUnverified() {
    open(
        List.of(texts.of("close.unverified.time"), texts.of("close.unverified.broken")),
        model::closeLine,
        new EntryPanel.Wording(
            texts.of("close.unverified.title"),
            texts.of("close.unverified.words"),
            texts.of("reason.field"),
            texts.of("close.act")));
  }

  private void open(
      List<String> picks, EntryViewModel.Handover handover, EntryPanel.Wording wording) {
    EntryViewModel entry = new EntryViewModel(picks, handover, panels::close);
    panels.open(new EntryPanel(entry, wording, texts, panels::close));
  }
}
