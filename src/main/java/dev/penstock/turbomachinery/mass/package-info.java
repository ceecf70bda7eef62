/**
 * Mass of an engine from its parts, with scatter, beside relations fitted to whole engines. In:
 * {@link dev.penstock.turbomachinery.mass.EngineParts}; out: {@link dev.penstock.turbomachinery.mass.EngineMass}. Entry class:
 * {@link dev.penstock.turbomachinery.mass.EngineMassModel}.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.turbomachinery.mass;
