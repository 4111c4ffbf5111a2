package lanewarden.chronograph;

import java.util.Optional;

/**
 * A serial port that is here now.
 *
 * @param path its path or system name
 * @param serial the serial number of its device, if the device tells one
 */
record PortHere(String path, Optional<String> serial) {}
