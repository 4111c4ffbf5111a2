package lanewarden.ledger;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * The entries a ledger makes of its own: the opening, which names the organizer's key, and the
 * enrolment and the suspension, which name an official's.
 *
 * <p>Bodies: {@code {"organizer":JWK}}, {@code {"official":JWK,"name":"…","role":"judge"}}, the
 * role only of a judge, and {@code {"official":JWK,"reason":"…"}}.
 */
final class KeyNotice {
  static final String OPENED = "ledger-opened";
  static final String ENROLLED = "official-enrolled";
  static final String SUSPENDED = "official-suspended";

  private KeyNotice() {}

  /** Whether a kind is the ledger's own, and no draft's. */
  static boolean isReserved(String kind) {
    return kind.equals(OPENED) || kind.equals(ENROLLED) || kind.equals(SUSPENDED);
  }

  static Draft opening(VerifyingKey organizer) {
    return draft(OPENED, "{\"organizer\":" + organizer.jwk() + "}");
  }

  static Draft enrolment(VerifyingKey official, String name, Role role) {
    String as = role == Role.OFFICIAL ? "" : ",\"role\":\"" + role.word() + "\"";
    return draft(
        ENROLLED, "{\"official\":" + official.jwk() + ",\"name\":" + quoted(name) + as + "}");
  }

  static Draft suspension(VerifyingKey official, String reason) {
    return draft(
        SUSPENDED, "{\"official\":" + official.jwk() + ",\"reason\":" + quoted(reason) + "}");
  }

  private static String quoted(String text) {
    try {
      return new ObjectMapper().writeValueAsString(text);
    } catch (IOException impossible) {
      throw new IllegalStateException("A text could not be written as JSON.", impossible);
    }
  }

  private static Draft draft(String kind, String body) {
    return new Draft(kind, body.getBytes(StandardCharsets.UTF_8));
  }

  /** The key that an opening, an enrolment or a suspension names, if the entry is one. */
  static Optional<VerifyingKey> key(Payload payload) {
    return switch (payload.kind()) {
      case OPENED -> key(payload, "organizer");
      case ENROLLED, SUSPENDED -> key(payload, "official");
      default -> Optional.empty();
    };
  }

  private static Optional<VerifyingKey> key(Payload payload, String member) {
    JsonNode jwk = json(payload).path(member);
    boolean ed25519 =
        jwk.path("kty").asText().equals("OKP") && jwk.path("crv").asText().equals("Ed25519");
    return ed25519 ? VerifyingKey.ofX(jwk.path("x").asText()) : Optional.empty();
  }

  /** The official's name in an enrolment. */
  static Optional<String> name(Payload payload) {
    return text(payload, "name");
  }

  /** Why, in a suspension. */
  static Optional<String> reason(Payload payload) {
    return text(payload, "reason");
  }

  private static Optional<String> text(Payload payload, String member) {
    JsonNode text = json(payload).path(member);
    return text.isTextual() && !text.textValue().isBlank()
        ? Optional.of(text.textValue())
        : Optional.empty();
  }

  /** What an enrolment makes the official. */
  static Role role(Payload payload) {
    JsonNode role = json(payload).path("role");
    return Role.ofWord(role.isTextual() ? Optional.of(role.textValue()) : Optional.empty());
  }

  private static JsonNode json(Payload payload) {
    try {
      return new ObjectMapper().readTree(payload.body());
    } catch (IOException impossible) {
      throw new IllegalStateException("A payload's body was checked to be JSON.", impossible);
    }
  }
}
