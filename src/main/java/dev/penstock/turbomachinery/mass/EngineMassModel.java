package dev.penstock.turbomachinery.mass;

import dev.penstock.provenance.ModelCard;
import dev.penstock.provenance.Spread;
import dev.penstock.turbomachinery.ShaftBalance;
import dev.penstock.turbomachinery.TurbopumpMass;
import java.util.ArrayList;
import java.util.List;

/**
 * Mass of an engine from its parts. Each relation states its scatter; the sum takes them as independent.
 * <pre>
 * turbopump  1.5 τ^0.6
 * burner     thin wall: 2.5 × 2 (ρ_m FS/σ) p V, V = ṁ t/ρ with t 5 ms; not below 2 kg per √(kg/s)
 * line       π d s ρ_m L, s = p d FS/(2σ) at least 1.5 mm, d from 15 m/s, L = 1.2 engine lengths
 * valve      1 kg + 40 kg (p/10 MPa)^0.5 (d/0.15 m)^2.5
 * gimbal     2e-5 F
 * the rest   50 % of the sum (thrust frame, mounts, harness, sensors, igniter, purge, small lines)
 * </pre>
 */
public final class EngineMassModel {

    /** Equation, range and source. */
    public static final ModelCard CARD = new ModelCard(
            "turbomachinery.engine-mass",
            "Engine mass from its parts",
            "turbopump 1.5 τ^0.6 + chamber + nozzle + injector + burners + lines + valves + gimbal 2e-5 F + 50 %",
            "pump-fed and pressure-fed engines of metal",
            "30 % on the sum; the relations for whole engines are shown beside it",
            List.of("humble-1995", "common practice, no source"));

    private static final String COMMON = "common practice, no source";
    private static final double METAL = 8000;
    private static final double SAFETY_OVER_STRENGTH = 1.5 / 500e6;
    private static final double RESIDENCE = 0.005;
    private static final double LINE_VELOCITY = 15;
    private static final double THINNEST = 1.5e-3;
    private static final double REST = 0.5;

    /**
     * @param parts what the engine consists of
     * @return its mass
     */
    public EngineMass estimate(EngineParts parts) {
        List<MassItem> items = new ArrayList<>();
        items.add(ChamberMass.combustor(parts.chamber(), parts.cooledAreaRatio()));
        items.add(ChamberMass.extension(parts.chamber(), parts.cooledAreaRatio()));
        items.add(ChamberMass.injector(parts.chamber()));
        for (ShaftBalance shaft : parts.shafts()) {
            items.add(new MassItem(shaft.name() + " turbopump", TurbopumpMass.around(shaft.mass()), "humble-1995"));
        }
        for (EngineParts.Burner burner : parts.burners()) {
            double wall = 5
                    * METAL
                    * SAFETY_OVER_STRENGTH
                    * burner.pressure()
                    * burner.massFlow()
                    * RESIDENCE
                    / burner.density();
            items.add(spread(burner.name(), Math.max(wall, 2 * Math.sqrt(burner.massFlow())), 0.5, 2));
        }
        double length = 1.2
                * (parts.chamber().contour().chamberLength()
                        + parts.chamber().contour().nozzleLength());
        for (EngineParts.Line line : parts.lines()) {
            double bore = Math.sqrt(4 * line.massFlow() / (Math.PI * line.density() * LINE_VELOCITY));
            double wall = Math.max(0.5 * line.pressure() * bore * SAFETY_OVER_STRENGTH, THINNEST);
            items.add(spread(line.name() + " line", Math.PI * bore * wall * METAL * length, 0.6, 2));
            items.add(spread(
                    line.name() + " valve",
                    1 + 40 * Math.sqrt(line.pressure() / 10e6) * Math.pow(bore / 0.15, 2.5),
                    0.5,
                    1.6));
        }
        if (parts.gimballed()) {
            items.add(spread("gimbal", 2e-5 * parts.vacuumThrust(), 0.5, 2));
        }
        double sum = items.stream().mapToDouble(item -> item.mass().mode()).sum();
        items.addAll(parts.others());
        items.add(spread("frame, mounts, harness, sensors, small lines", REST * sum, 0.5, 1.7));
        return new EngineMass(
                items,
                parts.shafts().isEmpty()
                        ? List.of()
                        : WholeEngineRelations.of(
                                parts.vacuumThrust(), parts.chamber().areaRatio()),
                parts.vacuumThrust());
    }

    private static MassItem spread(String name, double mass, double low, double high) {
        return new MassItem(name, new Spread(low, 1, high).times(mass), COMMON);
    }
}
