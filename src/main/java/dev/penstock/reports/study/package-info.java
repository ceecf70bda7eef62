/** Comparisons, sweeps and uncertainty as text, JSON and pages. */
package dev.penstock.reports.study;
