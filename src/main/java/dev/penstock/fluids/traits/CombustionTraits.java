package dev.penstock.fluids.traits;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What chamber and burners must know of a propellant, from the table {@code [combustion]} of its file.
 *
 * @param wallZone share of the characteristic velocity that a usual fuel-rich zone along the wall costs (-); there for fuels and
 *     monopropellants
 * @param characteristicLength usual L* of a chamber (m); there for fuels; that of an oxidizer goes before its fuel's
 * @param dropBurning how many times as fast its drops burn as they would evaporate (-); above 1 for what decomposes in its own vapour
 * @param injectedAsGas whether it usually reaches the injector warm and thin enough to count as a gas
 * @param soot whether its fuel-rich flame lays soot on the wall
 * @param releasesAmmonia whether it decomposes into ammonia, which dissociates slowly
 * @param equilibriumFails mixture ratio below which its gas is known not to reach equilibrium (-)
 * @param generatorGas measured gas of a gas generator
 */
public record CombustionTraits(
        OptionalDouble wallZone,
        OptionalDouble characteristicLength,
        double dropBurning,
        boolean injectedAsGas,
        boolean soot,
        boolean releasesAmmonia,
        OptionalDouble equilibriumFails,
        Optional<GeneratorGasData> generatorGas) {

    /** Nothing known, as of a fluid that does not burn. */
    public static final CombustionTraits NONE = new CombustionTraits(
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            1,
            false,
            false,
            false,
            OptionalDouble.empty(),
            Optional.empty());
}
