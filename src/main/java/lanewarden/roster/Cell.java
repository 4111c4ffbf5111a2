package lanewarden.roster;

/**
 * A field of a CSV file.
 *
 * @param text its content, without the quotes around it
 * @param line where it starts, from 1
 * @param column where it starts, from 1, in characters
 */
record Cell(String text, int line, int column) {}
