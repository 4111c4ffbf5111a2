package lanewarden.kiosk.line;

/**
 * A competitor whom the typed text may mean.
 *
 * @param division the code
 */
public record Match(String bib, String name, String division) {}
