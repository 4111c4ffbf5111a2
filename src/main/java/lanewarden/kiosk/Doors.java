package lanewarden.kiosk;

import java.util.List;
import javafx.beans.property.ObjectProperty;
import javafx.scene.input.KeyCode;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.look.Theme;

/** What leads from one screen to another: the buttons, and the list of all ways. */
final class Doors {

  /** Where they lead, as things stand; on the screen's thread. */
  interface Rooms {
    /** To the line while an official is on duty, else to signing in. */
    void goHome();

    /** To the protests. */
    void openProtests();

    /** To the officials. */
    void openPeople();

    /** To the records: reports, verification, exports. */
    void openRecords();

    /** To what awaits a set-up. */
    void openProspects();

    /** To the set-ups that are shot beside each other. */
    void openSetUps();

    /** To a check-up of the station. */
    void openCheckUp();

    /** To the instrument. */
    void openInstrument();

    /** Into the rule studio. */
    void openRules();

    /** To the choice of the language. */
    void openLanguages();

    /** To text size and sounds. */
    void openComfort();

    /** Fills the screen whole; out of that again only with a passphrase. */
    void turnFull();

    /** Whether the screen is filled whole. */
    boolean isFull();

    /** Whether something is being made whose end somebody wants to see. */
    boolean isWriting();

    /** Shows or hides the board. */
    void turnBoard();

    /** Closes everything. */
    void leave();

    /** Whether an official is on duty. */
    boolean isOnDuty();

    /** Whether nothing would be lost by going; if not, whoever works there is asked. */
    boolean mayClose();
  }

  private final Rooms rooms;
  private final Texts texts;
  private final ObjectProperty<Theme> theme;
  private final Ways ways;

  Doors(Rooms rooms, Shell shell, Texts texts, ObjectProperty<Theme> theme) {
    this.rooms = rooms;
    this.texts = texts;
    this.theme = theme;
    ways =
        new Ways(
            shell,
            texts,
            new Ways.Wording(texts.of("ways.title"), texts.of("ways.words")),
            this::all);
  }

  /** Opens the list of all ways. */
  void open() {
    ways.open();
  }

  /** Where one can go from here; from the studio only through the question what to save. */
  private List<Ways.Way> all() {
    boolean onDuty = rooms.isOnDuty();
    String signOut = texts.of("way.sign-out-first");
    return List.of(
        ways.to(onDuty ? "way.line" : "way.sign-in", KeyCode.HOME, leaving(rooms::goHome)),
        ways.to("way.protests", KeyCode.F1, leaving(rooms::openProtests)),
        ways.to("way.people", KeyCode.F3, leaving(rooms::openPeople)),
        ways.to("way.records", KeyCode.F8, leaving(rooms::openRecords)),
        ways.to("way.prospects", KeyCode.F5, leaving(rooms::openProspects)),
        ways.to("way.setups", KeyCode.F9, leaving(rooms::openSetUps)),
        ways.to("way.check-up", KeyCode.END, leaving(rooms::openCheckUp)),
        ways.to("way.instrument", KeyCode.DELETE, rooms::openInstrument),
        ways.to("way.board", KeyCode.PAGE_UP, rooms::turnBoard),
        ways.to("way.theme", KeyCode.F7, () -> theme.set(theme.get().next())),
        rooms.isWriting()
            ? ways.barred("way.language", KeyCode.F4, texts.of("way.language-busy"))
            : ways.to("way.language", KeyCode.F4, leaving(rooms::openLanguages)),
        ways.to("way.comfort", KeyCode.F2, leaving(rooms::openComfort)),
        ways.to(rooms.isFull() ? "way.windowed" : "way.full", KeyCode.F11, rooms::turnFull),
        onDuty
            ? ways.barred("way.rules", KeyCode.F10, signOut)
            : ways.to("way.rules", KeyCode.F10, rooms::openRules),
        onDuty
            ? ways.barred("way.leave", KeyCode.F12, signOut)
            : ways.to("way.leave", KeyCode.F12, leaving(rooms::leave)));
  }

  private Runnable leaving(Runnable there) {
    return () -> {
      if (rooms.mayClose()) {
        there.run();
      }
    };
  }

  KeyButton goTo() {
    return button("act.go-to", KeyCode.INSERT, this::open);
  }

  KeyButton protests() {
    return button("act.protests", KeyCode.F1, rooms::openProtests);
  }

  KeyButton people() {
    return button("act.people", KeyCode.F3, rooms::openPeople);
  }

  KeyButton records() {
    return button("act.records", KeyCode.F8, rooms::openRecords);
  }

  KeyButton rules() {
    return button("act.rules", KeyCode.F10, rooms::openRules);
  }

  KeyButton instrument() {
    return button("act.instrument", KeyCode.DELETE, rooms::openInstrument);
  }

  KeyButton theme() {
    return ThemeButton.of(theme, texts);
  }

  KeyButton leave() {
    return button("act.leave", KeyCode.F12, rooms::leave);
  }

  private KeyButton button(String text, KeyCode key, Runnable act) {
    return new KeyButton(texts.of(text), key, act);
  }
}
