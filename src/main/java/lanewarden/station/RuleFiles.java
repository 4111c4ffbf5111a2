package lanewarden.station;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Clock;

/**
 * The two files of a rule book: its own, which only a right one gets, and one beside it for drafts.
 */
final class RuleFiles {
  private static final String ENDING = ".toml";
  private static final String DRAFT_ENDING = ".draft.toml";

  private final RuleFile home;
  private final RuleFile draft;
  private final boolean holdsDraft;
  private final RuleDraft.Writing writing;
  private final RuleFile.Disk disk;

  private RuleFiles(
      RuleFile home,
      RuleFile draft,
      boolean holdsDraft,
      RuleDraft.Writing writing,
      RuleFile.Disk disk) {
    this.home = home;
    this.draft = draft;
    this.holdsDraft = holdsDraft;
    this.writing = writing;
    this.disk = disk;
  }

  static RuleFiles open(Path file, RuleFile.Disk disk) throws IOException {
    boolean isDraft = String.valueOf(file.getFileName()).endsWith(DRAFT_ENDING);
    RuleFiles files = of(isDraft ? homeOf(file) : file, isDraft, disk);
    RuleFile opened = isDraft ? files.draft : files.home;
    if (opened.seen().isEmpty()) {
      throw new NoSuchFileException(file.toString());
    }
    return files;
  }

  private static RuleFiles of(Path homePath, boolean holdsDraft, RuleFile.Disk disk)
      throws IOException {
    RuleFile home = RuleFile.at(homePath, disk);
    RuleFile draft = RuleFile.at(draftOf(home.path()), disk);
    return new RuleFiles(home, draft, holdsDraft, RuleDraft.Writing.NOTHING, disk);
  }

  private static Path homeOf(Path draft) {
    String name = String.valueOf(draft.getFileName());
    return draft.resolveSibling(name.substring(0, name.length() - DRAFT_ENDING.length()) + ENDING);
  }

  private static Path draftOf(Path home) {
    String name = String.valueOf(home.getFileName());
    String plain =
        name.endsWith(ENDING) ? name.substring(0, name.length() - ENDING.length()) : name;
    return home.resolveSibling(plain + DRAFT_ENDING);
  }

  /** The name for faults. */
  String name() {
    return (holdsDraft ? draft : home).path().toString();
  }

  /** What was opened or saved last. */
  byte[] bytes() {
    return (holdsDraft ? draft : home).seen().orElseThrow();
  }

  boolean holdsDraft() {
    return holdsDraft;
  }

  /** What the last saving wrote. */
  RuleDraft.Writing writing() {
    return writing;
  }

  private static RuleDraft.Writing writing(RuleFile before, RuleFile after) {
    if (before == after) {
      return RuleDraft.Writing.NOTHING;
    }
    return before.seen().isPresent() ? RuleDraft.Writing.REPLACED : RuleDraft.Writing.NEW;
  }

  Path home() {
    return home.path();
  }

  Path draft() {
    return draft.path();
  }

  /** The draft that this one came from is not wanted under its name any more. */
  RuleFiles savedRight(byte[] bytes, Clock clock) throws StationException {
    RuleFile after = home.replace(bytes, clock);
    RuleFile left = holdsDraft ? retired(clock) : draft;
    return new RuleFiles(after, left, false, writing(home, after), disk);
  }

  private RuleFile retired(Clock clock) {
    try {
      return draft.retire(clock);
    } catch (IOException e) {
      // the rule book is saved; the draft is only offered once more when it is opened again
      return draft;
    }
  }

  RuleFiles savedFaulty(byte[] bytes, Clock clock) throws StationException {
    RuleFile after = draft.replace(bytes, clock);
    return new RuleFiles(home, after, true, writing(draft, after), disk);
  }

  RuleFiles savedUnder(Path file, boolean right, byte[] bytes, Clock clock)
      throws StationException {
    Path named = String.valueOf(file.getFileName()).endsWith(DRAFT_ENDING) ? homeOf(file) : file;
    try {
      RuleFiles other = of(named, !right, disk);
      RuleFile target = right ? other.home : other.draft;
      if (Files.exists(target.path())) {
        throw target.trouble(
            "RULES-TAKEN",
            "There is a file of this name already.",
            "Take a name that is free.",
            Trouble.Kind.USAGE);
      }
      RuleFile after = target.replace(bytes, clock);
      return right
          ? new RuleFiles(after, other.draft, false, writing(target, after), disk)
          : new RuleFiles(other.home, after, true, writing(target, after), disk);
    } catch (IOException e) {
      throw StationException.of(e);
    }
  }
}
