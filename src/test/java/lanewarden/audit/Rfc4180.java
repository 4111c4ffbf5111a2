package lanewarden.audit;

import java.util.ArrayList;
import java.util.List;

/** The grammar of RFC 4180, section 2, read strictly and by hand; anything else is an error. */
public final class Rfc4180 {
  private final String text;
  private int at;

  private Rfc4180(String text) {
    this.text = text;
  }

  /**
   * All records; each must have as many fields as the first (rule 4) and end with CRLF (rule 1).
   */
  public static List<List<String>> read(String text) {
    Rfc4180 reader = new Rfc4180(text);
    List<List<String>> records = new ArrayList<>();
    while (reader.at < text.length()) {
      List<String> record = reader.record();
      if (!records.isEmpty() && record.size() != records.get(0).size()) {
        throw new AssertionError("record " + records.size() + " has " + record.size() + " fields");
      }
      records.add(record);
    }
    return records;
  }

  private List<String> record() {
    List<String> fields = new ArrayList<>();
    fields.add(field());
    while (text.charAt(at) == ',') {
      at++;
      fields.add(field());
    }
    if (!text.startsWith("\r\n", at)) {
      throw new AssertionError("no CRLF behind " + fields);
    }
    at += 2;
    return fields;
  }

  private String field() {
    StringBuilder field = new StringBuilder();
    if (text.charAt(at) != '"') {
      while (",\"\r\n".indexOf(text.charAt(at)) < 0) {
        field.append(text.charAt(at));
        at++;
      }
      return field.toString();
    }
    at++;
    while (text.charAt(at) != '"' || text.startsWith("\"\"", at)) {
      field.append(text.charAt(at));
      at += text.charAt(at) == '"' ? 2 : 1;
    }
    at++;
    return field.toString();
  }
}
