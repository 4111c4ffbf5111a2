package lanewarden.written;

import lanewarden.quantity.Sentence;

/** The sentences that tell what is wrong in a file of any kind. */
public enum FileTold implements Sentence.Form {
  NOTHING("nothing"),
  /** The known word that was probably meant. */
  NEAR("did you mean {0}?"),
  NEAR_TEXT("did you mean \"{0}\"?"),
  BYTES_AT_MOST("at most {0} bytes"),
  BYTES("{0} bytes"),
  CUT_DOWN("check that this is the right file, and cut it down"),
  UTF_8("text in UTF-8"),
  NOT_UTF_8("byte {0}, which is not UTF-8 here"),
  SAVE_UTF_8("save the file again with the encoding UTF-8");

  private final String english;

  FileTold(String english) {
    this.english = english;
  }

  @Override
  public String english() {
    return english;
  }
}
