package lanewarden.kiosk.people;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanewarden.kiosk.form.FormPanel;
import lanewarden.kiosk.form.FormViewModel;
import lanewarden.kiosk.form.Question;
import lanewarden.kiosk.look.Panels;
import lanewarden.kiosk.look.Texts;
import lanewarden.station.KeyOffice;

/** The panels that open over the officials. */
final class PeoplePanels {
  private static final String NAME = "name";
  private static final String REASON = "reason";
  private static final String FRESH = "fresh";
  private static final String AGAIN = "again";
  private static final String NOW = "now";
  private static final String ORGANIZER = "organizer";

  private final PeopleViewModel model;
  private final Texts texts;
  private final Panels panels;

  PeoplePanels(PeopleViewModel model, Texts texts, Panels panels) {
    this.model = model;
    this.texts = texts;
    this.panels = panels;
  }

  void enrol() {
    open(
        "enrol-panel",
        List.of(
            Question.words(NAME, texts.of("enrol.name"), List.of()),
            Question.choice(
                "role",
                texts.of("enrol.role"),
                List.of(texts.of("enrol.role.official"), texts.of("enrol.role.judge"))),
            Question.secret(FRESH, texts.of("people.fresh")),
            Question.secret(AGAIN, texts.of("people.again")),
            organizers()),
        (answers, done, missed) -> {
          String name = answers.words(NAME);
          boolean judge = answers.choice("role") == 1;
          char[] fresh = answers.secret(FRESH);
          if (model.isSame(fresh, answers.secret(AGAIN), missed)) {
            model.sign(
                answers.secret(ORGANIZER),
                (office, organizer) -> {
                  if (judge) {
                    office.enrolJudge(organizer, name, fresh);
                  } else {
                    office.enrol(organizer, name, fresh);
                  }
                },
                done,
                missed);
          }
        },
        new FormPanel.Wording(
            texts.of("enrol.title"), texts.of("enrol.words"), texts.of("enrol.act")));
  }

  void suspend() {
    model.standing().map(KeyOffice.Official::name).ifPresent(this::suspend);
  }

  private void suspend(String name) {
    open(
        "suspend-panel",
        List.of(
            Question.words(
                REASON,
                texts.of("people.reason"),
                List.of(texts.of("suspend.reason.left"), texts.of("suspend.reason.doubt"))),
            organizers()),
        (answers, done, missed) ->
            model.sign(
                answers.secret(ORGANIZER),
                (office, organizer) -> office.suspend(organizer, name, answers.words(REASON)),
                done,
                missed),
        new FormPanel.Wording(
            texts.of("suspend.title", name), texts.of("suspend.words"), texts.of("suspend.act")));
  }

  void replace() {
    model.standing().map(KeyOffice.Official::name).ifPresent(this::replace);
  }

  private void replace(String name) {
    open(
        "replace-panel",
        List.of(
            Question.words(
                REASON,
                texts.of("people.reason"),
                List.of(texts.of("replace.reason.forgotten"), texts.of("replace.reason.lost"))),
            Question.secret(FRESH, texts.of("people.fresh")),
            Question.secret(AGAIN, texts.of("people.again")),
            organizers()),
        (answers, done, missed) -> {
          char[] fresh = answers.secret(FRESH);
          if (model.isSame(fresh, answers.secret(AGAIN), missed)) {
            model.sign(
                answers.secret(ORGANIZER),
                (office, organizer) ->
                    office.replace(organizer, name, fresh, answers.words(REASON)),
                done,
                missed);
          }
        },
        new FormPanel.Wording(
            texts.of("replace.title", name), texts.of("replace.words"), texts.of("replace.act")));
  }

  void readmit() {
    model.suspended().map(KeyOffice.Official::name).ifPresent(this::readmit);
  }

  private void readmit(String name) {
    open(
        "readmit-panel",
        List.of(organizers()),
        (answers, done, missed) ->
            model.sign(
                answers.secret(ORGANIZER),
                (office, organizer) -> office.readmit(organizer, name),
                done,
                missed),
        new FormPanel.Wording(
            texts.of("readmit.title", name), texts.of("readmit.words"), texts.of("readmit.act")));
  }

  /** Whoever owns the key changes its passphrase, and needs nobody's leave. */
  void change() {
    List<String> names = model.names();
    List<String> owners = new ArrayList<>(names);
    owners.add(texts.of("change.organizer"));
    open(
        "change-panel",
        List.of(
            Question.choice(NAME, texts.of("change.whose"), owners),
            Question.secret(NOW, texts.of("change.now")),
            Question.secret(FRESH, texts.of("people.fresh")),
            Question.secret(AGAIN, texts.of("people.again"))),
        (answers, done, missed) -> {
          int place = answers.choice(NAME);
          char[] fresh = answers.secret(FRESH);
          if (model.isSame(fresh, answers.secret(AGAIN), missed)) {
            model.change(
                place < names.size() ? Optional.of(names.get(place)) : Optional.empty(),
                answers.secret(NOW),
                fresh,
                done,
                missed);
          }
        },
        new FormPanel.Wording(
            texts.of("change.title"), texts.of("change.words"), texts.of("change.act")));
  }

  private Question organizers() {
    return Question.secret(ORGANIZER, texts.of("people.organizer"));
  }

  private void open(
      String id,
      List<Question> questions,
      FormViewModel.Handover handover,
      FormPanel.Wording wording) {
    panels.open(
        new FormPanel(
            id,
            new FormViewModel(questions, handover, panels::close),
            wording,
            texts,
            panels::close));
  }
}
