package lanewarden.station;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lanewarden.ledger.SmallDisk;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Making an event, and changing its settings, on a real disk that runs full on the way. */
class FullDiskTest {
  private static final int STEP = 16 << 10;
  private static final int MOST = 1 << 20;
  private static final Pattern FULL = Pattern.compile("is full|No space left");
  private static final Pattern TO_DO = Pattern.compile("Make room|is not full");

  @TempDir Path here;

  private EventForm form(Path folder) throws Exception {
    Path list = here.resolve("list.csv");
    Files.writeString(list, "bib,name,division\n11,Ines Wetherholt,OC\n");
    return new EventForm(
        folder.toString(),
        "North gate",
        "",
        list.toString(),
        Map.of(),
        "plain-decimal.toml",
        StationSettings.Kind.SERIAL,
        "COM3",
        List.of(
            new EventForm.Person("Orla Finch", "a long oak", "a long oak", false),
            new EventForm.Person("Ada Holt", "a long elm", "a long elm", false)));
  }

  private static Optional<Trouble> trouble(EventForm form) {
    try {
      form.make(PracticeEvent.here());
      return Optional.empty();
    } catch (StationException e) {
      return Optional.of(e.trouble());
    }
  }

  private static List<Path> names(Path folder) throws Exception {
    try (Stream<Path> names = Files.list(folder)) {
      return names.sorted().toList();
    }
  }

  @Test
  void whereverTheDiskRunsFullNoHalfEventIsLeftAndItIsToldWhatToDo() throws Exception {
    try (SmallDisk disk = SmallDisk.mounted(here.resolve("disk"), "1m")) {
      Path folder = Files.createDirectory(disk.place().resolve("event"));
      Path ballast = disk.place().resolve("films");
      EventForm form = form(folder);
      Set<String> codes = new TreeSet<>();
      int room = 0;
      for (Optional<Trouble> told = Optional.of(Trouble.of(new Exception()));
          told.isPresent() && room < MOST;
          room += STEP) {
        Files.deleteIfExists(ballast);
        Files.write(ballast, new byte[Math.toIntExact(disk.room()) - room]);
        told = trouble(form);
        if (told.isPresent()) {
          codes.add(told.get().code());
          assertEquals("No event was made in " + folder + ".", told.get().what());
          assertTrue(FULL.matcher(told.get().why()).find(), told.get().toString());
          assertTrue(TO_DO.matcher(told.get().remedy()).find(), told.get().toString());
          assertEquals(List.of(folder, ballast), names(disk.place()), "with room for " + room);
          assertEquals(List.of(), names(folder));
        }
      }
      assertTrue(new EventFolder(folder).isMade());
      assertTrue(LedgerInspection.of(folder, List.of()).sound());
      assertEquals(Set.of("DISK-FULL", "KEY-IO", "LEDGER-DISK-FULL"), codes);
    }
  }

  @Test
  void settingsThatDoNotGoOntoAFullDiskStayAsTheyWere() throws Exception {
    try (SmallDisk disk = SmallDisk.mounted(here.resolve("disk"), "1m")) {
      Path folder = form(disk.place().resolve("event")).make(PracticeEvent.here()).folder().path();
      Path settings = folder.resolve("station.toml");
      String before = Files.readString(settings);
      List<Path> there = names(folder);
      InstrumentPort port = InstrumentPort.of(new EventFolder(folder));
      Path ballast = disk.place().resolve("films");
      Files.write(ballast, new byte[Math.toIntExact(disk.room())]);
      StationException full = assertThrows(StationException.class, () -> port.change("COM4"));
      assertEquals("DISK-FULL", full.trouble().code());
      assertEquals(before, Files.readString(settings));
      assertEquals(there, names(folder));
      Files.delete(ballast);
      port.change("COM4");
      assertEquals("COM4", InstrumentPort.of(port.event()).now());
    }
  }
}
