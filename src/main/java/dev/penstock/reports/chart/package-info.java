/**
 * Charts as SVG in a light and a dark theme.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.reports.chart;
