package lanewarden.kiosk.protest;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import lanewarden.bench.Advice;
import lanewarden.journal.Check;
import lanewarden.kiosk.line.Preparation;
import lanewarden.kiosk.look.Cautions;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.look.Wording;
import lanewarden.station.CheckView;
import lanewarden.station.Dossier;

/** What is to be known of a check beside its outcome and its shots, in the words of the screen. */
final class SheetNotes {
  private final CheckView view;
  private final Dossier dossier;
  private final DocketWords words;
  private final Texts texts;

  private SheetNotes(CheckView view, Dossier dossier, DocketWords words, Texts texts) {
    this.view = view;
    this.dossier = dossier;
    this.words = words;
    this.texts = texts;
  }

  static List<String> of(CheckView view, Dossier dossier, DocketWords words, Texts texts) {
    return new SheetNotes(view, dossier, words, texts).all();
  }

  private List<String> all() {
    Check check = view.check();
    List<String> notes = new ArrayList<>();
    if (check.opened().grounds() != null) {
      notes.add(texts.of("sheet.grounds", check.opened().grounds()));
    }
    if (check.inQuestion()) {
      view.outcome()
          .map(outcome -> texts.of("sheet.in-question", Wording.outcome(outcome, texts)))
          .ifPresent(notes::add);
    }
    check.verdict().map(this::signed).ifPresent(notes::add);
    view.follows().map(next -> texts.of("outcome.follows", next)).ifPresent(notes::add);
    notes.add(left(check));
    setUp().ifPresent(notes::add);
    view.leastArrow().map(mass -> texts.of("set-up.least", mass)).ifPresent(notes::add);
    if (!check.ticked().isEmpty()) {
      notes.add(
          texts.of(
              "sheet.ticked", check.ticked().stream().sorted().collect(Collectors.joining(", "))));
    }
    notes.add(texts.of("sheet.phase", Wording.phase(check.phase(), texts)));
    // What is English in every language stands by itself, so that it reads from left to right
    notes.add(
        texts.of(
            "sheet.rule", texts.of("division", view.division().code(), view.division().name())));
    notes.add(texts.of(view.division().sentences()));
    view.advice().map(this::advice).ifPresent(notes::addAll);
    return notes;
  }

  /** How the competitor left the line. */
  private String left(Check check) {
    if (!check.isClosed()) {
      return texts.of("sheet.line");
    }
    return texts.of(check.verdict().isPresent() ? "sheet.left" : "sheet.left-without");
  }

  private String signed(Check.GivenVerdict given) {
    return texts.of(
        "sheet.verdict",
        words.clock().format(given.at()),
        dossier.nameOf(given.signer()),
        given.sequence());
  }

  /** As signed; where the rule asks for figures and none was, that is said. */
  private Optional<String> setUp() {
    String stated = Preparation.stated(view.check().setUp(), texts);
    if (!stated.isBlank()) {
      return Optional.of(texts.of("sheet.set-up", stated));
    }
    return view.division().rule().figuresAsked().isEmpty()
        ? Optional.empty()
        : Optional.of(texts.of("sheet.set-up.none"));
  }

  private List<String> advice(Advice advice) {
    List<String> told = new ArrayList<>(List.of(texts.of("line.advice"), texts.of(advice.line())));
    advice.notes().stream().map(texts::of).forEach(told::add);
    told.add(Cautions.paragraph(texts));
    return told;
  }
}
