package lanewarden.journal;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import lanewarden.written.Fingerprint;
import lanewarden.written.KeyChange;
import lanewarden.written.WrittenRefused;
import org.jspecify.annotations.Nullable;

/**
 * What the line was opened with: the instrument, and the papers by which what it sends is read.
 *
 * @param opened as it was signed
 */
public record LinePapers(Fact.StationOpened opened) {
  private static final String NOTHING = "not there";

  /**
   * One of the papers.
   *
   * @param name what it is, for example {@code sentence profile}
   * @param text the whole of it
   */
  public record Paper(String name, String text) {
    /** SHA-256 over its text in UTF-8, 64 hex digits. */
    public String sha256() {
      return Fingerprint.sha256(text.getBytes(StandardCharsets.UTF_8));
    }
  }

  /** The papers that were signed; older openings have no settings. */
  public List<Paper> papers() {
    List<Paper> papers = new ArrayList<>();
    add(papers, "sentence profile", opened.profile());
    add(papers, "second sentence profile", opened.secondProfile());
    add(papers, "settings", opened.settings());
    return List.copyOf(papers);
  }

  private static void add(List<Paper> papers, String name, @Nullable String text) {
    if (text != null) {
      papers.add(new Paper(name, text));
    }
  }

  /** Whether what an instrument sends is read by the same papers. */
  public boolean readsAs(LinePapers other) {
    return papers().equals(other.papers());
  }

  /**
   * What is otherwise than it was, a part of a sentence each: {@code sentence profile,
   * sentence.most: was "500 ft/s", is "296 ft/s"}. Empty where nothing is.
   */
  public List<String> changedFrom(LinePapers before) {
    List<String> changes = new ArrayList<>();
    Fact.StationOpened was = before.opened();
    replaced("instrument", was.instrument(), opened.instrument(), changes);
    compare("sentence profile", was.profile(), opened.profile(), changes);
    compare("second sentence profile", was.secondProfile(), opened.secondProfile(), changes);
    compare("settings", was.settings(), opened.settings(), changes);
    replaced("program", was.program(), opened.program(), changes);
    boolean sameSettings = Objects.equals(was.settings(), opened.settings());
    restated("place of the instrument", was.place(), opened.place(), sameSettings, changes);
    restated("uncertainty of the instrument", was.budget(), opened.budget(), sameSettings, changes);
    return List.copyOf(changes);
  }

  private static void replaced(String what, String was, String is, List<String> changes) {
    if (!was.equals(is)) {
      changes.add(what + ": was “" + was + "”, is “" + is + "”");
    }
  }

  /** What follows from the settings is told whatever else changed, for it is what is printed. */
  private static void restated(
      String what,
      @Nullable Object was,
      @Nullable Object is,
      boolean sameSettings,
      List<String> changes) {
    if (!Objects.equals(was, is)) {
      String how =
          was == null
              ? " is stated, and was not before"
              : is == null ? " is not stated any more" : " is stated otherwise";
      changes.add(what + how + (sameSettings ? ", though the settings are the same" : ""));
    }
  }

  private static void compare(
      String paper, @Nullable String was, @Nullable String is, List<String> changes) {
    if (Objects.equals(was, is)) {
      return;
    }
    if (was == null || is == null) {
      changes.add(paper + (was == null ? ": was not there before" : ": is not there any more"));
      return;
    }
    try {
      List<KeyChange> keys = KeyChange.between(was, is);
      keys.forEach(
          key ->
              changes.add(
                  paper
                      + ", "
                      + key.key()
                      + ": was "
                      + key.before().orElse(NOTHING)
                      + ", is "
                      + key.after().orElse(NOTHING)));
      if (keys.isEmpty()) {
        changes.add(paper + ": only its comments or its layout are others");
      }
    } catch (WrittenRefused unreadable) {
      changes.add(paper + ": is another, and one of the two cannot be read as TOML");
    }
  }
}
