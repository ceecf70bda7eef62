/**
 * How is a file changed so that everything else in it stays? Begin with {@link dev.penstock.app.edit.TomlEdit}: values by path
 * into a text with its comments and order.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.app.edit;
