package lanewarden.kiosk;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Supplier;
import lanewarden.kiosk.desk.Desk;
import lanewarden.kiosk.form.Chooser;
import lanewarden.kiosk.form.OrganizersKey;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.rulebook.Adoption;
import lanewarden.kiosk.rulebook.RuleBookScreen;
import lanewarden.station.RuleDraft;
import lanewarden.station.StationException;
import lanewarden.station.Trouble;

/** The way into the rule studio of an event and out of it again; on the screen's thread. */
final class StudioDoor {
  private final Post post;
  private final Shell shell;
  private final Desk desk;
  private final Texts texts;
  private final Supplier<Optional<Chooser>> chooser;
  private final Supplier<KeyButton> theme;
  private final Front.Threads threads;
  private final BooleanSupplier free;
  private final Runnable home;
  private final Consumer<Trouble> refuse;
  private Optional<RuleBookScreen> opened = Optional.empty();

  /**
   * @param post of the event whose rule book it is
   * @param chooser with which files are chosen, if there is one at the time
   * @param theme makes one more button that turns through the themes
   * @param free whether nobody is on duty: else the line has the screen
   * @param home where the way out leads
   * @param refuse takes what kept the studio from opening
   */
  StudioDoor(
      Post post,
      Shell shell,
      Desk desk,
      Texts texts,
      Supplier<Optional<Chooser>> chooser,
      Supplier<KeyButton> theme,
      Front.Threads threads,
      BooleanSupplier free,
      Runnable home,
      Consumer<Trouble> refuse) {
    this.post = post;
    this.shell = shell;
    this.desk = desk;
    this.texts = texts;
    this.chooser = chooser;
    this.theme = theme;
    this.threads = threads;
    this.free = free;
    this.home = home;
    this.refuse = refuse;
  }

  /** Opens the event's rule book off the screen's thread, then the studio on it. */
  void open() {
    if (opened.isPresent()) {
      return;
    }
    threads
        .studio()
        .execute(
            () -> {
              try {
                RuleDraft draft = RuleDraft.open(post.folder().ruleBookFile());
                threads.screen().execute(() -> show(draft));
              } catch (StationException | RuntimeException | Error e) {
                Trouble trouble = Trouble.of(e);
                threads.screen().execute(() -> refuse.accept(trouble));
              }
            });
  }

  /** Somebody may have signed in while the file was read: then the line has the screen. */
  private void show(RuleDraft draft) {
    if (!free.getAsBoolean() || opened.isPresent()) {
      return;
    }
    RuleBookScreen screen =
        Studio.over(
            shell,
            draft,
            texts,
            theme.get(),
            chooser,
            Optional.of(adoption(draft.file())),
            this::close,
            new Studio.Threads(
                threads.clock(), threads.studio(), threads.studio(), threads.screen()));
    opened = Optional.of(screen);
    shell.show(screen);
  }

  private Adoption adoption(Path ruleBook) {
    return new Adoption() {
      @Override
      public Path ruleBook() {
        return ruleBook;
      }

      @Override
      public OrganizersKey key() {
        return post.key();
      }

      @Override
      public void inForce(Consumer<String> sha256, Consumer<Trouble> missed) {
        desk.ask(station -> station.proceedings().rulesInForce().sha256(), sha256, missed);
      }

      @Override
      public void adopt(
          OrganizersKey.Signature organizer,
          String reason,
          Consumer<Optional<Trouble>> done,
          Consumer<Trouble> missed) {
        desk.ask(
            station ->
                station
                    .proceedings()
                    .adoptRuleBook(organizer.key(), organizer.passphrase(), reason),
            done,
            missed);
      }
    };
  }

  private void close() {
    opened = Optional.empty();
    home.run();
  }

  /**
   * Whether the studio may be left for something else, as it then is; if not, whoever works in it
   * is asked.
   */
  boolean mayClose() {
    if (opened.filter(RuleBookScreen::isChanged).isPresent()) {
      opened.get().askLeave();
      return false;
    }
    opened = Optional.empty();
    return true;
  }
}
