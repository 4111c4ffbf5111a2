package lanewarden.ledger;

import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.List;
import lanewarden.ledger.Finding.Signature;
import lanewarden.ledger.LedgerFault.Kind;

/**
 * Examines rows one by one: readable, well-formed, rightly signed, in agreement with themselves.
 *
 * <p>This is where the time goes, so each thread has its own examiner and they share only the keys.
 */
final class RowExaminer {
  private final MessageDigest digest = Sha256.digest();
  private final PayloadText payloads = new PayloadText();
  private final KeyDirectory keys;
  private final boolean signatures;

  RowExaminer(KeyDirectory keys) {
    this(keys, true);
  }

  private RowExaminer(KeyDirectory keys, boolean signatures) {
    this.keys = keys;
    this.signatures = signatures;
  }

  /** For rows whose signatures were checked before: by far the longest part is left out. */
  static RowExaminer ofVerified() {
    return new RowExaminer(new KeyDirectory(), false);
  }

  List<Finding> examine(List<Row> rows) {
    List<Finding> findings = new ArrayList<>(rows.size());
    for (Row row : rows) {
      findings.add(examine(row));
    }
    return findings;
  }

  Finding examine(Row row) {
    if (row instanceof Row.Stored stored) {
      return examine(stored);
    }
    return row instanceof Row.Line line
        ? examine(line)
        : new Finding(row, null, null, Signature.UNCHECKED, List.of());
  }

  private Finding examine(Row.Stored row) {
    List<LedgerFault> faults = new ArrayList<>(0);
    byte[] jws = row.jws();
    if (jws == null) {
      faults.add(fault(row, Kind.UNREADABLE_ROW, "has no content"));
      return new Finding(row, null, null, Signature.UNCHECKED, faults);
    }
    Sha256 hash = new Sha256(digest.digest(jws));
    if (!hash.matches(row.hash())) {
      faults.add(
          fault(row, Kind.COLUMNS_DISAGREE, "has bytes that do not have the hash beside them"));
    }
    return examine(row, hash, jws, faults);
  }

  private Finding examine(Row.Line row) {
    byte[] jws = row.jws();
    if (jws == null) {
      LedgerFault formless =
          new LedgerFault(
              row.sequence(),
              Kind.UNREADABLE_ROW,
              "Line " + row.number() + " does not have the form of an exported entry.");
      return new Finding(row, null, null, Signature.UNCHECKED, List.of(formless));
    }
    List<LedgerFault> faults = new ArrayList<>(0);
    Finding found = examine(row, new Sha256(digest.digest(jws)), jws, faults);
    if (!row.agrees() && found.readable().isPresent()) {
      faults.add(
          fault(
              row,
              Kind.LINE_DISAGREES,
              "is told in line " + row.number() + " with something else than was signed"));
    }
    return found;
  }

  private Finding examine(Row row, Sha256 hash, byte[] jws, List<LedgerFault> faults) {
    try {
      return examine(row, hash, Jws.read(jws), jws, faults);
    } catch (Malformed malformed) {
      faults.add(fault(row, malformed.kind(), saying(malformed)));
      return new Finding(row, hash, null, Signature.UNCHECKED, faults);
    }
  }

  private Finding examine(Row row, Sha256 hash, Jws parts, byte[] jws, List<LedgerFault> faults)
      throws Malformed {
    // A signature can be checked even where the payload makes no sense: both faults are listed.
    Payload payload;
    try {
      payload = payloads.read(parts.payload());
    } catch (Malformed malformed) {
      if (check(parts) == Signature.BAD) {
        faults.add(badSignature(row.sequence()));
      }
      throw malformed;
    }
    KeyNotice.key(payload).ifPresent(keys::note);
    if (payload.sequence() != row.sequence()) {
      faults.add(
          fault(
              row,
              Kind.COLUMNS_DISAGREE,
              "stands for an entry that says it is " + payload.sequence()));
    }
    if (row instanceof Row.Stored stored && !payload.previous().matches(stored.previous())) {
      faults.add(
          fault(row, Kind.COLUMNS_DISAGREE, "signs another previous hash than stands beside it"));
    }
    Entry entry = new Entry(jws, hash, parts.signer(), payload);
    return new Finding(row, hash, entry, check(parts), faults);
  }

  private Signature check(Jws parts) {
    return signatures ? keys.check(parts) : Signature.UNCHECKED;
  }

  static LedgerFault badSignature(long sequence) {
    return new LedgerFault(
        sequence,
        Kind.BAD_SIGNATURE,
        "Entry " + sequence + " has a signature that does not fit its bytes.");
  }

  private static String saying(Malformed malformed) {
    return malformed.kind() == Kind.BAD_JWS
        ? "is no signed entry: " + malformed.why()
        : "says nothing that this format knows: " + malformed.why();
  }

  private static LedgerFault fault(Row row, Kind kind, String words) {
    return new LedgerFault(row.sequence(), kind, "Entry " + row.sequence() + " " + words + ".");
  }
}
