package lanewarden.audit.slip;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import com.google.zxing.qrcode.encoder.QRCode;
import java.awt.image.BufferedImage;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The QR library against the worked example of ISO/IEC 18004, annex I (from memory). */
class SquareCodeTest {
  /** 16 data codewords and 10 of error correction of "01234567", version 1-M. */
  private static final String ANNEX_I =
      "10 20 0C 56 61 80 EC 11 EC 11 EC 11 EC 11 EC 11 A5 24 D4 C1 ED 36 C7 87 2C 55";

  private static final int SIDE = 21;

  @Test
  void theStandardsExampleComesOutCodewordForCodeword() throws Exception {
    QRCode code = Encoder.encode("01234567", ErrorCorrectionLevel.M);
    assertEquals(SIDE, code.getMatrix().getWidth());
    assertEquals(ANNEX_I, codewords(code.getMatrix(), code.getMaskPattern()));
  }

  /** Reads a version 1 symbol as the standard lays it out: two columns a time, up and down. */
  private static String codewords(ByteMatrix symbol, int mask) {
    StringBuilder bits = new StringBuilder();
    boolean up = true;
    for (int right = SIDE - 1; right > 0; right -= 2) {
      if (right == 6) {
        right--;
      }
      for (int i = 0; i < SIDE; i++) {
        int y = up ? SIDE - 1 - i : i;
        for (int x = right; x > right - 2; x--) {
          if (!isFunction(x, y)) {
            bits.append(symbol.get(x, y) ^ (isMasked(mask, x, y) ? 1 : 0));
          }
        }
      }
      up = !up;
    }
    StringBuilder words = new StringBuilder();
    for (int i = 0; i + 8 <= bits.length(); i += 8) {
      words.append(String.format("%02X ", Integer.parseInt(bits.substring(i, i + 8), 2)));
    }
    return words.toString().strip();
  }

  /** Finders with their edges and the format around them, and the timing lines. */
  private static boolean isFunction(int x, int y) {
    return x == 6 || y == 6 || (x < 9 && y < 9) || (x < 9 && y > 12) || (x > 12 && y < 9);
  }

  private static boolean isMasked(int mask, int x, int y) {
    return switch (mask) {
      case 0 -> (x + y) % 2 == 0;
      case 1 -> y % 2 == 0;
      case 2 -> x % 3 == 0;
      case 3 -> (x + y) % 3 == 0;
      case 4 -> (y / 2 + x / 3) % 2 == 0;
      case 5 -> x * y % 2 + x * y % 3 == 0;
      case 6 -> (x * y % 2 + x * y % 3) % 2 == 0;
      default -> ((x + y) % 2 + x * y % 3) % 2 == 0;
    };
  }

  @Test
  void aPictureWithoutACodeHoldsNone() {
    assertEquals(
        Optional.empty(), SquareCode.read(new BufferedImage(90, 90, BufferedImage.TYPE_INT_RGB)));
  }
}
