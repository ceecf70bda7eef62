/** What a vehicle is asked to be: {@link VehiclePlan} of stages, boosters and mission. */
package dev.penstock.vehicle.plan;
