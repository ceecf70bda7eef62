/**
 * Options that several commands share, and what they read and write: {@link dev.penstock.app.options.OutputOption} says what is printed,
 * {@link dev.penstock.app.options.ChangeOptions} what is changed for one run, the others which files are written besides.
 *
 * <p>Internal: other programs use {@link dev.penstock.Penstock}.
 */
package dev.penstock.app.options;
