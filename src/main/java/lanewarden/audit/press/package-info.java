/**
 * Our own small PDF press: sets a page of HTML as a tagged PDF made to last. It knows nothing of
 * archery or ledgers.
 *
 * <p>Front doors: {@link lanewarden.audit.press.Template}, which fills a page, {@link
 * lanewarden.audit.press.Press}, which sets it, {@link lanewarden.audit.press.Drawing} for pictures
 * in it, and {@link lanewarden.audit.press.Destination}, where it goes. Words it owns: press, page,
 * sheet, block, typeface, cut, ink, drawing, scale, enclosure, imprint, progress. May import:
 * quantity; no other sub-room.
 */
@NullMarked
package lanewarden.audit.press;

import org.jspecify.annotations.NullMarked;
