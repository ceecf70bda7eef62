package org.skerry.study;

import dev.penstock.Combustion;
import dev.penstock.Engine;
import dev.penstock.EngineConcept;
import dev.penstock.Penstock;
import dev.penstock.PressureLimit;
import dev.penstock.Vehicle;
import dev.penstock.errors.InvalidInput;
import java.io.File;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** A concept built in Java, balanced with nothing but the installed archive; ends with an error where something is missing. */
public final class FirstStudy {

    /** Libraries of pages, charts, command line and logging, which a program that balances engines must not get. */
    private static final List<String> UNWANTED = List.of(
            "batik", "freemarker", "javalin", "jetty", "jfree", "jline", "kotlin", "openhtmltopdf", "pdfbox", "picocli",
            "progressbar", "slf4j");

    private FirstStudy() {}

    public static void main(String[] arguments) {
        List<String> libraries = Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
                .map(path -> Path.of(path).getFileName().toString())
                .toList();
        System.out.println(libraries);
        require(libraries.stream().noneMatch(l -> UNWANTED.stream().anyMatch(l::contains)), "no library of pages");
        require(FirstStudy.class.getResource("/simplelogger.properties") == null, "no logging set for the host");

        Penstock penstock = Penstock.open();
        EngineConcept concept = EngineConcept.named("First study")
                .with("cycle", "gas-generator")
                .with("propellants.oxidizer", "oxygen")
                .with("propellants.fuel", "methane")
                .with("propellants.mixture_ratio", 3.2)
                .with("engine.thrust_vacuum", 500, "kN")
                .with("engine.chamber_pressure", 8, "MPa")
                .with("nozzle.area_ratio", 30)
                .with("cooling.coolant", "fuel")
                .with("cooling.film.fuel_fraction", 0.04);

        Engine engine = penstock.balance(concept);
        System.out.printf(Locale.ROOT, "%s: %.1f s in vacuum, %.0f kg%n", engine.name(), engine.vacuumIsp(),
                engine.dryMass().likely());
        engine.pumps().forEach(pump -> System.out.printf(Locale.ROOT, "%s: %.1f bar, %.2f MW%n", pump.name(),
                pump.dischargePressure() / 1e5, pump.power() / 1e6));
        require(Math.abs(engine.vacuumThrust() / 500e3 - 1) < 1e-6, "the thrust asked for");
        require(engine.worstResidual() < 1e-8, "a balance that closes");
        require(engine.pumps().size() == 2 && engine.jackets().size() == 1, "two pumps and a jacket");

        PressureLimit limit = penstock.limit(concept);
        System.out.println(limit.explanation());
        require(limit.chamberPressure() > 0 && limit.engine().withinLimits(), "a pressure within the limits");

        Vehicle vehicle = penstock.size(
                concept.with("vehicle.payload", 2, "t").with("vehicle.mission.delta_v", 9400, "m/s").with("vehicle.stages", 2));
        System.out.printf(Locale.ROOT, "start mass %.1f t%n", vehicle.startMass() / 1e3);
        require(vehicle.stages().size() == 2, "two stages");

        Combustion burnt = penstock.combust("oxygen", "methane", 3.4, 10e6, 20, 80);
        System.out.printf(Locale.ROOT, "c* %.1f m/s%n", burnt.characteristicVelocity());
        require(burnt.nozzles().size() == 2, "two nozzles");

        try {
            penstock.balance(concept.with("engine.chamber_pressure", "8 kg"));
            throw new IllegalStateException("a mass was taken for a pressure");
        } catch (InvalidInput e) {
            System.out.println(e.getMessage());
        }
    }

    private static void require(boolean met, String what) {
        if (!met) {
            throw new IllegalStateException("missing: " + what);
        }
    }
}
