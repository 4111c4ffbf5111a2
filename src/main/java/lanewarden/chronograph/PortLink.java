package lanewarden.chronograph;

import com.fazecast.jSerialComm.SerialPort;
import com.fazecast.jSerialComm.SerialPortInvalidPortException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * An open serial port. The only class that touches the serial library.
 *
 * <p>The port is read by the thread that opened it and closed by the same, so that no callback of
 * the library can run on after the port is gone. For one thread.
 */
final class PortLink implements AutoCloseable {
  /** How long a read waits for the first byte; the library counts in tenths of a second. */
  private static final int WAIT_MILLIS = 100;

  // errno of Linux and macOS; on Windows 5 (access denied) and 32 (sharing) mean in use
  private static final Set<Integer> DENIED = Set.of(1, 13);
  private static final Set<Integer> BUSY = Set.of(11, 16, 35);
  private static final Set<Integer> BUSY_ON_WINDOWS = Set.of(5, 32);

  private final String name;
  private final SerialPort port;
  private final byte[] buffer = new byte[4096];

  private PortLink(String name, SerialPort port) {
    this.name = name;
    this.port = port;
  }

  /** The serial ports that are here now, by their paths. */
  static List<PortHere> ports() {
    return Arrays.stream(SerialPort.getCommPorts())
        .map(port -> new PortHere(port.getSystemPortPath(), serial(port)))
        .sorted(Comparator.comparing(PortHere::path))
        .toList();
  }

  private static Optional<String> serial(SerialPort port) {
    String serial = port.getSerialNumber();
    boolean told = serial != null && !serial.isBlank() && !"Unknown".equals(serial);
    return told ? Optional.of(serial) : Optional.empty();
  }

  /**
   * Opens a port, by its path or system name, for this program alone.
   *
   * @throws PortFault if it cannot be opened
   */
  static PortLink open(String name, PortSettings settings) throws PortFault {
    SerialPort port;
    try {
      // Looked up anew each time: after replugging, the same path may be another device
      port = SerialPort.getCommPort(name);
    } catch (SerialPortInvalidPortException e) {
      throw new PortFault(PortTrouble.missing(name));
    }
    port.setComPortParameters(
        settings.baud(), settings.dataBits(), stopBits(settings), parity(settings));
    port.setFlowControl(flow(settings));
    port.setComPortTimeouts(SerialPort.TIMEOUT_READ_SEMI_BLOCKING, WAIT_MILLIS, 0);
    if (!port.openPort()) {
      throw new PortFault(trouble(name, settings, port.getLastErrorCode()));
    }
    return new PortLink(name, port);
  }

  /**
   * Waits a moment for bytes.
   *
   * @return what came, empty if nothing did
   * @throws PortFault if the port is gone
   */
  RawBytes read() throws PortFault {
    int count = port.readBytes(buffer, buffer.length);
    if (count < 0) {
      throw new PortFault(PortTrouble.vanished(name));
    }
    return RawBytes.of(Arrays.copyOf(buffer, count));
  }

  @Override
  public void close() {
    port.closePort();
  }

  private static PortTrouble trouble(String name, PortSettings settings, int code) {
    boolean windows = System.getProperty("os.name", "").startsWith("Windows");
    if (windows ? BUSY_ON_WINDOWS.contains(code) : BUSY.contains(code)) {
      return PortTrouble.busy(name);
    }
    if (!windows && DENIED.contains(code)) {
      return PortTrouble.denied(name);
    }
    if (name.contains("/") && !Files.exists(Path.of(name))) {
      return PortTrouble.missing(name);
    }
    if (code == 2) {
      // Within one program the library refuses a second opening before it asks the system
      return windows ? PortTrouble.missing(name) : PortTrouble.busy(name);
    }
    return PortTrouble.unusable(name, settings, code);
  }

  private static int stopBits(PortSettings settings) {
    return settings.stopBits() == 2 ? SerialPort.TWO_STOP_BITS : SerialPort.ONE_STOP_BIT;
  }

  private static int parity(PortSettings settings) {
    return switch (settings.parity()) {
      case NONE -> SerialPort.NO_PARITY;
      case ODD -> SerialPort.ODD_PARITY;
      case EVEN -> SerialPort.EVEN_PARITY;
      case MARK -> SerialPort.MARK_PARITY;
      case SPACE -> SerialPort.SPACE_PARITY;
    };
  }

  private static int flow(PortSettings settings) {
    return switch (settings.flow()) {
      case NONE -> SerialPort.FLOW_CONTROL_DISABLED;
      case RTS_CTS -> SerialPort.FLOW_CONTROL_RTS_ENABLED | SerialPort.FLOW_CONTROL_CTS_ENABLED;
      case XON_XOFF ->
          SerialPort.FLOW_CONTROL_XONXOFF_IN_ENABLED | SerialPort.FLOW_CONTROL_XONXOFF_OUT_ENABLED;
    };
  }
}
