/**
 * Reading TOML files: values with units, allowed ranges, names checked, and every problem of a file reported together
 * with file, line, key, value and what is allowed. The only package that touches the TOML library.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.input;
