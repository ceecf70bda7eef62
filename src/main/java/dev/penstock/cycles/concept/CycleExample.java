package dev.penstock.cycles.concept;

import dev.penstock.input.InputFile;
import dev.penstock.input.InputTable;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * An ordinary engine of a cycle, to start a concept file from; those of all cycles are in the resource {@code examples.toml}.
 *
 * @param oxidizer id of the oxidizer
 * @param fuel id of the fuel
 * @param mixtureRatio oxidizer over fuel by mass (-)
 * @param vacuumThrust thrust in vacuum, with its unit
 * @param chamberPressure chamber pressure, with its unit
 * @param areaRatio nozzle area ratio (-)
 * @param cooled whether the fuel cools the chamber
 * @param oxidizerFrom nozzle area ratio from which on the oxidizer cools the wall instead (-), if it does
 */
public record CycleExample(
        String oxidizer,
        String fuel,
        double mixtureRatio,
        String vacuumThrust,
        String chamberPressure,
        double areaRatio,
        boolean cooled,
        OptionalDouble oxidizerFrom) {

    private static final String RESOURCE = "/dev/penstock/cycles/examples.toml";

    /**
     * @param cycle id of a cycle
     * @return its example
     */
    static CycleExample of(String cycle) {
        try (InputStream in = CycleExample.class.getResourceAsStream(RESOURCE)) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            InputFile file = InputFile.parse("examples.toml", text, Map.of());
            Map<String, CycleExample> all = new HashMap<>();
            file.root().tables().forEach((id, table) -> all.put(id, read(table)));
            file.finish();
            return Objects.requireNonNull(all.get(cycle), cycle);
        } catch (IOException e) {
            throw new UncheckedIOException(RESOURCE, e);
        }
    }

    private static CycleExample read(InputTable table) {
        return new CycleExample(
                table.text("oxidizer"),
                table.text("fuel"),
                table.quantity("mixture_ratio", Dimension.RATIO, Range.POSITIVE),
                table.text("thrust_vacuum"),
                table.text("chamber_pressure"),
                table.quantity("area_ratio", Dimension.RATIO, Range.POSITIVE),
                table.flag("cooled", false),
                table.optionalQuantity("oxidizer_cools_from", Dimension.RATIO, Range.POSITIVE));
    }

    /** @return the shortest concept file of this example */
    public String shortest(String cycle, String name) {
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
        return cooled ? text + "[cooling]\ncoolant = \"fuel\"\n" + behind() : text;
    }

    private String behind() {
        return oxidizerFrom.isPresent()
                ? """
                end_area_ratio = %s
                [[cooling.circuits]]
                name = "nozzle"
                coolant = "oxidizer"
                """
                        .formatted(oxidizerFrom.getAsDouble())
                : "";
    }
}
