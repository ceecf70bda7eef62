/**
 * Files that are written whole or not at all: {@link dev.penstock.files.WholeFiles}. Uses {@link dev.penstock.errors} only.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.files;
