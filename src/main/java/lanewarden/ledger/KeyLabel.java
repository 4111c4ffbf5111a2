package lanewarden.ledger;

/**
 * What a key file says on its outside: whose key it is, and which.
 *
 * @param owner the name given when it was sealed
 * @param thumbprint RFC 7638 thumbprint of the key inside
 */
public record KeyLabel(String owner, String thumbprint) {}
