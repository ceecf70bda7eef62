package dev.penstock.cycles;

/**
 * An ordinary engine of a cycle, to start a concept file from.
 *
 * @param oxidizer id of the oxidizer
 * @param fuel id of the fuel
 * @param mixtureRatio oxidizer over fuel by mass (-)
 * @param vacuumThrust thrust in vacuum, with its unit
 * @param chamberPressure chamber pressure, with its unit
 * @param areaRatio nozzle area ratio (-)
 * @param cooled whether the fuel cools the chamber
 */
public record CycleExample(
        String oxidizer,
        String fuel,
        double mixtureRatio,
        String vacuumThrust,
        String chamberPressure,
        double areaRatio,
        boolean cooled) {

    /** @return the shortest concept file of this example */
    String shortest(String cycle, String name) {
        String text =
                """
                name = "%s"
                description = ""
                cycle = "%s"
                [propellants]
                oxidizer = "%s"
                fuel = "%s"
                mixture_ratio = %s
                [engine]
                thrust_vacuum = "%s"
                chamber_pressure = "%s"
                [nozzle]
                area_ratio = %s
                """
                        .formatted(name, cycle, oxidizer, fuel, mixtureRatio, vacuumThrust, chamberPressure, areaRatio);
        return cooled ? text + "[cooling]\ncoolant = \"fuel\"\n" : text;
    }
}
