/**
 * Mass of an engine from its parts, with scatter, beside relations fitted to whole engines. In:
 * {@link dev.penstock.turbomachinery.mass.EngineParts}; out: {@link dev.penstock.turbomachinery.mass.EngineMass}. Entry class:
 * {@link dev.penstock.turbomachinery.mass.EngineMassModel}.
 */
package dev.penstock.turbomachinery.mass;
