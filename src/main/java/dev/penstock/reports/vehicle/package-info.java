/**
 * Vehicles, flights and trades as text, JSON and pages.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.reports.vehicle;
