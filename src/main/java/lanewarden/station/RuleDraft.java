package lanewarden.station;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lanewarden.quantity.Sentence;
import lanewarden.rules.Division;
import lanewarden.rules.DraftRules;
import lanewarden.written.Fingerprint;
import lanewarden.written.KeyPlace;
import lanewarden.written.TablePath;
import lanewarden.written.WrittenFault;
import lanewarden.written.WrittenRefused;
import lanewarden.written.WrittenToml;

/**
 * A rule book while a person writes it: its file changed key by key, with everything else in the
 * file kept, and what is right and wrong in it at every moment.
 *
 * <p>Immutable: each change gives a new draft. Sections are counted as a person counts them: 0 is
 * the event, then come the divisions from 1. What is typed always stands in the draft as it was
 * typed, also where it is wrong.
 */
public final class RuleDraft {

  /** What a saving wrote. */
  public enum Writing {
    /** Nothing: the very same stood in the file already. */
    NOTHING,
    /** A file that was not there before. */
    NEW,
    /** The file anew; what stood in it before is kept beside it. */
    REPLACED
  }

  private final RuleFiles files;
  private final WrittenToml toml;
  private final List<DraftSection> sections;
  private final DraftRules rules;
  private final DraftRules saved;

  private RuleDraft(
      RuleFiles files, WrittenToml toml, List<DraftSection> sections, DraftRules saved)
      throws WrittenRefused {
    this.files = files;
    this.toml = toml;
    this.sections = List.copyOf(sections);
    this.rules = DraftRules.read(files.name(), toml.utf8());
    this.saved = saved;
  }

  /**
   * Opens a rule book; of a file named {@code *.draft.toml}, what is right is saved without that.
   *
   * @throws StationException if there is none, or it is not TOML, or of another format
   */
  public static RuleDraft open(Path file) throws StationException {
    return open(file, RuleFile::put);
  }

  static RuleDraft open(Path file, RuleFile.Disk disk) throws StationException {
    try {
      RuleFiles files = RuleFiles.open(file, disk);
      WrittenToml toml = WrittenToml.read(file.toString(), files.bytes());
      return asSaved(files, toml);
    } catch (IOException | WrittenRefused e) {
      throw StationException.of(e);
    }
  }

  private static RuleDraft asSaved(RuleFiles files, WrittenToml toml) throws WrittenRefused {
    List<DraftSection> sections =
        IntStream.rangeClosed(0, toml.count(DraftRules.DIVISION))
            .mapToObj(DraftSection::saved)
            .toList();
    return new RuleDraft(files, toml, sections, DraftRules.read(files.name(), toml.utf8()));
  }

  /** How many divisions there are. */
  public int divisions() {
    return sections.size() - 1;
  }

  /** What stands for a key: as it was typed, or as the file says; blank if nothing does. */
  public String text(int section, RuleKey key) {
    return sections
        .get(section)
        .typed(key)
        .orElseGet(() -> toml.value(path(section), key.word()).map(RuleDraft::plain).orElse(""));
  }

  private static String plain(Object value) {
    return value instanceof List<?> list
        ? String.join("\n", list.stream().map(String::valueOf).toList())
        : String.valueOf(value);
  }

  private static TablePath path(int section) {
    return section == 0 ? TablePath.of("event") : TablePath.nth(DraftRules.DIVISION, section);
  }

  /**
   * Types something for a key; blank takes the key out. What cannot be written into the file at
   * all, so that it would be lost there, is a fault of its own until it is mended.
   */
  public RuleDraft with(int section, RuleKey key, String typed) {
    DraftSection before = sections.get(section);
    Optional<RuleFault> missed = Optional.empty();
    WrittenToml changed = toml;
    try {
      changed =
          typed.isBlank()
              ? toml.remove(path(section), key.word())
              : toml.set(path(section), key.word(), key.kind().literal(typed), RuleKey.order());
    } catch (WrittenRefused e) {
      WrittenFault fault = e.faults().get(0);
      missed =
          Optional.of(
              new RuleFault(
                  section, Optional.of(key.word()), fault.expected(), fault.found(), fault.mend()));
    } catch (IllegalArgumentException e) {
      String found = String.valueOf(e.getMessage());
      missed =
          Optional.of(
              new RuleFault(
                  section,
                  Optional.of(key.word()),
                  Sentence.of(FormTold.WHOLE_CHARACTERS),
                  Sentence.verbatim(found),
                  Sentence.of(FormTold.TYPE_ONCE_MORE)));
    }
    List<DraftSection> after = new ArrayList<>(sections);
    after.set(section, before.with(key, typed, missed));
    return changed(changed, after);
  }

  /** Takes out a key that no rule book has, as a fault names it. */
  public RuleDraft without(int section, String key) throws StationException {
    return rewritten(toml -> toml.remove(path(section), key), sections);
  }

  /** Adds an empty division behind the last. */
  public RuleDraft add() throws StationException {
    List<DraftSection> after = new ArrayList<>(sections);
    after.add(DraftSection.fresh());
    return rewritten(toml -> toml.add(DraftRules.DIVISION), after);
  }

  /** Puts a copy of a division behind it. */
  public RuleDraft copy(int division) throws StationException {
    List<DraftSection> after = new ArrayList<>(sections);
    after.add(division + 1, sections.get(division).copy());
    return rewritten(toml -> toml.copy(path(division)), after);
  }

  /** Takes a division out. */
  public RuleDraft remove(int division) throws StationException {
    List<DraftSection> after = new ArrayList<>(sections);
    after.remove(division);
    return rewritten(toml -> toml.remove(path(division)), after);
  }

