package lanewarden.written;

import lanewarden.quantity.Sentence;

/** The sentences that tell what is wrong in a table. */
public enum CsvTold implements Sentence.Form {
  COMMAS("commas between the columns"),
  SEPARATE("separate with commas"),
  COLUMN("a column {0}"),
  WITHOUT("a header without it"),
  ADD_COLUMN("add {0} to the header and a value to every line"),
  ONE_OF("one of the columns {0}"),
  COLUMN_OUT("take the column out"),
  ONCE("each column once"),
  SECOND_OUT("take the second one out"),
  QUOTES_CLOSED("a quoted field to be closed, then a comma or the end of the line"),
  CLOSE_QUOTES("close the quotes, and double every quote that stands inside them"),
  NO_QUOTE("no double quote inside a field without quotes around it"),
  QUOTES_AROUND("put quotes around the whole field and double the one inside, or take it out"),
  /** A name, or whatever else is written in words. */
  WORDS("{0} of 1 to {1} characters on one line"),
  WRITE("write {0}"),
  WITHOUT_SPACES("{0} without spaces around it"),
  SPACES_OUT("take the spaces out"),
  MORE_THAN_ZERO("{0}, more than zero"),
  WRITE_MEASURED("write what was measured"),
  WRITE_DECLARED("write what was declared, or leave it empty"),
  OR_EMPTY("{0}, or leave it empty"),
  AT_LEAST("{0}, at least {1}"),
  OTHER_COLUMN_OR_MEASURED(
      "look whether it belongs to another column, or was measured in another unit"),
  AT_MOST("{0}, at most {1}"),
  OTHER_COLUMN_OR_UNIT("look whether it belongs to another column or unit"),
  HEADER_AND_ROWS("a header line, then a line for each row"),
  ONE_LINE("one line only"),
  SAVE_WHOLE("save the whole table, with the names of its columns above it"),
  FIELDS("{0} fields, as in the header"),
  FILL_UP("fill the line up, or put quotes around a field that holds a separator"),
  MEND_COMMAS("add or remove commas; put quotes around a field that holds a comma"),
  HEADER_LIKE("a header line such as {0}"),
  HEADER_ONLY("a header only");

  private final String english;

  CsvTold(String english) {
    this.english = english;
  }

  @Override
  public String english() {
    return english;
  }
}
