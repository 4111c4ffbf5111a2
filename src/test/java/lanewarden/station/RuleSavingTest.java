package lanewarden.station;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Saving a rule book: whole or not at all, and what stood there before is kept. */
class RuleSavingTest {
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-04-03T18:20:05Z"), ZoneOffset.UTC);

  @TempDir Path temp;
  private Path folder;
  private Path file;
  private String before;

  @BeforeEach
  void makeFile() throws Exception {
    folder = Files.createDirectory(temp.resolve("rules"));
    file = folder.resolve("book.toml");
    before = Files.readString(Path.of("config/rule-book.toml"));
    Files.writeString(file, before);
  }

  private RuleDraft changed() throws StationException {
    return RuleDraft.open(file).with(1, RuleKey.LIMIT, "290 ft/s");
  }

  private static RuleDraft faulty(RuleDraft draft) {
    return draft.with(1, RuleKey.LIMIT, "fast");
  }

  private Set<String> left() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(f -> f.getFileName().toString())
          .collect(Collectors.toCollection(TreeSet::new));
    }
  }

  private Trouble refusal(RuleDraft draft) {
    return assertThrows(StationException.class, () -> draft.save(CLOCK)).trouble();
  }

  @Test
  void theFileBeforeIsKeptBesideItUnderAnameWithTheTime() throws Exception {
    RuleDraft saved = changed().save(CLOCK);
    assertEquals(before, Files.readString(folder.resolve("book.20260403T182005Z.toml")));
    assertEquals(before.replace("300 ft/s", "290 ft/s"), Files.readString(file));
    assertFalse(saved.isChanged());
    saved.with(1, RuleKey.LIMIT, "280 ft/s").save(CLOCK);
    assertEquals(
        Set.of("book.toml", "book.20260403T182005Z.toml", "book.20260403T182005Z-2.toml"), left());
  }

  @Test
  void aSavingSaysWhatItWrote() throws Exception {
    RuleDraft saved = changed().save(CLOCK);
    assertEquals(RuleDraft.Writing.REPLACED, saved.writing());
    assertEquals(WrittenRules.read(file).sha256(), saved.sha256());
    RuleDraft other = changed().saveAs(folder.resolve("other.toml"), CLOCK);
    assertEquals(RuleDraft.Writing.NEW, other.writing());
    assertEquals(RuleDraft.Writing.NEW, faulty(saved).save(CLOCK).writing());
    assertEquals(RuleDraft.Writing.NOTHING, other.save(CLOCK).writing());
  }

  @Test
  void whatIsNotChangedIsNotKeptTwice() throws Exception {
    RuleDraft opened = RuleDraft.open(file);
    assertEquals(RuleDraft.Writing.NOTHING, opened.save(CLOCK).writing());
    assertEquals(Set.of("book.toml"), left());
  }

  @Test
  void aFaultyOneIsSavedAsADraftAndTheRuleBookStays() throws Exception {
    RuleDraft saved = faulty(changed()).save(CLOCK);
    assertEquals(before, Files.readString(file));
    assertEquals(Set.of("book.toml", "book.draft.toml"), left());
    assertEquals(folder.toRealPath().resolve("book.draft.toml"), saved.opened());
    assertFalse(saved.isChanged());
    assertEquals("fast", RuleDraft.open(saved.opened()).text(1, RuleKey.LIMIT));
  }

  @Test
  void aMendedDraftTakesTheRuleBooksPlaceAndIsNotOfferedAgain() throws Exception {
    Path draft = faulty(changed()).save(CLOCK).opened();
    assertEquals(draft, RuleDraft.open(file).otherDraft().orElseThrow());
    RuleDraft mended = RuleDraft.open(draft).with(1, RuleKey.LIMIT, "285 ft/s").save(CLOCK);
    assertEquals(file.toRealPath(), mended.opened());
    assertEquals(before.replace("300 ft/s", "285 ft/s"), Files.readString(file));
    assertTrue(mended.otherDraft().isEmpty());
    assertTrue(RuleDraft.open(file).otherDraft().isEmpty());
    assertTrue(left().contains("book.draft.20260403T182005Z.toml"), left()::toString);
  }

  @Test
  void aChangeBySomebodyElseIsNotWrittenOver() throws Exception {
    RuleDraft draft = changed();
    Files.writeString(file, before + "# theirs\n");
    assertEquals("RULES-CHANGED", refusal(draft).code());
    assertEquals(before + "# theirs\n", Files.readString(file));
    RuleDraft other = draft.saveAs(folder.resolve("mine.toml"), CLOCK);
    assertEquals("290 ft/s", other.text(1, RuleKey.LIMIT));
    assertEquals(Set.of("book.toml", "mine.toml"), left());
    assertEquals(before.replace("300 ft/s", "290 ft/s"), Files.readString(other.opened()));
  }

  @Test
  void aFileThatIsGoneIsSaidToBeGone() throws Exception {
    RuleDraft draft = changed();
    Files.delete(file);
    assertEquals("RULES-GONE", refusal(draft).code());
    assertEquals(Set.of(), left());
    draft.saveAs(file, CLOCK);
    assertEquals(Set.of("book.toml"), left());
  }

  @Test
  void aFolderThatIsGoneIsSaidToBeGone() throws Exception {
    RuleDraft draft = changed();
    Files.delete(file);
    Files.delete(folder);
    assertEquals("RULES-FOLDER", refusal(draft).code());
  }

  @Test
  void aFullDiskLeavesTheFileAsItWas() throws Exception {
    RuleDraft draft =
        RuleDraft.open(
                file,
                (path, bytes) -> {
                  Files.write(path, java.util.Arrays.copyOf(bytes, bytes.length / 2));
                  throw new IOException("No space left on device");
                })
            .with(1, RuleKey.LIMIT, "290 ft/s");
    assertEquals("RULES-DISK-FULL", refusal(draft).code());
    assertEquals(before, Files.readString(file));
    assertEquals(Set.of("book.toml"), left());
  }

  @Test
  void aDiskThatFailsWhileTheOldFileIsKeptLeavesItAsItWas() throws Exception {
    RuleDraft draft =
        RuleDraft.open(
                file,
                (path, bytes) -> {
                  if (!path.getFileName().toString().contains("saving")) {
                    throw new IOException("Input/output error");
                  }
                  RuleFile.put(path, bytes);
                })
            .with(1, RuleKey.LIMIT, "290 ft/s");
    Trouble trouble = refusal(draft);
    assertEquals("RULES-NOT-SAVED", trouble.code());
    assertTrue(trouble.why().contains("Input/output error"), trouble::toString);
    assertEquals(before, Files.readString(file));
    assertEquals(Set.of("book.toml"), left());
  }

  @Test
  void aFolderThatMayNotBeWrittenSaysSo() throws Exception {
    RuleDraft draft = changed();
    assertTrue(folder.toFile().setWritable(false));
    try {
      // who is root, or on a system without such rights, may write everywhere
      assumeFalse(Files.isWritable(folder), "this user may write everywhere");
      assertEquals("RULES-DENIED", refusal(draft).code());
      assertEquals(before, Files.readString(file));
    } finally {
      assertTrue(folder.toFile().setWritable(true));
    }
  }

  @Test
  void anotherNameMustBeFree() throws Exception {
    Files.writeString(folder.resolve("taken.toml"), "theirs");
    RuleDraft draft = changed();
    Trouble trouble =
        assertThrows(
                StationException.class, () -> draft.saveAs(folder.resolve("taken.toml"), CLOCK))
            .trouble();
    assertEquals("RULES-TAKEN", trouble.code());
    assertEquals("theirs", Files.readString(folder.resolve("taken.toml")));
  }

  @Test
  void aFaultyOneUnderAnotherNameIsADraftOfThatName() throws Exception {
    RuleDraft saved = faulty(changed()).saveAs(folder.resolve("other.toml"), CLOCK);
    assertEquals(Set.of("book.toml", "other.draft.toml"), left());
    saved.with(1, RuleKey.LIMIT, "290 ft/s").save(CLOCK);
    assertTrue(left().contains("other.toml"), left()::toString);
  }

  @Test
  void aLinkedRuleBookIsSavedWhereItLies() throws Exception {
    Path link = temp.resolve("link.toml");
    try {
      Files.createSymbolicLink(link, file);
    } catch (IOException | UnsupportedOperationException e) {
      assumeFalse(true, "no links here");
    }
    RuleDraft.open(link).with(1, RuleKey.LIMIT, "290 ft/s").save(CLOCK);
    assertTrue(Files.isSymbolicLink(link));
    assertEquals(before.replace("300 ft/s", "290 ft/s"), Files.readString(file));
  }
}
