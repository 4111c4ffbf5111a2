package lanewarden.station;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * What whoever keeps the program needs to help with it: a ZIP of plain texts, without a name, a
 * bib, a reading or a key. What is in it can be told before anything is written; immutable.
 */
public final class SupportBundle {

  /**
   * One of its texts.
   *
   * @param name of the file in the ZIP
   * @param holds what it is, in a few words
   * @param text what stands in it
   */
  public record Part(String name, String holds, String text) {

    /** How long it is, in bytes of UTF-8. */
    public int bytes() {
      return text.getBytes(StandardCharsets.UTF_8).length;
    }
  }

  private final List<Part> parts;
  private final Instant at;

  private SupportBundle(List<Part> parts, Instant at) {
    this.parts = List.copyOf(parts);
    this.at = at;
  }

  static SupportBundle of(EventFolder folder, SelfCheck check, Surroundings here)
      throws StationException {
    Instant at = here.clock().instant().truncatedTo(ChronoUnit.SECONDS);
    List<Part> parts = new ArrayList<>();
    parts.add(new Part("program.txt", "the program and what it runs on", program(here, at)));
    parts.add(new Part("settings.txt", "settings, without names and paths", settings(folder)));
    parts.add(new Part("self-check.txt", "what was found here, without details", found(check)));
    parts.add(new Part("ledger.txt", "how many entries of each kind, and the head", ledger(check)));
    try {
      int number = 1;
      for (Path file : here.log().files()) {
        parts.add(
            new Part(
                "log-" + number++ + ".txt",
                "the program's log",
                new String(Files.readAllBytes(file), StandardCharsets.UTF_8)));
      }
    } catch (IOException e) {
      throw StationException.of(e);
    }
    Redaction redaction = Redaction.of(folder);
    return new SupportBundle(
        parts.stream()
            .map(part -> new Part(part.name(), part.holds(), redaction.of(part.text())))
            .toList(),
        at);
  }

  private static String program(Surroundings here, Instant at) {
    List<String> lines = new ArrayList<>(List.of("Program: " + here.program(), "Made: " + at));
    lines.addAll(Computer.inLines());
    return lines(lines);
  }

  private static String settings(EventFolder folder) {
    try {
      return lines(SettingsTold.inLines(folder.settings()));
    } catch (StationException e) {
      return lines(List.of("They cannot be read: " + e.trouble().code()));
    }
  }

  private static String found(SelfCheck check) {
    return lines(
        check.points().stream()
            .map(p -> p.subject().word() + ": " + p.state().word() + ": " + p.found())
            .toList());
  }

  private static String ledger(SelfCheck check) {
    List<String> lines = new ArrayList<>();
    check
        .ledger()
        .ifPresentOrElse(
            held -> {
              lines.add("entries: " + held.entries());
              lines.add("head: " + held.head());
              lines.addAll(held.kinds());
            },
            () -> lines.add("It cannot be read."));
    return lines(lines);
  }

  private static String lines(List<String> lines) {
    return lines.stream().collect(Collectors.joining("\n", "", "\n"));
  }

  /** Its texts, in order, as they will be written. */
  public List<Part> parts() {
    return parts;
  }

  /**
   * Writes it.
   *
   * @param zip must not be there yet
   * @throws StationException if it is, or the disk refuses; then nothing is left behind
   */
  public void write(Path zip) throws StationException {
    try {
      RuleFile.put(zip, zipped());
    } catch (IOException e) {
      throw StationException.of(e);
    }
  }

  private byte[] zipped() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream out = new ZipOutputStream(bytes)) {
      for (Part part : parts) {
        ZipEntry entry = new ZipEntry(part.name());
        entry.setLastModifiedTime(FileTime.from(at));
        out.putNextEntry(entry);
        out.write(part.text().getBytes(StandardCharsets.UTF_8));
        out.closeEntry();
      }
    }
    return bytes.toByteArray();
  }
}
