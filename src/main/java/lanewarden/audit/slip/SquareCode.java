package lanewarden.audit.slip;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.LuminanceSource;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.WriterException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import javax.imageio.ImageIO;

/** A QR code (ISO/IEC 18004) as a picture of strokes, and back from a picture of dots. */
final class SquareCode {
  /** Clear modules around the symbol, as the standard demands. */
  private static final int QUIET = 4;

  private SquareCode() {}

  /** The symbol of a text, error correction M: a seventh of it may be soiled. */
  static ByteMatrix symbol(String text) {
    try {
      return Encoder.encode(text, ErrorCorrectionLevel.M).getMatrix();
    } catch (WriterException tooLong) {
      throw new IllegalArgumentException("No code holds so long a text: " + text, tooLong);
    }
  }

  /**
   * The symbol in SVG.
   *
   * @param millimetres how wide and high, its clear edge included
   * @param escapedAlt what it says, for whoever cannot see it; already escaped
   */
  static String svg(String text, int millimetres, String escapedAlt) {
    ByteMatrix symbol = symbol(text);
    StringBuilder path = new StringBuilder();
    for (int y = 0; y < symbol.getHeight(); y++) {
      int x = 0;
      while (x < symbol.getWidth()) {
        int from = x;
        while (x < symbol.getWidth() && symbol.get(x, y) == 1) {
          x++;
        }
        if (x > from) {
          // One stroke a run: modules drawn one by one show hair lines between them.
          path.append('M').append(from + QUIET).append(' ').append(y + QUIET);
          path.append('h').append(x - from).append("v1h-").append(x - from).append('z');
        }
        x++;
      }
    }
    int side = symbol.getWidth() + 2 * QUIET;
    return "<svg xmlns=\"http://www.w3.org/2000/svg\" style=\"width: "
        + millimetres
        + "mm; height: "
        + millimetres
        + "mm\" viewBox=\"0 0 "
        + side
        + " "
        + side
        + "\" alt=\""
        + escapedAlt
        + "\"><path fill=\"#000000\" d=\""
        + path
        + "\"/></svg>";
  }

  /**
   * The text of the code in a picture; nothing where none is found.
   *
   * @throws IOException if the file is no picture
   */
  static Optional<String> read(Path picture) throws IOException {
    BufferedImage image = ImageIO.read(picture.toFile());
    if (image == null) {
      throw new IOException(picture + " is no picture that this program can read.");
    }
    return read(image);
  }

  static Optional<String> read(BufferedImage image) {
    int width = image.getWidth();
    int height = image.getHeight();
    int[] pixels = image.getRGB(0, 0, width, height, null, 0, width);
    LuminanceSource light = new RGBLuminanceSource(width, height, pixels);
    try {
      return Optional.of(
          new QRCodeReader()
              .decode(
                  new BinaryBitmap(new HybridBinarizer(light)),
                  Map.of(DecodeHintType.TRY_HARDER, true))
              .getText());
    } catch (ReaderException none) {
      return Optional.empty();
    }
  }
}
