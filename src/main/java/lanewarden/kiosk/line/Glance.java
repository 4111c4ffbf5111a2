package lanewarden.kiosk.line;

import lanewarden.kiosk.look.Sign;

/**
 * What goes on at the line in one sentence, for somebody who looks at something else.
 *
 * @param sign shape of the outcome, or of a check that runs
 * @param words who is there, and what was read last
 * @param news what came in since the line was looked at; blank for nothing
 */
public record Glance(Sign sign, String words, String news) {}
