package lanewarden.written;

import lanewarden.quantity.Sentence;

/** The sentences that tell what is wrong in a TOML file. */
public enum TomlTold implements Sentence.Form {
  /** What rules the key out. */
  LEFT_OUT("left out: {0}"),
  TAKE_OUT("take it out"),
  TEXT("a text"),
  TEXT_QUOTED("a text in double quotes"),
  WRITE_TEXT("write {0} = \"…\""),
  WHOLE("a whole number from {0} to {1}"),
  WITHOUT_QUOTES("write the number without quotes"),
  NUMBER_LIKE("write a number such as {0} = {1}"),
  TRUE_OR_FALSE("true or false"),
  WRITE_TRUE("write {0} = true, without quotes"),
  DATE("a date such as 2026-03-01"),
  DATE_UNQUOTED("write it without quotes"),
  DATE_LIKE("write year, month and day without quotes, such as {0} = 2026-03-01"),
  TEXTS("a list of texts"),
  WRITE_TEXTS("write {0} = [\"…\", \"…\"]"),
  ONE_OR_MORE("a list of one item or more"),
  EMPTY_LIST("an empty list"),
  WRITE_ITEMS("write what belongs in it, or take the line out"),
  ITEMS_AT_MOST("a list of at most {0} items"),
  ITEMS("{0} items"),
  KEEP_NEEDED("keep those that are needed"),
  BLANK_ITEM("write it out, or take it out of the list"),
  QUOTED("write it in double quotes"),
  ONE_OF("one of {0}"),
  TAKE_ONE("take one of them"),
  WORD_QUOTED("write the word in double quotes"),
  TABLE("a table"),
  LIST("a list"),
  ADD_SECTION("add a section [{0}]"),
  OWN_LINE("write [{0}] on a line of its own"),
  TABLES("tables"),
  OWN_LINES("write [[{0}]] on a line of its own"),
  KNOWN("one of the {0} keys known here"),
  UNKNOWN("the unknown key {0}"),
  LINE_OUT("take the line out"),
  LINE_OUT_OR("take the line out, or write one of {0}"),
  ADD_KEY("add {0} = … to this section"),
  TOML("TOML"),
  NESTED("lists and tables nested a few deep"),
  TOO_DEEP("brackets nested so deep that they cannot be read"),
  LIST_LIKE("check that this is the right file; a list is written as key = [\"…\", \"…\"]"),
  NO_MONTH("a month that is not one of 01 to 12"),
  NO_DAY("a day that no month has"),
  NO_SUCH_DAY("{0}, a day that there is not"),
  KEEP_ONE("keep one of the two; a further table of a list is written in [[double brackets]]"),
  SMALLER("write a smaller number"),
  REAL_DATE("write a date that exists, as year-month-day such as 2026-03-01"),
  CHARACTER("write the character itself; for a backslash, write two"),
  CONTROL("take the control character out, or save the file again as plain text in UTF-8"),
  CLOSE_TEXT("close the text with the quote it begins with, on the same line"),
  COMMA_BETWEEN("put a comma between items, and close the list with ]"),
  COMMA_OUT("take the comma out; decimals are written with a point"),
  KEY_VALUE("write it as key = value; text stands in double quotes");

  private final String english;

  TomlTold(String english) {
    this.english = english;
  }

  @Override
  public String english() {
    return english;
  }
}
