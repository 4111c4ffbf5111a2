package lanewarden.written;

/**
 * Which key of which table of a TOML file, or which item of its list.
 *
 * @param table where the key stands or is missing
 * @param key its plain name
 * @param item from 1; 0 where the whole value is meant
 */
public record KeyPlace(TablePath table, String key, int item) {

  /** As faults name it, for example {@code division[2].bands[1]}; can be shown as it is. */
  @Override
  public String toString() {
    String above = table.toString();
    String named = (above.isEmpty() ? "" : above + ".") + key + (item == 0 ? "" : "[" + item + "]");
    return WrittenText.shown(named);
  }
}
