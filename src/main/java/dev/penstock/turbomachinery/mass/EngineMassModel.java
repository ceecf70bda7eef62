package dev.penstock.turbomachinery.mass;

import dev.penstock.provenance.ModelCard;
import dev.penstock.provenance.Spread;
import dev.penstock.turbomachinery.shaft.ShaftBalance;
import dev.penstock.turbomachinery.shaft.TurbopumpMass;
import java.util.ArrayList;
import java.util.List;

/**
 * Mass of an engine from its parts. Each relation states its scatter; the sum takes them as independent, and with them what all parts
 * of built engines miss together ({@link MassPart#ENGINE}).
 * <pre>
 * turbopump  1.5 τ^0.6
 * burner     thin wall: 2.5 × 2 (ρ_m FS/σ) p V, V = ṁ t/ρ with t 5 ms; not below 2 kg per √(kg/s)
 * line       π d s ρ_m L, s = p d FS/(2σ) at least 1.5 mm, d from 15 m/s, L = 1.2 engine lengths
 * valve      1 kg (below a bore of 15 mm in proportion to it, 0.3 kg at least) + 40 kg (p/10 MPa)^0.5 (d/0.15 m)^2.5
 * gimbal     2e-5 F; a swivelled exhaust nozzle 10 kg/m² of a cone of 15°, (A_e − A_t)/sin 15°, and 2e-5 of its own thrust
 * chambers   walls, extension and injector of each; lines of n chambers weigh what the lines of one do: n d² stays, and s ~ d
 * ducts      of gas, as thin pipes (DuctMass)
 * frame      3 ρ (FS/σ) F R (ThrustFrame)
 * rest       40 % of the sum: harness, sensors, controls, igniter, purge, small lines, heat exchangers, insulation, fittings
 * </pre>
 */
public final class EngineMassModel {

    /** Equation, range and source. */
    public static final ModelCard CARD = new ModelCard(
            "turbomachinery.engine-mass",
            "Engine mass from its parts",
            "turbopump 1.5 τ^0.6 + chamber + nozzle + injector + burners + lines + valves + gimbal 2e-5 F + gas ducts + thrust frame + 40 %",
            "pump-fed and pressure-fed engines of metal",
            "30 % on the sum; the relations for whole engines are shown beside it",
            List.of("humble-1995", "common practice, no source"));

    static final String COMMON = "common practice, no source";
    private static final double RESIDENCE = 0.005;
    private static final double LINE_VELOCITY = 15;

    /** Bore from which the body and drive of a valve weigh a kilogram at least (m). */
    private static final double FULL_VALVE_BORE = 15e-3;

    /** Lightest valve: solenoid valves of thrusters weigh 0.2 to 0.5 kg, from memory (kg). */
    private static final double LIGHTEST_VALVE = 0.3;

    /** All that has no relation of its own, over what has one: in view of built engines, each left out (decision 0231). */
    private static final double REST = 0.40;

    /** What swivels over its thrust (kg/N). */
    private static final double SWIVEL = 2e-5;

    /** Wall of a small nozzle without cooling (kg/m²), a cone whose half angle has this sine (-). */
    private static final double CONE = 10;

    private static final double CONE_SINE = Math.sin(Math.toRadians(15));

    /**
     * @param parts what the engine consists of
     * @return its mass
     */
    public EngineMass estimate(EngineParts parts) {
        List<MassItem> plain = new ArrayList<>();
        int chambers = parts.chambers();
        plain.add(ChamberMass.combustor(parts).times(chambers));
        plain.add(ChamberMass.extension(parts).times(chambers));
        plain.add(ChamberMass.injector(parts.chamber()).times(chambers));
        for (ShaftBalance shaft : parts.shafts()) {
            plain.add(new MassItem(
                    MassPart.TURBOPUMP,
                    shaft.name(),
                    shaft.name() + " turbopump",
                    TurbopumpMass.SCATTER.times(shaft.mass()),
                    "humble-1995"));
        }
        parts.burners().forEach(burner -> plain.add(burner(burner)));
        double length = 1.2
                * (parts.chamber().contour().chamberLength()
                        + parts.chamber().contour().nozzleLength());
        parts.lines().forEach(line -> plain.addAll(line(line, length)));
        double diameter = 2 * parts.chamber().contour().chamberRadius();
        parts.ducts().forEach(duct -> plain.add(DuctMass.of(duct, diameter, length)));
        plain.add(ThrustFrame.of(parts));
        if (parts.gimballed()) {
            plain.add(item(MassPart.GIMBAL, "gimbal", SWIVEL * parts.vacuumThrust()));
        }
        parts.swivels()
                .forEach(nozzle -> plain.add(item(
                        MassPart.GIMBAL, nozzle.name(), CONE * nozzle.wall() / CONE_SINE + SWIVEL * nozzle.thrust())));
        List<MassItem> items = new ArrayList<>();
        for (MassItem item : plain) {
            Spread mass = item.mass()
                    .times(parts.factors().of(item.part()) * parts.factors().of(MassPart.ENGINE));
            items.add(new MassItem(item.part(), item.owner(), item.name(), mass, item.source()));
        }
        double sum = items.stream().mapToDouble(item -> item.mass().mode()).sum();
        items.addAll(parts.others());
        items.add(item(
                MassPart.REST,
                "harness, controls and small parts",
                REST * sum * parts.factors().of(MassPart.REST)));
        return new EngineMass(
                items,
                parts.shafts().isEmpty()
                        ? List.of()
                        : WholeEngineRelations.of(
                                parts.vacuumThrust(), parts.chamber().areaRatio()),
                parts.vacuumThrust());
    }

    private static MassItem burner(EngineParts.Burner burner) {
        double wall = 5
                * EngineMetal.DENSITY
                * EngineMetal.SAFETY_OVER_STRENGTH
                * burner.pressure()
                * burner.massFlow()
                * RESIDENCE
                / burner.density();
        return item(MassPart.BURNER, burner.name(), Math.max(wall, 2 * Math.sqrt(burner.massFlow())));
    }

    private static List<MassItem> line(EngineParts.Line line, double length) {
        ThinPipe pipe = ThinPipe.of(
                line.massFlow(), line.density(), LINE_VELOCITY, line.pressure(), EngineMetal.SAFETY_OVER_STRENGTH);
        double body = Math.min(1, Math.max(LIGHTEST_VALVE, pipe.bore() / FULL_VALVE_BORE));
        double valve = body + 40 * Math.sqrt(line.pressure() / 10e6) * Math.pow(pipe.bore() / 0.15, 2.5);
        return List.of(
                item(MassPart.LINE, line.name(), line.name() + " line", pipe.mass(length)),
                item(MassPart.VALVE, line.name(), line.name() + " valve", valve));
    }

    /** A part by a model of common practice; no part at all where the model gives nothing. */
    static MassItem item(MassPart part, String name, double mass) {
        return item(part, name, name, mass);
    }

    private static MassItem item(MassPart part, String owner, String name, double mass) {
        return new MassItem(
                part,
                owner,
                name,
                mass == 0 ? Spread.exactly(0) : part.scatter().times(mass),
                COMMON);
    }
}
