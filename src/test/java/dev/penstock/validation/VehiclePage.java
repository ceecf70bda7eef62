package dev.penstock.validation;

import dev.penstock.chamber.atmosphere.Atmosphere;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.vehicle.ascent.DragTable;
import dev.penstock.vehicle.ascent.Entry;
import dev.penstock.vehicle.ascent.Planet;
import dev.penstock.vehicle.ascent.StagnationHeating;
import dev.penstock.vehicle.engine.EngineMassEstimate;
import dev.penstock.vehicle.engine.EngineMassRelation;
import dev.penstock.vehicle.engine.LoadedPropellant;
import dev.penstock.vehicle.mass.MassTable;
import dev.penstock.vehicle.mass.ScalingRelations;
import dev.penstock.vehicle.mass.TankShell;
import dev.penstock.vehicle.stage.LagrangeStaging;
import dev.penstock.vehicle.stage.RocketEquation;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Computes what docs/validation/vehicle.md shows. */
final class VehiclePage {

    /**
     * A figure held against a published one.
     *
     * @param example what it is, with its source
     * @param figure figure and unit
     * @param published the published value
     * @param computed ours
     * @param target largest relative deviation (-)
     */
    record Check(String example, String figure, double published, double computed, double target) {

        double deviation() {
            return computed / published - 1;
        }

        boolean met() {
            return Math.abs(deviation()) <= target;
        }
    }

    private VehiclePage() {}

    static List<Check> checks() {
        List<Check> checks = new ArrayList<>();
        String practice = "single stage to orbit (common practice, no source; 9.81 m/s²)";
        checks.add(new Check(practice, "exhaust velocity at 330 s, m/s", 3237, 330 * 9.81, 2e-4));
        checks.add(new Check(
                practice, "mass ratio for 9400 m/s at 330 s", 18.24, RocketEquation.massRatio(9400, 330 * 9.81), 3e-4));
        checks.add(new Check(
                practice, "mass ratio for 9400 m/s at 370 s", 13.3, RocketEquation.massRatio(9400, 370 * 9.81), 4e-3));
        staging(checks);
        String orbit = "low orbit [wgs-84] (independent calculation)";
        checks.add(new Check(orbit, "circular speed at 200 km, m/s", 7784.3, Planet.EARTH.circularSpeed(200e3), 1e-5));
        checks.add(new Check(
                orbit,
                "speed of the ground at 28.5 deg, m/s",
                408.7,
                Planet.EARTH.rotationCredit(Math.toRadians(28.5)),
                2e-4));
        masses(checks);
        entry(checks);
        return checks;
    }

    private static void staging(List<Check> checks) {
        String book = "three stages, 400/350/300 s, ε 0.10/0.15/0.20, 10 km/s [curtis-2014]";
        LagrangeStaging.Optimum optimum = LagrangeStaging.optimum(
                List.of(
                        new LagrangeStaging.Stage(400 * 9.81, 0.10),
                        new LagrangeStaging.Stage(350 * 9.81, 0.15),
                        new LagrangeStaging.Stage(300 * 9.81, 0.20)),
                10_000,
                5000);
        checks.add(new Check(book, "multiplier, s/km", 0.46682, 1000 * optimum.multiplier(), 1e-4));
        checks.add(new Check(
                book, "first stage, kg", 165_679, optimum.stageMasses().get(0), 1e-4));
        checks.add(new Check(
                book, "second stage, kg", 18_066, optimum.stageMasses().get(1), 1e-4));
        checks.add(
                new Check(book, "third stage, kg", 2477, optimum.stageMasses().get(2), 2e-4));
        checks.add(new Check(book, "start mass, kg", 191_221, optimum.startMass(), 1e-4));
    }

