package lanewarden.ledger;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * The two entries a ledger makes of its own: the opening, which names the organizer's key, and the
 * enrolment, which names an official's.
 *
 * <p>Bodies: {@code {"organizer":JWK}} and {@code {"official":JWK,"name":"…","role":"judge"}}, the
 * role only of a judge.
 */
final class KeyNotice {
  static final String OPENED = "ledger-opened";
  static final String ENROLLED = "official-enrolled";

  private KeyNotice() {}

  /** Whether a kind is the ledger's own, and no draft's. */
  static boolean isReserved(String kind) {
    return kind.equals(OPENED) || kind.equals(ENROLLED);
  }

  static Draft opening(VerifyingKey organizer) {
    return draft(OPENED, "{\"organizer\":" + organizer.jwk() + "}");
  }

  static Draft enrolment(VerifyingKey official, String name, Role role) {
    try {
      String quoted = new ObjectMapper().writeValueAsString(name);
      String as = role == Role.OFFICIAL ? "" : ",\"role\":\"" + role.word() + "\"";
      return draft(ENROLLED, "{\"official\":" + official.jwk() + ",\"name\":" + quoted + as + "}");
    } catch (IOException impossible) {
      throw new IllegalStateException("A text could not be written as JSON.", impossible);
    }
  }

  private static Draft draft(String kind, String body) {
    return new Draft(kind, body.getBytes(StandardCharsets.UTF_8));
  }

  /** The key that an opening or an enrolment names, if the entry is one. */
  static Optional<VerifyingKey> key(Payload payload) {
    return switch (payload.kind()) {
      case OPENED -> key(payload, "organizer");
      case ENROLLED -> key(payload, "official");
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
    JsonNode name = json(payload).path("name");
    return name.isTextual() && !name.textValue().isBlank()
        ? Optional.of(name.textValue())
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
