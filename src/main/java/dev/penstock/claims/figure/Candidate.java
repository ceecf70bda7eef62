package dev.penstock.claims.figure;

import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.vehicle.stage.VehicleSizing;
import java.util.Optional;

/**
 * An engine that may be the one that claims speak of, with the vehicle that it drives.
 *
 * @param balance the engine
 * @param vehicle the vehicle, if claims speak of one
 * @param body the body that the vehicle must fit into, if it is known
 */
public record Candidate(EngineBalance balance, Optional<VehicleSizing> vehicle, Optional<Body> body) {}
