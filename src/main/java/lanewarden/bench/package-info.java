/**
 * The archer's side: what a set-up does, what would bring it inside, and which set-up to bring.
 *
 * <p>Nothing here is a verdict, and no verdict or finding rests on it: it says what is likely, as
 * an interval, and never without its cautions. Front doors: {@link lanewarden.bench.Advice} for an
 * archer who is over, {@link lanewarden.bench.Brought} and its {@link lanewarden.bench.Prospect} in
 * each division before the event, {@link lanewarden.bench.Practice} and {@link
 * lanewarden.bench.Comparison} for set-ups side by side. Words it owns: advice, caution, prospect,
 * scatter, practice, series, showing, comparison. May import: quantity, written, metrology, bow,
 * rules.
 */
@NullMarked
package lanewarden.bench;

import org.jspecify.annotations.NullMarked;
