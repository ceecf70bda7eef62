/** Mass of a stage as a function of what it carries, and the best split of a vehicle into stages. */
package dev.penstock.vehicle.stage;
