/**
 * Constants, kinds of quantities and the reading of values with units. Everything behind this package is SI doubles;
 * units appear only where people read or write. Parsing uses the units-of-measurement API (JSR 385, Indriya).
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.quantities;
