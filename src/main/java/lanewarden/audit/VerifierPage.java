package lanewarden.audit;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.List;
import java.util.Objects;

/**
 * The page that verifies exported entries in a browser: one file, which loads nothing and may run
 * nothing but its own script.
 *
 * <p>The script shares no code with this program. Its parts lie beside the report's templates.
 */
final class VerifierPage {
  /** Each part may use what stands in the ones before it. */
  private static final List<String> PARTS =
      List.of(
          "exact.js",
          "toml.js",
          "rule.js",
          "entries.js",
          "chain.js",
          "docket.js",
          "papers.js",
          "checks.js",
          "page.js");

  private VerifierPage() {}

  /** The whole page. Its policy names style and script by their hashes. */
  static String html() throws IOException {
    StringBuilder script = new StringBuilder("\"use strict\";\n(() => {\n");
    for (String part : PARTS) {
      script.append(part(part)).append('\n');
    }
    script.append("})();\n");
    String style = part("look.css");
    return part("page.html")
        .replace("{{style-hash}}", hash(style))
        .replace("{{script-hash}}", hash(script.toString()))
        .replace("{{style}}", style)
        .replace("{{script}}", script);
  }

  private static String part(String name) throws IOException {
    try (InputStream in =
        Objects.requireNonNull(
            VerifierPage.class.getResourceAsStream("verifier/" + name), name + " is missing")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  /** As a content security policy names an inline part (CSP Level 3, 8.4). */
  private static String hash(String inline) {
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(inline.getBytes(StandardCharsets.UTF_8));
      return "sha256-" + Base64.getEncoder().encodeToString(digest);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("this Java runtime has no SHA-256, which all must have", e);
    }
  }
}