    private static void masses(List<Check> checks) {
        String lecture = "single stage, 116.4 t oxygen and 19.39 t hydrogen [akin-mass]";
        FluidLibrary fluids = FluidLibrary.open();
        LoadedPropellant oxygen = new LoadedPropellant(fluids.propellant("oxygen"), 1140, 90.2, 3e5);
        LoadedPropellant hydrogen = new LoadedPropellant(fluids.propellant("hydrogen"), 71, 20.3, 3e5);
        checks.add(new Check(
                lecture,
                "oxygen tank, kg",
                1245,
                ScalingRelations.tank("tank", oxygen, 116_400 / 1140.0).mass(),
                5e-3));
        checks.add(new Check(
                lecture,
                "hydrogen tank, kg",
                2482,
                ScalingRelations.tank("tank", hydrogen, 19_390 / 71.0).mass(),
                5e-3));
        checks.add(new Check(
                "engine of 1 MN, area ratio 16 [akin-mass]",
                "mass, kg",
                974.8,
                EngineMassRelation.mass(1e6, 16),
                1e-4));
        checks.add(new Check(
                "thin cylinder, r/t 1000 [nasa-sp-8007]",
                "knock-down factor",
                0.2239,
                TankShell.knockDown(1000),
                5e-4));
    }

    private static void entry(List<Check> checks) {
        checks.add(new Check(
                "3.0e-4 kg/m³, 7000 m/s, nose 1 m [sutton-graves-1971]",
                "stagnation flux, W/cm²",
                103.5,
                StagnationHeating.flux(3.0e-4, 1, 7000) / 1e4,
                5e-4));
        // original form q = K √(p_s/R)(h_s − h_w), K = 0.1113 kg/(s m^1.5 atm^0.5), with Newton's p_s = ρV² and h_s −
        // h_w = V²/2
        checks.add(new Check(
                "the same by the original form [sutton-graves-1971] (independent calculation)",
                "stagnation flux, W/cm²",
                0.1113 * Math.sqrt(3.0e-4 * 7000.0 * 7000 / 101325) * 7000.0 * 7000 / 2 / 1e4,
                StagnationHeating.flux(3.0e-4, 1, 7000) / 1e4,
                1e-2));
        double height = 7200;
        Atmosphere exponential =
                altitude -> new Atmosphere.State(altitude, 0, 250, 1.225 * Math.exp(-altitude / height), 300);
        double radius = 1e9;
        Entry.Body body = new Entry.Body(2000, 2, new DragTable(List.of(new DragTable.Point(0, 1.2))), 0.5);
        Entry.Result fall =
                new Entry(new Planet(1e-3 * radius, radius, 0), exponential).fall(body, 150e3, 7000, -Math.PI / 2);
        checks.add(new Check(
                "vertical entry at 7000 m/s, closed solution [allen-eggers-1958]",
                "highest deceleration, m/s²",
                7000.0 * 7000 / (2 * Math.E * height),
                fall.peakDeceleration(),
                1e-3));
        // v = V exp(-rho H/(2 beta)) in q = k sqrt(rho/r) v³: greatest at rho = beta/(3 H); its integral over time is a
        // Gaussian's
        double ballistic = 2000 / (1.2 * 2);
        double perRoot = 1.7415e-4 / Math.sqrt(0.5);
        checks.add(new Check(
                "the same (independent calculation)",
                "highest stagnation flux, W/cm²",
                perRoot * Math.sqrt(ballistic / (3 * height)) * Math.pow(7000, 3) * Math.exp(-0.5) / 1e4,
                fall.peakHeatFlux() / 1e4,
                5e-3));
        checks.add(new Check(
                "the same (independent calculation)",
                "heat load of the stagnation point, kJ/cm²",
                perRoot * 7000.0 * 7000 * Math.sqrt(Math.PI * ballistic * height) / 1e7,
                fall.heatLoad() / 1e7,
                5e-3));
    }

