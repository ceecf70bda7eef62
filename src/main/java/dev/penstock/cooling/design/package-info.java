/** What a cooling jacket is asked to be: {@link JacketDesign} and the case in which it works, {@link JacketCase}. */
package dev.penstock.cooling.design;
