package lanewarden.station;

import java.util.Base64;
import lanewarden.chronograph.RawBytes;

/** The bytes of a line as facts keep them, for people. */
public final class LineBytes {

  private LineBytes() {}

  /**
   * The bytes in printable ASCII, as captures write them.
   *
   * @param base64 the {@code raw} of a fact
   */
  public static String escaped(String base64) {
    return RawBytes.of(Base64.getDecoder().decode(base64)).escaped();
  }
}