    /**
     * Mass of one built engine.
     *
     * @param name engine
     * @param built its mass (kg)
     * @param relation by the published relation (kg)
     * @param estimate by the corrected one (kg)
     * @param fitted whether the corrected one is fitted to it
     * @param pressureFed whether it has no pumps, for which neither relation is meant
     */
    record EngineMass(
            String name, double built, double relation, double estimate, boolean fitted, boolean pressureFed) {

        double miss() {
            return estimate / built - 1;
        }
    }

    static List<EngineMass> engineMasses() {
        return PublishedEngine.all().stream()
                .filter(e -> List.of("mass_kg", "thrust_vac_kN", "expansion_ratio", "chamber_pressure_MPa").stream()
                        .allMatch(column -> e.published(column).isPresent()))
                .map(VehiclePage::engineMass)
                .toList();
    }

    private static EngineMass engineMass(PublishedEngine e) {
        double thrust = 1e3 * e.number("thrust_vac_kN");
        double areaRatio = e.number("expansion_ratio");
        double pressure = 1e6 * e.number("chamber_pressure_MPa");
        return new EngineMass(
                e.name(),
                e.number("mass_kg"),
                EngineMassRelation.mass(thrust, areaRatio),
                EngineMassEstimate.mass(
                        thrust, areaRatio, pressure, e.text("fuel").equals("LH2")),
                EnginesOfMassFit.NAMES.contains(e.name()),
                e.text("cycle").equals("pressure-fed"));
    }

    /** Misses of the corrected estimate for engines that it was not fitted to, in one sentence. */
    private static String leftOut(List<EngineMass> engines) {
        List<EngineMass> others =
                engines.stream().filter(m -> !m.fitted() && !m.pressureFed()).toList();
        return String.format(
                Locale.ROOT,
                "%nThe corrected estimate misses the %d pumped engines that it is not fitted to by %.0f %% in the mean, %+.0f %% in the"
                        + " mean with sign.%n",
                others.size(),
                100
                        * others.stream()
                                .mapToDouble(m -> Math.abs(m.miss()))
                                .average()
                                .orElseThrow(),
                100 * others.stream().mapToDouble(EngineMass::miss).average().orElseThrow());
    }

    /** Flown stages, how far the estimates miss, and the spread with each left out. */
    private static String stages(List<PublishedStages.Row> rows) {
        StringBuilder text = new StringBuilder(
                """

                ## Dry mass of flown stages

                Propellant, dry mass, diameter and what stood on each are from memory, as printed in press books and handbooks of their
                time, and known to some 5 %; engines are those of `engines.csv`, their masses taken from there. Estimated as a stage of
                which nothing else is stated: tanks by volume, helium in wound bottles, growth margin of 15 %. Beside it with tanks by
                their loads, in aluminium. Some dry masses hold interstages, others do not.

                | stage | engines | flown, kg | tanks by volume, kg | deviation | tanks by loads, kg | deviation |
                |---|---|---|---|---|---|---|
                """);
        for (PublishedStages.Row r : rows) {
            text.append(String.format(
                    Locale.ROOT,
                    "| %s | %s | %.0f | %.0f | %+.0f %% | %.0f | %+.0f %% |%n",
                    r.name(),
                    r.engines(),
                    r.dry(),
                    r.byVolume(),
                    100 * (r.byVolume() / r.dry() - 1),
                    r.byLoad(),
                    100 * (r.byLoad() / r.dry() - 1)));
        }
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (int i = 0; i < rows.size(); i++) {
            List<PublishedStages.Row> others = new ArrayList<>(rows);
            others.remove(i);
            least = Math.min(least, PublishedStages.spread(others));
            most = Math.max(most, PublishedStages.spread(others));
        }
        double lines =
                rows.stream().mapToDouble(PublishedStages.Row::lines).average().orElseThrow();
        double spread = PublishedStages.spread(rows);
        text.append(String.format(
                Locale.ROOT,
                "%nWith tanks by volume the estimates miss by %.0f %% in the mean and by %.1f %% as a root of the mean square of"
                        + " logarithms; with one stage left out %.1f to %.1f %%. By loads it is %.1f %%. Lines independent of each other would give"
                        + " %.1f %%, which leaves %.1f %% that moves all lines of a stage together; the program takes %.0f %%, set in view of these"
                        + " stages.%n",
                100
                        * rows.stream()
                                .mapToDouble(r -> Math.abs(r.byVolume() / r.dry() - 1))
                                .average()
                                .orElseThrow(),
                100 * spread,
                100 * least,
                100 * most,
                100
                        * Math.sqrt(rows.stream()
                                .mapToDouble(r -> r.missByLoad() * r.missByLoad())
                                .average()
                                .orElseThrow()),
                100 * lines,
                100 * Math.sqrt(Math.max(0, spread * spread - lines * lines)),
                100 * MassTable.COMMON));
        return text.toString();
    }

