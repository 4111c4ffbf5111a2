package lanewarden.station;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import lanewarden.journal.Check;
import lanewarden.roster.Competitor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demo event is shot, faults and warnings name people, and none of it is in the bundle. */
class SupportBundleTest {
  private static final Logger LIBRARY = Logger.getLogger("a.library");
  private static final String SOME_FRAME = ":\\d+";

  @TempDir Path here;
  private DemoEvent demo;
  private final List<String> readings = new ArrayList<>();

  private SupportBundle bundle() throws Exception {
    try (ProgramLog log = ProgramLog.open(new UserFolder(here.resolve("own")), here)) {
      Surroundings with = PracticeEvent.here().with(log);
      demo = DemoEvent.in(here.resolve("Marta Olesund's laptop"), with);
      shoot(with);
      String name = "Marta Olesund, bib 101, " + DemoEvent.PASSPHRASE;
      Trouble.of(new IllegalStateException(name, new IOException(name)));
      LIBRARY.log(Level.WARNING, "cannot draw {0} ({1})", new Object[] {"Łucja", demo.folder()});
      CheckUp checkUp = new CheckUp(with, ZoneOffset.UTC);
      return checkUp.bundle(demo.folder(), checkUp.of(demo.folder(), Optional.empty()));
    }
  }

  private void shoot(Surroundings with) throws Exception {
    CheckInLine line = CheckInLine.open(demo.folder(), Optional.empty(), 0, with);
    line.station().signIn(DemoEvent.OFFICIAL, DemoEvent.PASSPHRASE.toCharArray());
    for (String bib : List.of("101", "106")) {
      line.station().call(bib);
      line.awaitArrows(java.time.Duration.ofSeconds(20));
      Check check = line.station().view().check().orElseThrow().check();
      check.shots().forEach(shot -> readings.add(shot.reading().speed().value().toPlainString()));
      line.station().next();
    }
    line.leave();
    assertFalse(readings.isEmpty());
  }

  private Map<String, String> texts(Path zip) throws IOException {
    Map<String, String> texts = new LinkedHashMap<>();
    try (ZipInputStream in = new ZipInputStream(Files.newInputStream(zip))) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        texts.put(entry.getName(), new String(in.readAllBytes(), UTF_8));
      }
    }
    return texts;
  }

  /** Every name and every word of one, the passphrase, and every file of the keys. */
  private Set<String> secrets() throws Exception {
    List<String> secrets = new ArrayList<>(readings);
    for (Competitor competitor : demo.folder().roster().competitors()) {
      secrets.addAll(names(competitor.name()));
    }
    for (String official : demo.folder().officials()) {
      secrets.addAll(names(official));
    }
    secrets.addAll(names("Wilhelmina Rookwood"));
    secrets.add(DemoEvent.PASSPHRASE);
    secrets.add(demo.folder().path().toString());
    LedgerInspection.of(demo.folder().path(), List.of())
        .officials()
        .forEach(official -> secrets.add(official.thumbprint()));
    try (Stream<Path> keys = Files.list(demo.folder().path().resolve(EventFolder.KEYS))) {
      for (Path key : keys.toList()) {
        secrets.add(Files.readString(key).substring(0, 60));
      }
    }
    return secrets.stream().filter(s -> s.length() > 2).collect(Collectors.toSet());
  }

  private static List<String> names(String name) {
    List<String> all = new ArrayList<>(List.of(name.split("\\s+")));
    all.add(name);
    return all;
  }

  @Test
  void noNameBibPassphraseKeyOrReadingIsInAnyByteOfIt() throws Exception {
    SupportBundle bundle = bundle();
    Path zip = here.resolve("bundle.zip");
    bundle.write(zip);

    List<String> all = new ArrayList<>(texts(zip).values());
    all.add(new String(Files.readAllBytes(zip), java.nio.charset.StandardCharsets.ISO_8859_1));
    all.add(new String(Files.readAllBytes(zip), UTF_8));
    for (String text : all) {
      for (String secret : secrets()) {
        assertFalse(contains(text, secret), secret + " in " + text);
      }
    }
    String words = String.join("\n", texts(zip).values()).replaceAll(SOME_FRAME, "");
    for (Competitor competitor : demo.folder().roster().competitors()) {
      assertFalse(contains(words, competitor.bib()), competitor.bib() + " in " + words);
    }
  }

  /** As a word of its own: "Ada" is not in "adapter", nor 101 in a hash. */
  private static boolean contains(String text, String secret) {
    return Pattern.compile(
            "(?<![\\p{L}\\p{N}])" + Pattern.quote(secret) + "(?![\\p{L}\\p{N}])",
            Pattern.UNICODE_CASE)
        .matcher(text)
        .find();
  }

  @Test
  void whatIsToldBeforeIsWhatIsWritten() throws Exception {
    SupportBundle bundle = bundle();
    Path zip = here.resolve("bundle.zip");
    bundle.write(zip);
    assertEquals(
        bundle.parts().stream()
            .collect(Collectors.toMap(SupportBundle.Part::name, SupportBundle.Part::text)),
        texts(zip));
    assertEquals(
        List.of("program.txt", "settings.txt", "self-check.txt", "ledger.txt", "log-1.txt"),
        bundle.parts().stream().map(SupportBundle.Part::name).toList());
  }

  @Test
  void itSaysWhatHelpsWhoeverKeepsTheProgram() throws Exception {
    Map<String, String> texts =
        bundle().parts().stream()
            .collect(Collectors.toMap(SupportBundle.Part::name, SupportBundle.Part::text));
    assertTrue(texts.get("program.txt").contains("Program: Lanewarden under test\n"));
    assertTrue(texts.get("program.txt").contains("Java: " + System.getProperty("java.version")));
    assertTrue(texts.get("settings.txt").contains("instrument: simulator\n"));
    assertTrue(texts.get("self-check.txt").contains("ledger: good: "), texts.toString());
    String head = LedgerInspection.of(demo.folder().path(), List.of()).head().orElseThrow();
    assertTrue(texts.get("ledger.txt").contains("head: " + head), texts.get("ledger.txt"));
    assertTrue(texts.get("ledger.txt").contains("check-opened: 2\n"), texts.get("ledger.txt"));
    String log = texts.get("log-1.txt");
    assertTrue(log.contains("event opened, ledger head "), log);
    assertTrue(log.contains("BUG-IllegalStateException | java.lang.IllegalStateException at"), log);
    assertTrue(log.contains("WARNING a.library cannot draw …"), log);
  }

  @Test
  void fileThatIsThereIsNotWrittenOver() throws Exception {
    Path kept = Files.writeString(here.resolve("kept.zip"), "kept");
    SupportBundle bundle = bundle();
    assertEquals("FILE-EXISTS", PracticeLine.codeOf(() -> bundle.write(kept)));
    assertEquals("kept", Files.readString(kept));
  }

  @Test
  void brokenEventHasABundleToo() throws Exception {
    Path folder = Files.createDirectory(here.resolve("broken"));
    Files.writeString(folder.resolve(EventFolder.LEDGER), "no ledger");
    EventFolder broken = new EventFolder(folder);
    CheckUp checkUp = new CheckUp(PracticeEvent.here(), ZoneOffset.UTC);
    SupportBundle bundle = checkUp.bundle(broken, checkUp.of(broken, Optional.empty()));
    bundle.write(here.resolve("broken.zip"));
    assertTrue(texts(here.resolve("broken.zip")).get("ledger.txt").contains("cannot be read"));
    try (InputStream in = Files.newInputStream(here.resolve("broken.zip"))) {
      assertEquals('P', in.read());
    }
  }
}
