package lanewarden.ledger;

import java.util.Locale;

/**
 * One thing that verification found wrong.
 *
 * @param sequence the entry it concerns, by its row number; 0 when it concerns the file as a whole
 * @param kind which promise is broken
 * @param words what is wrong, in plain words, with the entry's number
 */
public record LedgerFault(long sequence, Kind kind, String words) {

  /** The promises a ledger makes, each as the fault that breaks it. */
  public enum Kind {
    /** The file holds no entry at all. */
    NO_ENTRY,
    /** The table's guards (triggers) or other parts of the schema are not as they were made. */
    GUARDS_CHANGED,
    /** A row that the database cannot read or that lacks a value, or a line of another form. */
    UNREADABLE_ROW,
    /** The stored bytes are not a compact JWS of this format. */
    BAD_JWS,
    /** The payload is not the JSON of this format. */
    BAD_PAYLOAD,
    /** The signature does not fit the bytes. */
    BAD_SIGNATURE,
    /** Signed with a key that no sound enrolment names. */
    UNKNOWN_SIGNER,
    /** Signed with a key that was enrolled only later. */
    SIGNED_BEFORE_ENROLMENT,
    /** Signed with a key that the organizer had suspended. */
    SIGNED_WHILE_SUSPENDED,
    /** The first entry does not open a ledger, or names another key than the one that signed it. */
    BAD_OPENING,
    /** An enrolment that the organizer did not sign, or that does not name a key. */
    BAD_ENROLMENT,
    /** A suspension that the organizer did not sign, or of nobody who may sign. */
    BAD_SUSPENSION,
    /** The hash of the entry before does not fit. */
    BROKEN_LINK,
    /** Entries are missing. */
    GAP,
    /** A sequence stands twice, or goes back. */
    REPEATED,
    /** The entry belongs to another station's ledger. */
    WRONG_STATION,
    /** The row's own columns disagree with the signed bytes. */
    COLUMNS_DISAGREE,
    /** An exported line says something else beside the signed bytes. */
    LINE_DISAGREES,
    /** A printed head lies beyond the last entry: the tail was cut off. */
    CUT_TAIL,
    /** A printed head names another hash than the entry has. */
    OTHER_HEAD;

    /** The kind in English words, the same for every fault of it. */
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
  }

  /** The words alone: they carry the entry's number. */
  @Override
  public String toString() {
    return words;
  }
}
