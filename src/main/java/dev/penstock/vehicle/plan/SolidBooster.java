package dev.penstock.vehicle.plan;

import dev.penstock.vehicle.engine.SolidMotor;
import dev.penstock.vehicle.mass.GivenDryMass;

/**
 * What is stated of one solid booster.
 *
 * @param motor its motor with its propellant
 * @param inert what is left when that is burnt
 */
public record SolidBooster(SolidMotor motor, GivenDryMass inert) {}
