/** What bounds the speed of a rotor, and how bounds are joined without a jump. */
package dev.penstock.turbomachinery.speed;
