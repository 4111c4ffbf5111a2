package lanewarden.quantity;

/**
 * A number with its unit, written as {@link Object#toString} has it: with a decimal point, which a
 * screen replaces by that of its language.
 */
public interface Measure {}
