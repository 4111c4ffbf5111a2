package lanewarden.kiosk.line;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import lanewarden.kiosk.line.Preparation.Asked;
import lanewarden.kiosk.line.Preparation.Figure;
import lanewarden.station.SetUpText;
import lanewarden.station.Trouble;
import org.junit.jupiter.api.Test;

class SetUpViewModelTest {
  private static final Trouble NO_FIGURE =
      new Trouble(
          "Not stated.", "No figure.", "Type one.", "SET-UP-UNREADABLE", Trouble.Kind.USAGE);

  private final List<SetUpText> given = new ArrayList<>();
  private Runnable done = () -> {};
  private Consumer<Trouble> missed = trouble -> {};
  private boolean left;

  private final SetUpViewModel model =
      new SetUpViewModel(
          List.of(
              new Asked(Figure.ARROW_MASS, "Arrow mass", "Arrow", "", true),
              new Asked(Figure.DRAW_WEIGHT, "Draw weight as set", "Draw weight", "60 lbf", true),
              new Asked(Figure.DRAW_LENGTH, "Draw length", "Draw length", "", false)),
          (figures, whenDone, whenMissed) -> {
            given.add(figures);
            done = whenDone;
            missed = whenMissed;
          },
          () -> left = true);

  @Test
  void whatIsKnownIsNotAskedForAndStandsInNoFieldAsIfItHadBeenTyped() {
    assertEquals("", model.text(Figure.DRAW_WEIGHT).get());
    assertEquals(Optional.of(Figure.ARROW_MASS), model.firstBlank());
    model.text(Figure.ARROW_MASS).set("350");
    assertEquals(Optional.empty(), model.firstBlank());
  }

  @Test
  void whatTheRuleDoesNotAskForIsHandedOverWhereItIsEntered() {
    model.text(Figure.ARROW_MASS).set("350");
    model.text(Figure.DRAW_LENGTH).set("29");
    model.enter();
    assertEquals(List.of(new SetUpText("350", "", "", "29", "")), given);
  }

  @Test
  void whatIsNotAskedIsHandedOverBlank() {
    model.text(Figure.ARROW_MASS).set("350");
    model.enter();
    assertEquals(List.of(new SetUpText("350", "", "")), given);
  }

  @Test
  void isHandedOverOnceUntilItIsAnswered() {
    model.enter();
    model.enter();
    assertEquals(1, given.size());
    assertTrue(model.busy().get());
    done.run();
    assertFalse(model.busy().get());
    assertTrue(left);
  }

  @Test
  void staysOpenWithTheTroubleWhereItWasNotTaken() {
    model.enter();
    missed.accept(NO_FIGURE);
    assertEquals(Optional.of(NO_FIGURE), model.trouble().get());
    assertFalse(left);
    model.enter();
    assertEquals(Optional.empty(), model.trouble().get());
  }
}
