/**
 * Puts a page on paper: the self-contained page that the views make goes in, a PDF of numbered sheets comes out, with the
 * same numbers, drawings in vector, and fonts of its own. Entry: {@link dev.penstock.reports.print.PdfReport}.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.reports.print;
