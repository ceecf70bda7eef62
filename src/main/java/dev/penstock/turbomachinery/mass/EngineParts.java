package dev.penstock.turbomachinery.mass;

import dev.penstock.chamber.ChamberPerformance;
import dev.penstock.cooling.design.ExtensionDesign;
import dev.penstock.errors.Require;
import dev.penstock.turbomachinery.shaft.ShaftBalance;
import java.util.List;

/**
 * What an engine consists of, as far as its mass depends on it.
 *
 * @param vacuumThrust of the whole engine (N)
 * @param chamber thrust chamber, one of them where there are several
 * @param chambers number of thrust chambers
 * @param cooledAreaRatio area ratio down to which the nozzle has a cooled wall (-); 1 for a chamber that is not cooled
 * @param uncooled how the nozzle behind the cooled wall is made, or all of a chamber without a jacket
 * @param jacket whether a jacket cools the chamber
 * @param walls cooled walls along the contour; where none is given, of liner and channels
 * @param shafts turbopump shafts
 * @param burners gas generator and preburners
 * @param lines propellant lines with a main valve each
 * @param ducts of gas, before and behind the turbines
 * @param gimballed whether it swivels
 * @param swivels small nozzles that swivel by themselves
 * @param others parts whose mass is known, such as motors and batteries
 * @param factors what the masses of the models are multiplied by
 */
public record EngineParts(
        double vacuumThrust,
        ChamberPerformance chamber,
        int chambers,
        double cooledAreaRatio,
        ExtensionDesign uncooled,
        boolean jacket,
        List<CooledWall> walls,
        List<ShaftBalance> shafts,
        List<Burner> burners,
        List<Line> lines,
        List<GasDuct> ducts,
        boolean gimballed,
        List<SmallNozzle> swivels,
        List<MassItem> others,
        MassFactors factors) {

    /**
     * A gas generator or preburner.
     *
     * @param name what it is
     * @param massFlow through it (kg/s)
     * @param pressure in it (Pa)
     * @param density of its gas (kg/m³)
     */
    public record Burner(String name, double massFlow, double pressure, double density) {

        public Burner {
            Require.positive(name, "mass flow (kg/s)", massFlow);
            Require.positive(name, "pressure (Pa)", pressure);
            Require.positive(name, "density (kg/m³)", density);
        }
    }

    /**
     * A propellant line with its main valve.
     *
     * @param name what it is
     * @param massFlow through it (kg/s)
     * @param pressure in it (Pa)
     * @param density of the propellant (kg/m³)
     */
    public record Line(String name, double massFlow, double pressure, double density) {

        public Line {
            Require.positive(name, "mass flow (kg/s)", massFlow);
            Require.positive(name, "pressure (Pa)", pressure);
            Require.positive(name, "density (kg/m³)", density);
        }
    }

    /**
     * A duct of gas before or behind a turbine.
     *
     * @param name what it is
     * @param massFlow through it (kg/s)
     * @param pressure in it (Pa)
     * @param density of the gas (kg/m³)
     * @param dumped whether its gas leaves the engine instead of going on to the next part
     */
    public record GasDuct(String name, double massFlow, double pressure, double density, boolean dumped) {

        public GasDuct {
            Require.positive(name, "mass flow (kg/s)", massFlow);
            Require.positive(name, "pressure (Pa)", pressure);
            Require.positive(name, "density (kg/m³)", density);
        }
    }

    /**
     * A small nozzle that swivels.
     *
     * @param name what it is
     * @param thrust its thrust (N)
     * @param wall its exit area less its throat area (m²)
     */
    public record SmallNozzle(String name, double thrust, double wall) {

        public SmallNozzle {
            Require.positive(name, "thrust (N)", thrust);
            Require.notNegative(name, "exit less throat area (m²)", wall);
        }
    }

    public EngineParts {
        Require.positive("engine parts", "vacuum thrust (N)", vacuumThrust);
        Require.within("engine parts", "cooled area ratio (-)", cooledAreaRatio, 1, 1000);
        shafts = List.copyOf(shafts);
        burners = List.copyOf(burners);
        lines = List.copyOf(lines);
        walls = List.copyOf(walls);
        ducts = List.copyOf(ducts);
        swivels = List.copyOf(swivels);
        others = List.copyOf(others);
    }
}
