/** Answers about one engine as JSON, text, charts and sections. */
package dev.penstock.reports.engine;
