/**
 * Comparisons, sweeps and uncertainty as text, JSON and pages.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.reports.study;
