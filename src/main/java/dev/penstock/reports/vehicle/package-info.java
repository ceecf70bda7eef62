/** Vehicles, flights and trades as text, JSON and pages. */
package dev.penstock.reports.vehicle;
