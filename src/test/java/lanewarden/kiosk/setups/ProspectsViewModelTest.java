package lanewarden.kiosk.setups;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayDeque;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import java.util.function.Consumer;
import lanewarden.kiosk.look.Language;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.setups.ProspectsViewModel.Figure;
import lanewarden.quantity.Sentence;
import lanewarden.station.BroughtText;
import lanewarden.station.Outlook;
import lanewarden.station.SetUpText;
import lanewarden.station.Trouble;
import org.junit.jupiter.api.Test;

/** Figures of a set-up, and answers that come when they come. */
class ProspectsViewModelTest {
  private static final Outlook FAST = outlook("fast");
  private static final Outlook SLOW = outlook("slow");
  private static final Trouble NO_FIGURE =
      new Trouble(
          "Not reckoned.", "No figure.", "Type one.", "SET-UP-UNREADABLE", Trouble.Kind.USAGE);

  private record Question(
      ProspectsViewModel.Asked asked, Consumer<Outlook> answer, Consumer<Trouble> missed) {}

  private final Queue<Question> questions = new ArrayDeque<>();
  private final ProspectsViewModel model =
      new ProspectsViewModel(
          (asked, answer, missed) -> questions.add(new Question(asked, answer, missed)),
          Texts.in(Language.ENGLISH));

  private static Outlook outlook(String sentence) {
    return new Outlook(
        List.of(Sentence.verbatim(sentence)), List.of(), List.of(), Sentence.verbatim("supposed"));
  }

  private void type(Figure figure, String text) {
    model.typed(figure).set(text);
  }

  @Test
  void everyFieldReachesTheFigureItNames() {
    type(Figure.ARROW, "350");
    type(Figure.SPEED, "300");
    type(Figure.UNCERTAINTY, "2");
    type(Figure.SHOTS, "350 gr: 300 301");
    type(Figure.OTHER_SHOTS, "377.5 gr: 290 290");
    type(Figure.DRAW, "60");
    type(Figure.CERTIFIED, "61");
    type(Figure.LENGTH, "29");
    type(Figure.BRACE, "7");
    type(Figure.CURVE, "7 in 0 lbf, 29 in 60 lbf");
    type(Figure.SCATTER, "1.5");
    type(Figure.DIVISION, "LA");
    model.reckon();

    ProspectsViewModel.Asked asked = questions.remove().asked();
    assertEquals(
        new BroughtText(
            new SetUpText("350", "60", "61", "29", "7"),
            "300",
            "2",
            List.of("350 gr: 300 301", "377.5 gr: 290 290"),
            "7 in 0 lbf, 29 in 60 lbf"),
        asked.brought());
    assertEquals("1.5", asked.scatter());
    assertEquals("LA", asked.only());
  }

  @Test
  void blankShotsAreNoShots() {
    type(Figure.OTHER_SHOTS, "377.5 gr: 290 290");
    type(Figure.SHOTS, "  ");
    model.reckon();
    assertEquals(List.of("377.5 gr: 290 290"), questions.remove().asked().brought().shots());
  }

  @Test
  void shotsOfSeveralArrowMassesStandInOneFieldWithSemicolonsBetween() {
    type(Figure.SHOTS, "350 gr: 300 301");
    type(Figure.OTHER_SHOTS, "377.5 gr: 290 290; 400 gr: 281 ;");
    model.reckon();
    assertEquals(
        List.of("350 gr: 300 301", "377.5 gr: 290 290", "400 gr: 281"),
        questions.remove().asked().brought().shots());
  }

  @Test
  void answerByOneRuleBookIsGoneWithTheNextEvenOneOfTheSameName() {
    model.turnTo("By the meadow, edition 1");
    model.reckon();
    questions.remove().answer().accept(FAST);
    model.turnTo("By the meadow, edition 1");
    assertEquals(Optional.empty(), model.outlook().get());
  }

  @Test
  void answerIsGoneAsSoonAsItsFiguresAreOthers() {
    model.reckon();
    questions.remove().answer().accept(FAST);
    assertEquals(Optional.of(FAST), model.outlook().get());
    type(Figure.DRAW, "50");
    assertEquals(Optional.empty(), model.outlook().get());
  }

  @Test
  void answerThatComesAfterItsFiguresWereChangedIsNotShown() {
    model.reckon();
    type(Figure.DRAW, "50");
    questions.remove().answer().accept(FAST);
    assertEquals(Optional.empty(), model.outlook().get());
  }

  @Test
  void ofTwoQuestionsTheLaterIsAnswered() {
    model.reckon();
    model.reckon();
    Question first = questions.remove();
    questions.remove().answer().accept(SLOW);
    first.missed().accept(NO_FIGURE);
    first.answer().accept(FAST);
    assertEquals(Optional.of(SLOW), model.outlook().get());
    assertEquals(Optional.empty(), model.trouble().get());
  }

  @Test
  void troubleStandsWhileItIsMendedAndGoesWithAnAnswer() {
    type(Figure.ARROW, "350 lbf");
    model.reckon();
    questions.remove().missed().accept(NO_FIGURE);
    assertEquals(Optional.of(NO_FIGURE), model.trouble().get());
    assertEquals("350 lbf", model.typed(Figure.ARROW).get());

    type(Figure.ARROW, "350");
    assertEquals(Optional.of(NO_FIGURE), model.trouble().get());
    model.reckon();
    questions.remove().answer().accept(FAST);
    assertEquals(Optional.empty(), model.trouble().get());
  }

  @Test
  void nothingOfASetUpIsLeftForTheNext() {
    List<String> fresh = texts();
    for (Figure figure : Figure.values()) {
      type(figure, "9");
    }
    model.reckon();
    Question open = questions.remove();
    open.missed().accept(NO_FIGURE);
    model.empty();
    open.answer().accept(FAST);

    assertEquals(fresh, texts());
    assertEquals(Optional.empty(), model.outlook().get());
    assertEquals(Optional.empty(), model.trouble().get());
  }

  private List<String> texts() {
    return List.of(Figure.values()).stream().map(figure -> model.typed(figure).get()).toList();
  }
}
