package lanewarden.kiosk.instrument;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayDeque;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import lanewarden.kiosk.look.Language;
import lanewarden.kiosk.look.Sign;
import lanewarden.kiosk.look.Texts;
import lanewarden.quantity.Speed;
import lanewarden.station.Listening;
import lanewarden.station.Overheard;
import lanewarden.station.Trouble;
import lanewarden.station.WireView;
import org.junit.jupiter.api.Test;

class WireViewModelTest {
  private static final Instant AT = Instant.parse("2026-05-02T09:30:05Z");

  private final Deque<Consumer<WireView>> answers = new ArrayDeque<>();
  private final Deque<Consumer<Trouble>> misses = new ArrayDeque<>();
  private final WireViewModel model =
      new WireViewModel(
          (answer, missed) -> {
            answers.add(answer);
            misses.add(missed);
          },
          "wire.counted",
          Texts.in(Language.ENGLISH),
          ZoneOffset.ofHours(2));

  private static WireView wire(int readings, int refused, int misfits) {
    return new WireView(
        "gate timer",
        List.of(
            new Overheard(AT, Overheard.Kind.REFUSED, "$PL", Optional.empty(), "torn: half a line"),
            new Overheard(
                AT, Overheard.Kind.READING, "$PLWT", Optional.of(Speed.parse("268.8 ft/s")), "")),
        readings,
        refused,
        Collections.nCopies(misfits, new Listening.Misfit("[port] baud", "Try 9600.")));
  }

  private WirePage shown(WireView view) {
    model.watch(true);
    answers.remove().accept(view);
    return model.page().get();
  }

  @Test
  void whatCameIsShownWithItsBytesAndItsReason() {
    WirePage page = shown(wire(1, 1, 0));
    assertEquals(
        new WirePage.Line(Sign.NOT_ADMITTED, "11:30:05", "REFUSED", "", "$PL", "torn: half a line"),
        page.lines().get(0));
    assertEquals("11:30:05, READING, 268.8 ft/s, $PLWT", page.lines().get(1).spoken());
    assertEquals(Sign.WITHIN, page.verdict().sign());
  }

  @Test
  void theCauseIsShownAndTheRestIsCounted() {
    WirePage page = shown(wire(0, 9, 5));
    assertEquals(WireViewModel.MOST_FINDINGS, page.findings().size());
    assertEquals(new WirePage.Finding("[port] baud", "Try 9600."), page.findings().get(0));
    assertEquals(Sign.OVER, page.verdict().sign());
    assertTrue(page.verdict().words().contains("5 to mend"), page.verdict().words());
  }

  @Test
  void aWireOnWhichNothingCameIsNotSaidToFit() {
    assertEquals(Sign.RUNNING, shown(wire(0, 0, 0)).verdict().sign());
  }

  @Test
  void nothingIsAskedForWhileNobodyLooks() {
    model.changed();
    assertEquals(0, answers.size());
    model.watch(true);
    model.watch(false);
    answers.remove().accept(wire(1, 0, 0));
    model.changed();
    assertEquals(0, answers.size());
  }

  @Test
  void aFloodOfLinesAsksOneQuestionAtATimeAndEndsWithTheLatest() {
    model.watch(true);
    for (int i = 0; i < 1000; i++) {
      model.changed();
    }
    assertEquals(1, answers.size());
    answers.remove().accept(wire(1, 0, 0));
    assertEquals(1, answers.size());
    answers.remove().accept(wire(2, 0, 0));
    assertEquals(0, answers.size());
    assertTrue(model.page().get().counted().contains(" 2 read,"));
  }

  @Test
  void whatKeepsItFromBeingShownIsToldUntilItComes() {
    model.watch(true);
    misses.remove().accept(Trouble.of(new IllegalStateException("gone")));
    assertTrue(model.trouble().get().isPresent());
    model.changed();
    answers.removeLast().accept(wire(1, 0, 0));
    assertEquals(Optional.empty(), model.trouble().get());
  }
}