  @FunctionalInterface
  private interface Rewriting {
    WrittenToml of(WrittenToml toml) throws WrittenRefused;
  }

  private RuleDraft rewritten(Rewriting rewriting, List<DraftSection> after)
      throws StationException {
    try {
      return changed(rewriting.of(toml), after);
    } catch (WrittenRefused e) {
      throw StationException.of(e);
    }
  }

  private RuleDraft changed(WrittenToml to, List<DraftSection> after) {
    try {
      return new RuleDraft(files, to, after, saved);
    } catch (WrittenRefused e) {
      throw new IllegalStateException("a change made it another format", e);
    }
  }

  /** Every fault. */
  public List<RuleFault> faults() {
    return Stream.concat(
            sections.stream().flatMap(DraftSection::missed),
            rules.faults().stream().map(this::told))
        .toList();
  }

  /** The faults of one section. */
  public List<RuleFault> faults(int section) {
    return faults().stream().filter(fault -> fault.section() == section).toList();
  }

  private RuleFault told(WrittenFault fault) {
    KeyPlace place = fault.place();
    int section = place == null ? 0 : Math.max(0, sectionOf(place.table()));
    Optional<String> key = Optional.ofNullable(place).map(KeyPlace::key);
    Optional<Object> value =
        place == null ? Optional.empty() : toml.value(place.table(), place.key());
    Sentence mend = fault.mend();
    if (value.isEmpty() && key.isPresent()) {
      mend = Sentence.of(FormTold.FILL_IN);
    } else if (Stream.of(RuleKey.values()).anyMatch(k -> isOfAnotherKind(k, key, value))) {
      mend = Sentence.of(FormTold.TYPE_AGAIN);
    }
    return new RuleFault(section, key, fault.expected(), fault.found(), mend);
  }

  private static boolean isOfAnotherKind(
      RuleKey key, Optional<String> word, Optional<Object> value) {
    return word.filter(key.word()::equals).isPresent()
        && value.filter(v -> !key.kind().takes(v)).isPresent();
  }

  private static int sectionOf(TablePath table) {
    return DraftRules.DIVISION.equals(table.name()) ? table.nth() : 0;
  }

  /** A division, where nothing in its section is wrong, whatever is wrong elsewhere. */
  public Optional<Division> division(int division) {
    return sections.get(division).missed().findAny().isPresent()
        ? Optional.empty()
        : rules.divisions().get(division - 1);
  }

  /** A division as it was when it was opened or last saved, if it was there and right. */
  public Optional<Division> savedDivision(int division) {
    int was = sections.get(division).savedAs();
    return was == 0 ? Optional.empty() : saved.divisions().get(was - 1);
  }

  /** Whether anything is not saved. */
  public boolean isChanged() {
    return !Arrays.equals(toml.utf8(), files.bytes())
        || sections.stream().flatMap(DraftSection::missed).findAny().isPresent();
  }

  /** What the last saving wrote; nothing where it was not saved yet. */
  public Writing writing() {
    return files.writing();
  }

  /** SHA-256 of what was opened or saved last, 64 hex digits. */
  public String sha256() {
    return Fingerprint.sha256(files.bytes());
  }

  /** The file that was opened or saved last: the rule book itself, or a draft of it. */
  public Path opened() {
    return files.holdsDraft() ? files.draft() : files.home();
  }

  /** The file that the rule book is, or will be when nothing is wrong in it. */
  public Path file() {
    return files.home();
  }

  /** Where {@link #save} writes it as it is now: a faulty one goes into a file for drafts. */
  public Path target() {
    return rules.faults().isEmpty() ? files.home() : files.draft();
  }

  /** A draft that lies beside the rule book and is not the one opened here. */
  public Optional<Path> otherDraft() {
    return files.holdsDraft() || !Files.exists(files.draft())
        ? Optional.empty()
        : Optional.of(files.draft());
  }

  /**
   * Saves it to {@link #target}. The file that was there is kept beside it, under a name with the
   * time.
   *
   * @throws StationException if it cannot be saved so; then no file was changed
   */
  public RuleDraft save(Clock clock) throws StationException {
    requireWritten();
    byte[] bytes = toml.utf8();
    boolean right = rules.faults().isEmpty();
    return reopened(right ? files.savedRight(bytes, clock) : files.savedFaulty(bytes, clock));
  }

  /**
   * Saves it under another name and goes on with that; a faulty one in the file for its drafts.
   *
   * @param file must not be there yet
   * @throws StationException if it cannot be saved so; then no file was changed
   */
  public RuleDraft saveAs(Path file, Clock clock) throws StationException {
    requireWritten();
    boolean right = rules.faults().isEmpty();
    return reopened(files.savedUnder(file, right, toml.utf8(), clock));
  }

  private RuleDraft reopened(RuleFiles after) throws StationException {
    try {
      return asSaved(after, toml);
    } catch (WrittenRefused e) {
      throw StationException.of(e);
    }
  }

  private void requireWritten() throws StationException {
    Optional<RuleFault> missed = sections.stream().flatMap(DraftSection::missed).findFirst();
    if (missed.isPresent()) {
      throw StationException.misstep(
          "RULES-UNWRITTEN",
          "The rule book was not saved.",
          "What was typed for "
              + missed.get().key().map(Objects::toString).orElse("a key")
              + " cannot be written into the file: "
              + missed.get().inWords(),
          "Mend or empty that field, then save again.");
    }
  }
}
