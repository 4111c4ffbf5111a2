package lanewarden.chronograph;

/** How the link to an instrument stands. */
public enum LinkState {
  /** Open: what the instrument sends is heard. */
  UP("up"),
  /** Not there, or gone: being tried again by itself. */
  LOST("lost"),
  /** Ended on purpose: nothing more will be heard. */
  CLOSED("closed");

  private final String word;

  LinkState(String word) {
    this.word = word;
  }

  /** The word for people. */
  public String word() {
    return word;
  }
}
