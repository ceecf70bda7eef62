/** What a vehicle needs to know of its engine: thrust and flow at any ambient pressure, mass, and what is in the tanks. */
package dev.penstock.vehicle.engine;
