package lanewarden.metrology;

/**
 * How a check ends for archers of one speed.
 *
 * @param speed the true speed, m/s
 * @param firstCheck the first check alone
 * @param ending after the re-checks that the rule allows
 */
public record CurvePoint(double speed, Chances firstCheck, Chances ending) {}
