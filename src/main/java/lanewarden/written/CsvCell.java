package lanewarden.written;

/**
 * A field of a CSV file.
 *
 * @param text its content, without the quotes around it
 * @param line where it starts, from 1
 * @param column where it starts, from 1, in characters
 */
public record CsvCell(String text, int line, int column) {}
