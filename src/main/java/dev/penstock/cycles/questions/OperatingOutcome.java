package dev.penstock.cycles.questions;

import java.util.Optional;

/**
 * What became of a command.
 *
 * @param command what the engine was asked to do
 * @param point the engine there, if it follows
 * @param reason why it does not; empty if it does
 */
public record OperatingOutcome(OperatingCommand command, Optional<OperatingPoint> point, String reason) {}
