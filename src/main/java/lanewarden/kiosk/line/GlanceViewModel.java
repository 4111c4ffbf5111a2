package lanewarden.kiosk.line;

import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import lanewarden.kiosk.look.Sign;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.trouble.TroubleWords;
import org.jspecify.annotations.Nullable;

/**
 * What goes on at the line while the official looks at something else: readings are taken all the
 * same, and must not be found by chance. Used on the screen's thread.
 */
public final class GlanceViewModel {

  /** What the official looks at. */
  public enum Looking {
    /** The line itself. */
    LINE,
    /** A panel over the line, which lets most of it be seen. */
    PANEL,
    /** Another screen. */
    ELSEWHERE
  }

  private final Texts texts;
  private final ObjectProperty<Optional<Glance>> glance =
      new SimpleObjectProperty<>(Optional.empty());
  private @Nullable LinePage page;
  private boolean onDuty;
  private Looking looking = Looking.LINE;
  private long seenCheck;
  private int seenShots;
  private Optional<RefusedLine> seenRefused = Optional.empty();

  /** Shows nothing until the first page comes. */
  public GlanceViewModel(Texts texts) {
    this.texts = texts;
  }

  /** What is shown; empty while the line itself says it. */
  public ObjectProperty<Optional<Glance>> glance() {
    return glance;
  }

  /**
   * Takes the next state of the line.
   *
   * @param official whether one is on duty; else nothing is taken
   */
  public void take(LinePage next, boolean official) {
    page = next;
    onDuty = official;
    show();
  }

  /** Says what is looked at from now on. */
  public void look(Looking now) {
    looking = now;
    show();
  }

  private void show() {
    LinePage now = page;
    if (now == null || looking == Looking.LINE) {
      remember(now);
      glance.set(Optional.empty());
      return;
    }
    String news = news(now);
    boolean worth = (looking == Looking.ELSEWHERE && onDuty) || !news.isBlank();
    glance.set(worth ? Optional.of(of(now, news)) : Optional.empty());
  }

  private void remember(@Nullable LinePage now) {
    Optional<CheckPage> check = now == null ? Optional.empty() : now.check();
    seenCheck = check.map(CheckPage::number).orElse(0L);
    seenShots = check.map(c -> c.shots().size()).orElse(0);
    seenRefused = now == null ? Optional.empty() : now.refused();
  }

  private String news(LinePage now) {
    int before = now.check().filter(c -> c.number() == seenCheck).isPresent() ? seenShots : 0;
    int taken = now.check().map(c -> c.shots().size()).orElse(0) - before;
    boolean refused = now.refused().isPresent() && !now.refused().equals(seenRefused);
    if (taken > 0) {
      return texts.of(refused ? "glance.taken.refused" : "glance.taken", taken);
    }
    return refused ? texts.of("glance.refused") : "";
  }

  private Glance of(LinePage now, String news) {
    if (now.trouble().isPresent()) {
      return new Glance(Sign.OVER, TroubleWords.of(now.trouble().get(), texts).what(), news);
    }
    if (now.stop().isPresent()) {
      return new Glance(Sign.STOPPED, texts.of("glance.stopped", now.stop().get()), news);
    }
    return now.check()
        .map(check -> new Glance(check.sign(), words(check), news))
        .orElseGet(
            () ->
                new Glance(
                    now.proving().held() ? Sign.HELD : Sign.RUNNING,
                    texts.of(now.proving().held() ? "glance.held" : "glance.nobody"),
                    news));
  }

  private String words(CheckPage check) {
    String last =
        check.shots().stream()
            .reduce((first, second) -> second)
            .map(shot -> texts.of("glance.shot", shot.number(), shot.speed()))
            .orElseGet(() -> texts.of("glance.no-shot"));
    return texts.of("glance.check", check.bib(), check.name(), check.word(), last);
  }
}
