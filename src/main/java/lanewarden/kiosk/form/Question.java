package lanewarden.kiosk.form;

import java.util.List;

/**
 * One question of a form.
 *
 * @param name by which its answer is found
 * @param label what is asked, in words
 * @param kind how it is answered
 * @param options what can be chosen; of words, what can be picked by its number instead of written
 * @param optional whether it may stay without an answer
 * @param place whether the words say where something is; where a file or folder is, can be chosen
 *     too
 * @param usual the place of the option that is chosen where nobody chose; negative for none
 */
public record Question(
    String name,
    String label,
    Kind kind,
    List<String> options,
    boolean optional,
    Place place,
    int usual) {
  private static final int NONE = -1;

  /** What words are the place of. */
  public enum Place {
    /** Of nothing. */
    NONE,
    /** Of a serial port. */
    PORT,
    /** Of a file that is there. */
    FILE,
    /** Of a folder that is there. */
    FOLDER,
    /** Of a file or folder to be made. */
    NEW
  }

  /** How a question is answered. */
  public enum Kind {
    /** In words. */
    WORDS,
    /** With words that nobody may read. */
    SECRET,
    /** With one of the options. */
    CHOICE
  }

  /** Copies the options. */
  public Question {
    options = List.copyOf(options);
  }

  /** One that is answered in words, with some to pick. */
  public static Question words(String name, String label, List<String> picks) {
    return new Question(name, label, Kind.WORDS, picks, false, Place.NONE, NONE);
  }

  /** One that is answered with a serial port, with those that are here to pick. */
  public static Question port(String name, String label, List<String> here) {
    return words(name, label, here).place(Place.PORT);
  }

  /** One that is answered with a passphrase. */
  public static Question secret(String name, String label) {
    return new Question(name, label, Kind.SECRET, List.of(), false, Place.NONE, NONE);
  }

  /** One that is answered with one of the options; where there is only one, with that. */
  public static Question choice(String name, String label, List<String> options) {
    int only = options.size() == 1 ? 0 : NONE;
    return new Question(name, label, Kind.CHOICE, options, false, Place.NONE, only);
  }

  /** The same, with an option that is chosen until another one is. */
  public Question usually(int option) {
    return new Question(name, label, kind, options, optional, place, option);
  }

  /** The same, which may stay without an answer. */
  public Question mayStayOpen() {
    return new Question(name, label, kind, options, true, place, usual);
  }

  /** The same, whose words are a place. */
  public Question place(Place of) {
    return new Question(name, label, kind, options, optional, of, usual);
  }
}
