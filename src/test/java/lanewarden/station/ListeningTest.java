package lanewarden.station;

import static lanewarden.station.PracticeLine.codeOf;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import lanewarden.chronograph.PseudoTerminal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

class ListeningTest {
  private static final Path PROFILE = Path.of("config/profiles/gate-timer.toml");
  private static final String GOOD = "$PLWT,00354,0268.8,F,007440,A*1B\r\n";

  @TempDir Path here;

  private static List<Overheard> all(Listening listening) throws InterruptedException {
    List<Overheard> heard = new ArrayList<>();
    CountDownLatch ended = new CountDownLatch(1);
    listening.start(
        one -> {
          heard.add(one);
          if (one.kind() == Overheard.Kind.LINK_CLOSED) {
            ended.countDown();
          }
        });
    assertTrue(ended.await(20, TimeUnit.SECONDS), "the capture ends");
    return heard;
  }

  @Test
  void tellsEveryByteOfACaptureAndWhatItBecame() throws Exception {
    Path capture =
        Files.writeString(
            here.resolve("try.capture"),
            "900 $PLWT,00354,0268.8,F,007440,A*1B\\r\\n\n900 $PLWT,00355,03\n");
    List<Overheard> heard = all(Listening.toCapture(capture, PROFILE, 0, PracticeEvent.here()));
    assertEquals(
        List.of(
            Overheard.Kind.LINK_UP,
            Overheard.Kind.READING,
            Overheard.Kind.REFUSED,
            Overheard.Kind.LINK_CLOSED),
        heard.stream().map(Overheard::kind).toList());
    assertEquals("268.8 ft/s", heard.get(1).speed().orElseThrow().toString());
    assertEquals("$PLWT,00354,0268.8,F,007440,A*1B\\r\\n", heard.get(1).raw());
    assertEquals("$PLWT,00355,03", heard.get(2).raw());
    assertTrue(heard.get(2).words().startsWith("torn: "), heard.get(2).words());
  }

  @Test
  @DisabledOnOs(value = OS.WINDOWS, disabledReason = "Windows has no pseudo-terminals of this kind")
  void hearsARealPortAndItsUnplugging() throws Exception {
    List<Overheard> heard = new ArrayList<>();
    CountDownLatch up = new CountDownLatch(1);
    CountDownLatch reading = new CountDownLatch(1);
    CountDownLatch lost = new CountDownLatch(1);
    Path path = here.resolve("timer");
    PseudoTerminal port = PseudoTerminal.linkedAs(path);
    try (Listening listening = Listening.toPort(path.toString(), PROFILE, PracticeEvent.here())) {
      listening.start(
          one -> {
            heard.add(one);
            switch (one.kind()) {
              case LINK_UP -> up.countDown();
              case READING -> reading.countDown();
              case LINK_LOST -> lost.countDown();
              default -> {}
            }
          });
      assertTrue(up.await(10, TimeUnit.SECONDS), "the link comes up");
      port.write(GOOD);
      assertTrue(reading.await(10, TimeUnit.SECONDS), "a reading comes");
      port.close();
      assertTrue(lost.await(10, TimeUnit.SECONDS), "the link is lost");
    }
  }

  @Test
  void aFaultyCaptureIsRefusedWithItsPlace() throws Exception {
    Path capture = Files.writeString(here.resolve("try.capture"), "soon $PLWT\n");
    assertEquals(
        "FILE-REFUSED",
        codeOf(() -> Listening.toCapture(capture, PROFILE, 0, PracticeEvent.here())));
  }

  @Test
  void aProfileThatIsMissingIsSaid() {
    assertEquals(
        "FILE-MISSING",
        codeOf(
            () -> Listening.toPort("/dev/none", here.resolve("none.toml"), PracticeEvent.here())));
  }
}
