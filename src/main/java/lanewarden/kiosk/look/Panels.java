package lanewarden.kiosk.look;

/** Where panels open, one at a time, over the screen. */
public interface Panels {

  /** Opens a panel, in place of one that is open. */
  void open(Page panel);

  /** Closes the panel that is open, if one is; the screen has the keys again. */
  void close();
}
