package lanewarden.command;

import lanewarden.station.Surroundings;

/**
 * What every command works with.
 *
 * @param terminal where it reads and writes
 * @param here time, randomness and the program's name
 * @param screens the way to the kiosk
 */
record Workplace(Terminal terminal, Surroundings here, Screens screens) {}
