/**
 * From bytes on the wire to a framed line, to a sentence, to a reading: serial port, replay,
 * simulator and typed entry.
 *
 * <p>Front door: {@link lanewarden.chronograph.Instrument}. Words it owns: frame, sentence,
 * sentence profile, reading, refusal, link. May import: quantity, written, metrology.
 */
@NullMarked
package lanewarden.chronograph;

import org.jspecify.annotations.NullMarked;
