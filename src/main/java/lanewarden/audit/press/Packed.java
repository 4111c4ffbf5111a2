package lanewarden.audit.press;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.zip.DeflaterOutputStream;

/**
 * Bytes that are packed while they come, as a PDF keeps them (zlib, RFC 1950): a whole ledger fits
 * into the memory of a small machine so.
 *
 * <p>Owned by one thread.
 */
public final class Packed {
  private final ByteArrayOutputStream packed = new ByteArrayOutputStream();
  private final DeflaterOutputStream into = new DeflaterOutputStream(packed);
  private long size;

  /** The packed form of a text. */
  public static Packed of(String text) {
    Packed whole = new Packed();
    whole.add(text.getBytes(StandardCharsets.UTF_8));
    return whole;
  }

  /** Packs more bytes. */
  public void add(byte[] bytes) {
    try {
      into.write(bytes);
    } catch (IOException impossible) {
      throw new UncheckedIOException("Packing into memory failed.", impossible);
    }
    size += bytes.length;
  }

  /** Packs one more character of ASCII. */
  public void add(char ascii) {
    add(new byte[] {(byte) ascii});
  }

  /** How many bytes were added. */
  long size() {
    return size;
  }

  /** Everything that was added; nothing may be added after this. */
  byte[] deflated() {
    try {
      into.finish();
    } catch (IOException impossible) {
      throw new UncheckedIOException("Packing into memory failed.", impossible);
    }
    return packed.toByteArray();
  }
}