    static String text() {
        StringBuilder page = new StringBuilder(
                """
                # The vehicle against published figures

                Generated by `VehiclePageTest`; `mvn test -Dtest=VehiclePageTest -Dpenstock.docs.write=true` writes it anew.

                ## Worked examples

                Targets are the printed digits of the source. "Independent calculation" marks a figure worked out apart from
                the program from the source's equation.

                | example | figure | published | computed | deviation | target | |
                |---|---|---|---|---|---|---|
                """);
        for (Check c : checks()) {
            page.append(String.format(
                    Locale.ROOT,
                    "| %s | %s | %s | %s | %+.3f %% | %.3f %% | %s |%n",
                    c.example(),
                    c.figure(),
                    digits(c.published()),
                    digits(c.computed()),
                    100 * c.deviation(),
                    100 * c.target(),
                    c.met() ? "met" : "MISSED"));
        }
        page.append(
                """

                ## Mass of built engines

                Engines of `src/test/resources/validation/engines.csv` whose mass, thrust, area ratio and chamber pressure are
                all given there. The corrected estimate is fitted to the engines marked so, with the figures that were known of
                them then: of those its scatter is what the table shows, its mean is no evidence. Neither relation is meant for
                engines without pumps.

                | engine | built, kg | published relation, kg | deviation | corrected estimate, kg | deviation | |
                |---|---|---|---|---|---|---|
                """);
        List<EngineMass> masses = engineMasses();
        for (EngineMass m : masses) {
            page.append(String.format(
                    Locale.ROOT,
                    "| %s | %.0f | %.0f | %+.0f %% | %.0f | %+.0f %% | %s |%n",
                    m.name(),
                    m.built(),
                    m.relation(),
                    100 * (m.relation() / m.built() - 1),
                    m.estimate(),
                    100 * m.miss(),
                    m.fitted() ? "fitted" : m.pressureFed() ? "no pumps" : ""));
        }
        page.append(leftOut(masses));
        page.append(stages(PublishedStages.rows()));
        page.append(
                """

                ## Entry heating

                The one worked example of entry heating in the handbook that the project was given (3.0e-4 kg/m³, 7000 m/s, 1 m) is among the
                worked examples above. The handbook holds no measured flux of a flight, and none is set against the program here; fall and
                heat load rest on the closed solution of a ballistic entry and on integrals by hand.

                ## Held by tests without a published figure

                - A vertical burn without air follows v = c ln n − g t and its height to 1e-5 m/s and 1 m.
                - A coast of one revolution keeps energy and angular momentum to 1e-9.
                - The losses of a flight and its ideal delta-v add up to the speed through the air within 0.01 m/s.
                - The search for the best split finds the Lagrange optimum to 1e-6 of the start mass.
                - Start mass from payload and payload from start mass undo each other to 1e-6.
                - An ideal gas turns the pressurant model into the textbook's formula within 0.3 %.
                """);
        return page.toString().replace("\r\n", "\n");
    }

    private static String digits(double value) {
        return String.format(Locale.ROOT, Math.abs(value) >= 1000 ? "%.0f" : "%.5g", value);
    }
}
