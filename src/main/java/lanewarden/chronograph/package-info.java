/**
 * From bytes on the wire to a framed line, to a sentence, to a reading: serial port, replay,
 * simulator and typed entry.
 *
 * <p>Front door: {@link lanewarden.chronograph.Instrument}, of which {@link
 * lanewarden.chronograph.SerialInstrument}, {@link lanewarden.chronograph.ReplayInstrument} and
 * {@link lanewarden.chronograph.SimulatedInstrument} are the kinds, and {@link
 * lanewarden.chronograph.SeriesInstrument} makes one of two that every arrow passes; {@link
 * lanewarden.chronograph.TypedEntry} for the official's keyboard; {@link
 * lanewarden.chronograph.SentenceProfile} and {@link lanewarden.chronograph.Capture} for files;
 * {@link lanewarden.chronograph.ProfileTrial} for a profile that does not fit yet. Every byte takes
 * the way of {@link lanewarden.chronograph.Decoder}. Words it owns: frame, sentence, sentence
 * profile, gate times, reading, companion, refusal, link, capture, port trouble, trial, finding.
 * May import: quantity, written, metrology.
 *
 * <p>A line that says when the arrow passed the gates instead of a speed has its speed computed
 * here, without a rounding before the last decimal.
 *
 * <p>Threads: values are immutable; each instrument has one thread, which owns its decoder and
 * calls its sink. The formats are described in {@code src/site/markdown/serial-format.md}.
 */
@NullMarked
package lanewarden.chronograph;

import org.jspecify.annotations.NullMarked;
