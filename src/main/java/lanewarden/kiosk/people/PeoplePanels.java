package lanewarden.kiosk.people;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import lanewarden.kiosk.form.Chooser;
import lanewarden.kiosk.form.FormPanel;
import lanewarden.kiosk.form.FormViewModel;
import lanewarden.kiosk.form.OrganizersKey;
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

  private final PeopleViewModel model;
  private final OrganizersKey key;
  private final Supplier<Optional<Chooser>> chooser;
  private final Texts texts;
  private final Panels panels;

  PeoplePanels(
      PeopleViewModel model,
      OrganizersKey key,
      Texts texts,
      Panels panels,
      Supplier<Optional<Chooser>> chooser) {
    this.model = model;
    this.key = key;
    this.chooser = chooser;
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
            Question.secret(AGAIN, texts.of("people.again"))),
        (answers, organizer, done, missed) -> {
          String name = answers.words(NAME);
          boolean judge = answers.choice("role") == 1;
          char[] fresh = answers.secret(FRESH);
          if (model.isSame(fresh, answers.secret(AGAIN), missed)) {
            model.sign(
                organizer,
                (office, signer) -> {
                  if (judge) {
                    office.enrolJudge(signer, name, fresh);
                  } else {
                    office.enrol(signer, name, fresh);
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
                List.of(texts.of("suspend.reason.left"), texts.of("suspend.reason.doubt")))),
        (answers, organizer, done, missed) ->
            model.sign(
                organizer,
                (office, signer) -> office.suspend(signer, name, answers.words(REASON)),
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
            Question.secret(AGAIN, texts.of("people.again"))),
        (answers, organizer, done, missed) -> {
          char[] fresh = answers.secret(FRESH);
          if (model.isSame(fresh, answers.secret(AGAIN), missed)) {
            model.sign(
                organizer,
                (office, signer) -> office.replace(signer, name, fresh, answers.words(REASON)),
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
        List.of(),
        (answers, organizer, done, missed) ->
            model.sign(organizer, (office, signer) -> office.readmit(signer, name), done, missed),
        new FormPanel.Wording(
            texts.of("readmit.title", name), texts.of("readmit.words"), texts.of("readmit.act")));
  }

  /** Whoever owns the key changes its passphrase, and needs nobody's leave. */
  void change() {
    List<String> names = model.names();
    List<String> owners = new ArrayList<>(names);
    owners.add(texts.of("change.organizer"));
    List<Question> questions = new ArrayList<>();
    questions.add(Question.choice(NAME, texts.of("change.whose"), owners));
    questions.addAll(key.placeIfOrganizers(texts));
    questions.add(Question.secret(NOW, texts.of("change.now")));
    questions.add(Question.secret(FRESH, texts.of("people.fresh")));
    questions.add(Question.secret(AGAIN, texts.of("people.again")));
    open(
        "change-panel",
        key.form(
            questions,
            (answers, place, done, missed) -> {
              int chosen = answers.choice(NAME);
              char[] fresh = answers.secret(FRESH);
              if (!model.isSame(fresh, answers.secret(AGAIN), missed)) {
                return;
              }
              if (chosen < names.size()) {
                model.change(names.get(chosen), answers.secret(NOW), fresh, done, missed);
              } else {
                model.changeOrganizers(place, answers.secret(NOW), fresh, done, missed);
              }
            },
            panels::close),
        new FormPanel.Wording(
            texts.of("change.title"), texts.of("change.words"), texts.of("change.act")));
  }

  private void open(
      String id,
      List<Question> questions,
      OrganizersKey.Handover handover,
      FormPanel.Wording wording) {
    open(id, key.form(questions, texts, handover, panels::close), wording);
  }

  private void open(String id, FormViewModel form, FormPanel.Wording wording) {
    panels.open(new FormPanel(id, form, wording, texts, chooser.get(), panels::close));
  }
}
