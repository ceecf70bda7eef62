/**
 * Gas that pushes propellant out of tanks: how far does the pressure of a closed ullage fall, and what must bottles hold
 * that keep it up? Enter at {@link dev.penstock.turbomachinery.feed.UllageGas} and
 * {@link dev.penstock.turbomachinery.feed.PressurantBottle}. Real-gas properties throughout.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.turbomachinery.feed;
