/**
 * States from the property library CoolProp. {@link CoolPropLibrary} finds it, {@link CoolPropFluid} is a fluid
 * behind it. The only package that touches native code.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.fluids.coolprop;
