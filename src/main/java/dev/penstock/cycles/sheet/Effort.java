package dev.penstock.cycles.sheet;

/**
 * What a balance cost.
 *
 * @param rounds rounds between cycle, chamber and jacket
 * @param evaluations evaluations of the arrangement
 * @param marches marches through jackets: those of the rounds, those that size channels, those of first guess and report
 * @param equilibria equilibria of chamber and burners
 */
public record Effort(int rounds, int evaluations, int marches, int equilibria) {}
