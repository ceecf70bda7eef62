package dev.penstock.combustion.species;

import dev.penstock.errors.Require;

/**
 * What the kinetic theory of gases needs to know of a molecule.
 *
 * @param shape shape, for the number of rotations
 * @param wellDepth depth of the Lennard-Jones potential over Boltzmann's constant (K)
 * @param diameter collision diameter of that potential (m)
 * @param dipole dipole moment (C·m)
 * @param rotationalNumber collisions needed for rotational relaxation at 298 K (-)
 */
public record Collision(Shape shape, double wellDepth, double diameter, double dipole, double rotationalNumber) {

    /** Shape of a molecule. */
    public enum Shape {
        ATOM(0),
        LINEAR(1),
        NONLINEAR(1.5);

        private final double rotationalHeat;

        Shape(double rotationalHeat) {
            this.rotationalHeat = rotationalHeat;
        }

        /** @return rotational part of cv/R (-) */
        public double rotationalHeat() {
            return rotationalHeat;
        }
    }

    public Collision {
        Require.positive("collision figures", "well depth (K)", wellDepth);
        Require.positive("collision figures", "diameter (m)", diameter);
        Require.notNegative("collision figures", "dipole moment (C·m)", dipole);
        Require.notNegative("collision figures", "rotational collision number (-)", rotationalNumber);
    }
}
