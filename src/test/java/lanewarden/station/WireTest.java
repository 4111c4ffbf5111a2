package lanewarden.station;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What came over the wire of the station's own instrument. */
class WireTest extends LineTest {

  @Test
  void everySignalIsKeptFromTheStartNewestFirst() throws Exception {
    line.shoot("268.8 ft/s");
    line.emit("$PLWT,00003,0304.1,F,006578,A*00\\r\\n");
    WireView wire = line.station.wire();
    assertEquals(
        List.of(Overheard.Kind.REFUSED, Overheard.Kind.READING, Overheard.Kind.LINK_UP),
        wire.newestFirst().stream().map(Overheard::kind).toList());
    assertEquals("$PLWT,00003,0304.1,F,006578,A*00\\r\\n", wire.newestFirst().get(0).raw());
    assertEquals(1, wire.readings());
    assertEquals(1, wire.refused());
    assertEquals(line.station.view().instrument(), wire.instrument());
  }

  @Test
  void aTypedReadingDidNotComeOverTheWire() throws Exception {
    line.station.call("1");
    line.station.type("301 ft/s");
    assertEquals(0, line.station.wire().readings());
  }

  @Test
  void onlyTheLastAreKeptButAllAreCounted() throws Exception {
    String[] speeds = new String[Wire.KEPT + 20];
    Arrays.fill(speeds, "290.0 ft/s");
    line.shoot(speeds);
    WireView wire = line.station.wire();
    assertEquals(Wire.KEPT, wire.newestFirst().size());
    assertEquals(Wire.KEPT + 20, wire.readings());
    assertEquals(List.of(), wire.misfits());
  }

  @Test
  void aProfileThatDoesNotFitIsFoundOut() throws Exception {
    line.emit("268.8\\r\\n");
    line.emit("271.2\\r\\n");
    line.emit("270.4\\r\\n");
    WireView wire = line.station.wire();
    assertEquals(0, wire.readings());
    assertTrue(wire.misfits().get(0).key().startsWith("[sentence]"), wire.misfits().toString());
  }
}
