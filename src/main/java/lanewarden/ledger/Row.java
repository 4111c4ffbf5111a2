package lanewarden.ledger;

import org.jspecify.annotations.Nullable;

/** What a reader of the table met: a row, or a stretch that the database cannot read. */
sealed interface Row {

  /** The row's number, or the first of a stretch. */
  long sequence();

  /** A row's columns; a damaged row may lack some. */
  @SuppressWarnings(
      "ArrayRecordComponent") // carried from the reader to the examiner, never compared
  record Stored(
      long sequence, byte @Nullable [] previous, byte @Nullable [] hash, byte @Nullable [] jws)
      implements Row {}

  /** A stretch of rows, both ends included, and the database's words. */
  record Unreadable(long sequence, long last, String why) implements Row {}
}
