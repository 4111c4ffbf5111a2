package lanewarden.kiosk.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.NoSuchFileException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import lanewarden.audit.press.Progress;
import lanewarden.kiosk.look.Language;
import lanewarden.kiosk.look.Texts;
import lanewarden.station.Trouble;
import org.junit.jupiter.api.Test;

/** One errand at a time, off the screen's thread: here each waits until it is let go. */
class ErrandViewModelTest {
  private final Queue<Runnable> work = new ArrayDeque<>();
  private final ErrandViewModel model =
      new ErrandViewModel(work::add, Runnable::run, Texts.in(Language.ENGLISH));

  private static final Ending FINE =
      new Ending(true, "Done", new Ending.Lines().fact("a file").all());

  @Test
  void errandTellsHowFarItIsAndHowItEnded() {
    List<Double> seen = new ArrayList<>();
    model.begin(
        "Errand",
        progress -> {
          seen.add(model.progress().get());
          progress.accept(new Progress("Half", 1, 2));
          seen.add(model.progress().get());
          return FINE;
        });
    assertTrue(model.busy().get());
    assertEquals("Errand", model.title().get());
    work.remove().run();

    assertEquals(List.of(-1.0, 0.5), seen, "unknown at first, as progress bars have it");
    assertFalse(model.busy().get());
    assertEquals("Done", model.words().get());
    assertEquals("a file", model.told().get(0).words());
  }

  @Test
  void secondErrandWaitsForNoOneAndIsNotBegun() {
    model.begin("First", progress -> FINE);
    model.begin("Second", progress -> FINE);

    assertEquals(1, work.size());
    assertEquals("First", model.title().get());
  }

  @Test
  void errandThatFailsKeepsItsTroubleUntilTheNextOneBegins() {
    model.begin(
        "Errand",
        progress -> {
          throw new NoSuchFileException("there");
        });
    work.remove().run();
    assertEquals("FILE-MISSING", model.trouble().get().map(Trouble::code).orElse(""));
    assertTrue(model.told().isEmpty());
    assertFalse(model.busy().get());

    model.begin("Again", progress -> FINE);
    assertEquals(Optional.empty(), model.trouble().get());
  }

  @Test
  void faultOfTheProgramIsATroubleAndNotSilence() {
    model.begin(
        "Errand",
        progress -> {
          throw new IllegalStateException("out of nowhere");
        });
    work.remove().run();

    assertEquals(Trouble.Kind.BUG, model.trouble().get().orElseThrow().kind());
    assertFalse(model.busy().get());
  }

  @Test
  void whatIsTrueBesideATroubleIsTold() {
    Trouble trouble = Trouble.noTimeStamp("no answer");
    model.begin("Report", progress -> new Ending(true, "Made", List.of(), Optional.of(trouble)));
    work.remove().run();

    assertEquals("Made", model.words().get());
    assertEquals(Optional.of(trouble), model.trouble().get());
  }
}
