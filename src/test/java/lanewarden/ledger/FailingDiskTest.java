package lanewarden.ledger;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Real disks that are full or may only be read, and another process that holds the file. */
class FailingDiskTest {
  @TempDir Path folder;
  private final List<AutoCloseable> mounted = new ArrayList<>();

  @AfterEach
  void unmount() throws Exception {
    for (AutoCloseable each : mounted) {
      each.close();
    }
  }

  private SmallDisk disk(String size) throws Exception {
    SmallDisk disk = SmallDisk.mounted(folder.resolve("disk"), size);
    mounted.add(disk);
    return disk;
  }

  private static void assertSaysAll(LedgerException fault) {
    for (String text : List.of(fault.what(), fault.why(), fault.remedy())) {
      assertTrue(text.length() > 10 && text.endsWith("."), text);
    }
  }

  @Test
  void onAFullDiskNothingAcknowledgedIsLostAndItGoesOnWithRoomAgain() throws Exception {
    Path disk = disk("2m").place();
    SampleLedger sample = new SampleLedger(disk.resolve("event.ledger")).with(0);
    Path ballast = Files.write(disk.resolve("films"), new byte[700 << 10]);
    Draft large = SampleLedger.draft("roster", "{\"text\":\"" + "x".repeat(20_000) + "\"}");
    List<PrintedHead> acknowledged = new ArrayList<>();
    try (Ledger ledger = sample.open()) {
      LedgerException full =
          assertThrows(
              LedgerException.class,
              () -> {
                while (acknowledged.size() < 1000) {
                  ledger.append(sample.official, List.of(large));
                  acknowledged.add(ledger.head().printed());
                }
              });
      assertEquals("LEDGER-DISK-FULL", full.code());
      assertSaysAll(full);
      assertFalse(acknowledged.isEmpty());
      assertEquals(acknowledged.get(acknowledged.size() - 1), ledger.head().printed());
      Files.delete(ballast);
      ledger.append(sample.official, List.of(large));
      acknowledged.add(ledger.head().printed());
    }
    Verification after = Verification.of(sample.file, acknowledged, examined -> {});
    assertEquals(List.of(), after.faults());
    assertEquals(acknowledged.size() + 2, after.entries());
  }

  @Test
  void aLedgerOnAFullDiskCanStillBeVerified() throws Exception {
    SmallDisk disk = disk("400k");
    SampleLedger sample = new SampleLedger(disk.place().resolve("event.ledger")).with(3);
    Files.write(disk.place().resolve("films"), new byte[(int) disk.room()]);
    assertEquals(0, disk.room());
    Verification verification = Verification.of(sample.file);
    assertEquals(List.of(), verification.faults());
    assertEquals(5, verification.entries());
  }

  @Test
  void noLedgerIsMadeOnAFullDiskAndNothingIsLeftBehind() throws Exception {
    Path disk = disk("64k").place();
    Files.write(disk.resolve("films"), new byte[60 << 10]);
    SampleLedger sample = new SampleLedger(disk.resolve("event.ledger"));
    LedgerException full = assertThrows(LedgerException.class, sample::create);
    assertTrue(List.of("LEDGER-DISK-FULL", "LEDGER-CANNOT-MAKE").contains(full.code()), full::code);
    assertSaysAll(full);
    assertFalse(Files.exists(sample.file));
  }

  @Test
  void aFolderThatMayOnlyBeReadIsNotWrittenToButCanBeVerified() throws Exception {
    Path place = Files.createDirectory(folder.resolve("place"));
    SampleLedger sample = new SampleLedger(place.resolve("event.ledger")).with(3);
    Files.delete(place.resolve("event.ledger.lock"));
    byte[] before = Files.readAllBytes(sample.file);
    if (SmallDisk.run("mount", "--bind", place.toString(), place.toString())) {
      mounted.add(() -> SmallDisk.run("umount", place.toString()));
      Assumptions.assumeTrue(
          SmallDisk.run("mount", "-o", "remount,ro,bind", place.toString()),
          "not run: this system does not mount for reading only");
    } else {
      Assumptions.assumeTrue(
          Files.getFileStore(place).supportsFileAttributeView("posix"),
          "not run: this file system has no POSIX rights");
      Files.setPosixFilePermissions(place, PosixFilePermissions.fromString("r-xr-xr-x"));
      Assumptions.assumeFalse(
          Files.isWritable(place), "not run: this user may write everywhere and cannot mount");
    }
    LedgerException refused = assertThrows(LedgerException.class, sample::open);
    assertEquals("LEDGER-READ-ONLY", refused.code());
    assertSaysAll(refused);
    Verification verification = Verification.of(sample.file);
    assertEquals(List.of(), verification.faults());
    assertEquals(5, verification.entries());
    assertArrayEquals(before, Files.readAllBytes(sample.file));
    if (mounted.isEmpty()) {
      Files.setPosixFilePermissions(place, PosixFilePermissions.fromString("rwxr-xr-x"));
    }
  }

  @Test
  void whileAnotherProcessHoldsTheFileAnAppendIsRefusedAndThenGoesOn() throws Exception {
    SampleLedger sample = new SampleLedger(folder.resolve("event.ledger")).with(1);
    try (Ledger ledger = sample.open()) {
      Process other =
          new ProcessBuilder(
                  Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                  "-XX:TieredStopAtLevel=1",
                  "-cp",
                  System.getProperty(
                      "surefire.test.class.path", System.getProperty("java.class.path")),
                  LockingProgram.class.getName(),
                  sample.file.toString())
              .redirectError(ProcessBuilder.Redirect.INHERIT)
              .start();
      try (BufferedReader out =
          new BufferedReader(
              new InputStreamReader(other.getInputStream(), StandardCharsets.US_ASCII))) {
        assertEquals("held", out.readLine());
        Head before = ledger.head();
        LedgerException busy =
            assertThrows(
                LedgerException.class,
                () -> ledger.append(sample.official, List.of(SampleLedger.reading(2))));
        assertEquals("LEDGER-BUSY", busy.code());
        assertSaysAll(busy);
        assertEquals(before, ledger.head());
        assertEquals(List.of(), Verification.of(sample.file).faults());
      } finally {
        other.getOutputStream().close();
        assertTrue(other.waitFor(60, TimeUnit.SECONDS));
      }
      assertEquals(
          4, ledger.append(sample.official, List.of(SampleLedger.reading(2))).get(0).sequence());
    }
    assertTrue(Verification.of(sample.file).sound());
  }
}
