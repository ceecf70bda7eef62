package dev.penstock.fluids.traits;

/**
 * What a propellant does to a metal, from a table {@code [metals.<metal>]} of its file.
 *
 * @param barred whether the metal must not be used, rather than used with care
 * @param reason what happens, as a sentence without its full stop
 */
public record MetalAttack(boolean barred, String reason) {}
