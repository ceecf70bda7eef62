/**
 * What people and programs read: JSON documents, terminal tables, self-contained pages with flow diagram and charts, the same
 * on paper. In: results of the packages before this one; out: text. No model is run here: what a view works out is units,
 * shares, differences and what meets the eye (layout, interpolation between points of a chart). The folders: {@code text} and
 * {@code table} for numbers in rows, {@code chart} and {@code diagram} for drawings, {@code page} and {@code print} for what
 * carries them, and one for the answers about each of concept, engine, study and vehicle. Charts and paper are drawn here
 * alone; templates and JSON are written here and by {@code app}.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.reports;
