/**
 * Claims files: which facts somebody states of an engine or a vehicle, how sure they are, and what is taken as certain.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.claims.file;
