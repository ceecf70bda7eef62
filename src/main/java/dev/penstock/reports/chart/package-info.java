/** Charts as SVG in a light and a dark theme. */
package dev.penstock.reports.chart;
