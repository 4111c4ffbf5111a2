package lanewarden.command;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.Map;

/** One JSON object on one line, for machines. */
final class JsonLine {

  private JsonLine() {}

  /** Of text, numbers, flags, lists and maps; the members in the map's order. */
  static String of(Map<String, ?> members) {
    try {
      return new ObjectMapper().writeValueAsString(members);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("no JSON for " + members, e);
    }
  }
}
