/** Power balance, mechanical losses and mass of what turns on one shaft: {@link ShaftModel}. */
package dev.penstock.turbomachinery.shaft;
