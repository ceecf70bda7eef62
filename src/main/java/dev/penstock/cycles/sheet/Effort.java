package dev.penstock.cycles.sheet;

/**
 * What a balance cost.
 *
 * @param rounds rounds between cycle, chamber and jacket
 * @param solverSteps steps of the system solver over all rounds
 * @param evaluations evaluations of the arrangement
 * @param jacketSolutions jackets marched through
 */
public record Effort(int rounds, int solverSteps, int evaluations, int jacketSolutions) {}
