package dev.penstock.vehicle.mass;

import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;
import dev.penstock.vehicle.engine.LoadedPropellant;
import java.util.List;

/**
 * Masses of launch-vehicle parts from one size each, fitted to built vehicles.
 *
 * <pre>
 * tank                    a V            a of the propellant's file           V in m³, up to 1600 m³
 * tank insulation         b A            b of the file, if loaded cold        A in m²
 * thrust structure        2.55e-4 F      F vacuum thrust, N
 * gimbals                 237.8 (F/p_c)^0.9375                                F in N, p_c in Pa
 * avionics                10 m0^0.361    wiring  1.058 √m0 L^0.25             m0 in kg, L in m
 * fairing, interstage     4.95 A^1.15    A in m²
 * </pre>
 *
 * a and b are {@code tank_mass} and {@code insulation_mass} in the propellant's file. Source: [akin-mass], as transcribed in a secondary source; the gimbal line is from memory. All masses in kg. The
 * scatter is a judgement where the source gives none.
 */
public final class ScalingRelations {

    public static final ModelCard CARD = new ModelCard(
            "vehicle.scaling-relations",
            "Mass of launch-vehicle parts from their size",
            "tank a V and insulation b A with a and b of the propellant's file; thrust structure 2.55e-4 F; gimbals"
                    + " 237.8 (F/p_c)^0.9375; avionics 10 m0^0.361; wiring 1.058 m0^0.5 L^0.25; fairing 4.95 A^1.15",
            "tanks to 1600 m³; launch vehicles; metal structures",
            "tanks R² 0.99 (hydrogen) and 0.93 (other) in the source; other lines ±25 to 40 % by judgement",
            List.of("akin-mass"));

    private static final MassLine.Made MADE = MassLine.Made.of(CARD);

    private static final String SOURCE = "akin-mass";

    private ScalingRelations() {}

    /**
     * @param name name of the line
     * @param propellant what it holds
     * @param volume volume (m³)
     * @return the tank, without insulation
     */
    public static MassLine tank(String name, LoadedPropellant propellant, double volume) {
        Require.positive(name, "volume (m³)", volume);
        double perVolume = propellant
                .propellant()
                .needed(propellant.propellant().tank().tankMass(), "tank.tank_mass", "a mass per volume of the tank");
        return new MassLine(name, perVolume * volume, 0.2, SOURCE, MADE);
    }

    /**
     * @param name name of the line
     * @param propellant what it holds
     * @param area surface (m²)
     * @return insulation; zero for a propellant stored near room temperature
     */
    public static MassLine insulation(String name, LoadedPropellant propellant, double area) {
        double perArea = !propellant.cryogenic()
                ? 0
                : propellant
                        .propellant()
                        .needed(
                                propellant.propellant().tank().insulationMass(),
                                "tank.insulation_mass",
                                "a mass per area of the insulation, or load it at 200 K or above");
        return new MassLine(name, perArea * area, 0.3, SOURCE, MADE);
    }

    /**
     * @param thrust vacuum thrust of all engines (N)
     * @return frame that takes the thrust
     */
    public static MassLine thrustStructure(double thrust) {
        return new MassLine("thrust structure", 2.55e-4 * thrust, 0.3, SOURCE, MADE);
    }

    /**
     * @param engines number of engines
     * @param thrust vacuum thrust of one (N)
     * @param chamberPressure chamber pressure (Pa); zero where it is not known, which leaves the line out
     * @return gimbal bearings and actuators
     */
    public static MassLine gimbals(int engines, double thrust, double chamberPressure) {
        double each = chamberPressure > 0 ? 237.8 * Math.pow(thrust / chamberPressure, 0.9375) : 0;
        return new MassLine("gimbals and actuators", engines * each, 0.4, SOURCE + " (from memory)", MADE);
    }

    /**
     * @param startMass mass that is guided (kg)
     * @return avionics
     */
    public static MassLine avionics(double startMass) {
        return new MassLine("avionics", 10 * Math.pow(startMass, 0.361), 0.3, SOURCE, MADE);
    }

    /**
     * @param startMass mass at ignition (kg)
     * @param length length of the stage (m)
     * @return wiring
     */
    public static MassLine wiring(double startMass, double length) {
        return new MassLine("wiring", 1.058 * Math.sqrt(startMass) * Math.pow(length, 0.25), 0.3, SOURCE, MADE);
    }

    /**
     * @param name name of the line, for example "interstage"
     * @param area surface (m²)
     * @return shell structure: fairing, interstage, aft skirt
     */
    public static MassLine shell(String name, double area) {
        return new MassLine(name, 4.95 * Math.pow(area, 1.15), 0.25, SOURCE, MADE);
    }
}
