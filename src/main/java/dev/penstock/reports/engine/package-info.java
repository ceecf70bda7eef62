/**
 * Answers about one engine as JSON, text, charts and sections.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.reports.engine;
