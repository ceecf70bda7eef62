/**
 * Pages: tables, sections, templates, and the record of the files that a page was made from.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.reports.page;
