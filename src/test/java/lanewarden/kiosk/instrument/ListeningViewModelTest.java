package lanewarden.kiosk.instrument;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import lanewarden.chronograph.PseudoTerminal;
import lanewarden.kiosk.desk.SideTable;
import lanewarden.kiosk.form.Places;
import lanewarden.kiosk.look.Language;
import lanewarden.kiosk.look.Sign;
import lanewarden.kiosk.look.Texts;
import lanewarden.station.Listening;
import lanewarden.station.Overheard;
import lanewarden.station.Surroundings;
import lanewarden.station.Trouble;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** An instrument or a capture that is listened to without a station. */
class ListeningViewModelTest {
  private static final String PACKED = "gate-timer.toml";
  private static final String GOOD = "$PLWT,00354,0268.8,F,007440,A*1B";

  @TempDir Path temp;
  private final ConcurrentLinkedQueue<Runnable> screen = new ConcurrentLinkedQueue<>();
  private final List<Trouble> refusals = new ArrayList<>();
  private final Surroundings here =
      new Surroundings(Clock.systemUTC(), System::nanoTime, new SecureRandom(), "test");
  private ListeningViewModel model;
  private int taken;

  @BeforeEach
  void look() {
    model =
        new ListeningViewModel(
            here,
            Places.in(temp),
            new SideTable(Runnable::run, screen::add),
            Texts.in(Language.ENGLISH),
            ZoneOffset.UTC);
    model.wire().watch(true);
  }

  @AfterEach
  void end() {
    model.end();
  }

  private void until(BooleanSupplier so) throws Exception {
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(20);
    while (!so.getAsBoolean()) {
      assertTrue(System.nanoTime() < end, "waited too long: " + model.wire().page().get());
      for (Runnable task = screen.poll(); task != null; task = screen.poll()) {
        task.run();
      }
      Thread.sleep(5);
    }
  }

  private void play(String text, String profile, String pace) throws Exception {
    Files.writeString(temp.resolve("try.capture"), text);
    model.toCapture("try.capture", profile, pace, () -> taken++, refusals::add);
    until(() -> taken + refusals.size() > 0);
  }

  private WirePage page() {
    return model.wire().page().get();
  }

  private List<String> words() {
    return page().lines().stream().map(WirePage.Line::word).toList();
  }

  @Test
  void captureIsToldToItsEndAndWhatWasCutOffIsSaid() throws Exception {
    play("900 " + GOOD + "\\r\\n\n900 $PLWT,00355,03\n", PACKED, "");
    until(() -> !model.on().get());
    assertEquals(List.of("OFF", "REFUSED", "READING", "CONNECTED"), words());
    assertTrue(page().lines().get(1).words().startsWith("torn: "));
    assertEquals(
        "Since listening began: 1 read, 1 refused. Shown 4, newest first:", page().counted());
  }

  @Test
  void captureIsPlayedAnewFromItsBeginning() throws Exception {
    play("0 " + GOOD + "\\r\\n\n", PACKED, "0");
    until(() -> !model.on().get());
    AtomicInteger begun = new AtomicInteger();
    model.on().addListener((all, before, now) -> begun.addAndGet(now ? 1 : 0));
    model.again();
    until(() -> begun.get() == 1 && !model.on().get());
    assertEquals(List.of("OFF", "READING", "CONNECTED"), words());
  }

  @Test
  void captureWaitsAsLongAsItsPaceSaysAndEndsWhenSomebodyEndsIt() throws Exception {
    play("3600000 " + GOOD + "\\r\\n\n", PACKED, "1");
    until(() -> words().contains("CONNECTED"));
    assertTrue(model.on().get());
    model.end();
    until(() -> !model.on().get());
    assertFalse(words().contains("READING"));
  }

  /** The line of another instrument, read by a profile of plain numbers: nothing fits. */
  @Test
  void atTheEndEverythingIsSaidThatDoesNotFit() throws Exception {
    play(("0 " + GOOD + "\\r\\n\n").repeat(6), "plain-decimal.toml", "");
    until(() -> !model.on().get());
    Listening same =
        Listening.toCapture(
            temp.resolve("try.capture"), Path.of("config/profiles/plain-decimal.toml"), 0, here);
    CountDownLatch ended = new CountDownLatch(1);
    same.start(
        heard -> {
          if (heard.kind() == Overheard.Kind.LINK_CLOSED) {
            ended.countDown();
          }
        });
    assertTrue(ended.await(20, TimeUnit.SECONDS));
    assertFalse(same.wire().misfits().isEmpty());
    assertEquals(
        same.wire().misfits().stream().map(Listening.Misfit::words).toList(),
        page().findings().stream().map(WirePage.Finding::words).toList());
    assertEquals(Sign.OVER, page().verdict().sign());
  }

  @Test
  void whatIsMissingOrNoNumberIsRefusedAndNothingIsListenedTo() throws Exception {
    play("0 x\n", "none.toml", "");
    play("0 x\n", PACKED, "fast");
    play("0 x\n", PACKED, "-1");
    play("soon x\n", PACKED, "");
    model.toCapture("none.capture", PACKED, "", () -> taken++, refusals::add);
    until(() -> refusals.size() == 5);
    assertEquals(
        List.of("FILE-MISSING", "PACE-REFUSED", "PACE-REFUSED", "FILE-REFUSED", "FILE-MISSING"),
        refusals.stream().map(Trouble::code).toList());
    assertEquals(0, taken);
    assertFalse(model.on().get());
  }

  @Test
  @DisabledOnOs(value = OS.WINDOWS, disabledReason = "Windows has no pseudo-terminals of this kind")
  void portIsHeardUnpluggedAndFreeOnceItIsEnded() throws Exception {
    Path path = temp.resolve("timer");
    try (PseudoTerminal port = PseudoTerminal.linkedAs(path)) {
      model.toPort(path.toString(), PACKED, () -> taken++, refusals::add);
      until(() -> words().contains("CONNECTED"));
      port.write(GOOD + "\r\n");
      until(() -> words().contains("READING"));
      model.end();
      until(() -> !model.on().get());
      assertEquals("OFF", words().get(0));

      model.again();
      until(() -> words().equals(List.of("CONNECTED")));
      port.close();
      until(() -> words().contains("LOST"));
    }
    assertEquals(List.of(), refusals);
  }
}
