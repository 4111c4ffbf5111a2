package lanewarden.ledger;

import org.jspecify.annotations.Nullable;

/**
 * What a reader met: a row of the table, a stretch that the database cannot read, or a line of an
 * exported file.
 */
sealed interface Row {

  /** The row's number, or the first of a stretch. */
  long sequence();

  /** A row's columns; a damaged row may lack some. */
  @SuppressWarnings(
      "ArrayRecordComponent") // carried from the reader to the examiner, never compared
  record Stored(
      long sequence, byte @Nullable [] previous, byte @Nullable [] hash, byte @Nullable [] jws)
      implements Row {}

  /**
   * A line of an exported file.
   *
   * @param number of the line, from 1
   * @param jws the signed bytes in it; missing where it has another form
   * @param agrees whether the line is exactly the one of the entry signed in it
   */
  @SuppressWarnings(
      "ArrayRecordComponent") // carried from the reader to the examiner, never compared
  record Line(long sequence, long number, byte @Nullable [] jws, boolean agrees) implements Row {}

  /** A stretch of rows, both ends included, and the database's words. */
  record Unreadable(long sequence, long last, String why) implements Row {}
}
