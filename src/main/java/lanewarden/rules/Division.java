package lanewarden.rules;

/**
 * A group of competitors under one rule.
 *
 * @param code short and unique in the rule book, as the roster names it
 * @param name as people say it
 */
public record Division(String code, String name, SpeedRule rule) {}
