package dev.penstock.reports.vehicle;

import dev.penstock.errors.Warning;
import dev.penstock.provenance.CheckFigures;
import dev.penstock.quantities.Notation;
import dev.penstock.quantities.Scale;
import dev.penstock.reports.chart.Drawing;
import dev.penstock.reports.concept.InputsAndWarnings;
import dev.penstock.reports.engine.BalanceText;
import dev.penstock.reports.page.Cautions;
import dev.penstock.reports.page.PageSection;
import dev.penstock.reports.page.Pages;
import dev.penstock.reports.page.TrailPart;
import dev.penstock.reports.slide.EngineSlides;
import dev.penstock.reports.slide.SlideFiles;
import dev.penstock.reports.table.VehicleTables;
import dev.penstock.reports.text.FigureJson;
import dev.penstock.reports.text.PageTable;
import dev.penstock.reports.text.Software;
import dev.penstock.reports.text.TextTable;
import dev.penstock.vehicle.FlownSizing;
import dev.penstock.vehicle.PayloadToOrbit;
import dev.penstock.vehicle.ascent.AscentMission;
import dev.penstock.vehicle.ascent.Target;
import dev.penstock.vehicle.stage.VehicleFigures;
import dev.penstock.vehicle.stage.VehicleSizing;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A sized vehicle as JSON document, terminal tables and page. */
public final class VehicleView {

    private VehicleView() {}

    /**
     * @param vehicle sized vehicle
     * @return JSON document
     */
    public static Map<String, Object> json(VehicleSizing vehicle) {
        return FigureJson.of(VehicleFigures.ALL, vehicle);
    }

    /**
     * @param vehicle sized vehicle
     * @return tables for a terminal
     */
    public static String text(VehicleSizing vehicle) {
        return tables(vehicle) + BalanceText.warnings(vehicle.warnings());
    }

    /** Tables for a terminal, without warnings. */
    static String tables(VehicleSizing vehicle) {
        String line = System.lineSeparator();
        StringBuilder text = new StringBuilder(brief(vehicle));
        text.append(line).append(TextTable.of(VehicleTables.budget(vehicle)));
        VehicleTables.dryMasses(vehicle).forEach(table -> text.append(line).append(TextTable.of(table)));
        text.append(line);
        VehicleSizing.DEFINITIONS.forEach(d -> text.append(d).append(line));
        return text.toString();
    }

    /**
     * @param vehicle sized vehicle
     * @return its masses, and one line for each stage
     */
    public static String brief(VehicleSizing vehicle) {
        String line = System.lineSeparator();
        PageTable table = VehicleTables.stages(vehicle, "");
        return vehicle.plan().name() + ": start mass " + Notation.TONNES.write(vehicle.startMass())
                + " t (of it propellant "
                + Notation.TONNES.write(vehicle.propellantMass()) + " t, dry "
                + Notation.TONNES.write(vehicle.dryMass())
                + " t, payload " + Notation.TONNES.write(vehicle.payload()) + " t), stages "
                + VehicleFigures.ALL.figure("height_m").text(vehicle) + " m high" + line + impulse(vehicle) + line
                + TextTable.of(table);
    }

    /** Where payload and start mass are both stated the impulse follows; that of the table is not that of the engines then. */
    private static String impulse(VehicleSizing vehicle) {
        if (vehicle.ispFactor().isEmpty()) {
            return "";
        }
        return String.format(
                Locale.ROOT,
                "Payload and start mass are both stated: that takes %.4g times the specific impulse of its engines.%n",
                vehicle.ispFactor().getAsDouble());
    }

    /**
     * @param vehicle sized vehicle
     * @return its stages and boosters, and where they carry what
     */
    public static String kind(VehicleSizing vehicle) {
        String boosters = vehicle.stages().stream()
                .flatMap(s -> s.boosters().stream())
                .map(b -> " and " + counted(b.count(), "booster"))
                .collect(Collectors.joining());
        String where =
                vehicle.plan().ascent().map(a -> " to " + where(a.mission())).orElse("");
        return "Vehicle of " + counted(vehicle.stages().size(), "stage") + boosters + ", "
                + Notation.TONNES.writeWithUnit(vehicle.payload()) + " of payload" + where;
    }

    private static String counted(int count, String thing) {
        return count + " " + thing + (count == 1 ? "" : "s");
    }

    private static String where(AscentMission mission) {
        Scale height = Scale.of("km");
        if (!(mission.target() instanceof Target.Orbit orbit)) {
            return "an escape";
        }
        boolean round = orbit.apogee() - orbit.perigee() < height.size();
        return String.format(
                Locale.ROOT,
                round
                        ? "a circular orbit of %2$.0f %3$s, %4$.1f° inclined"
                        : "an orbit of %1$.0f by %2$.0f %3$s, %4$.1f° inclined",
                height.of(orbit.perigee()),
                height.of(orbit.apogee()),
                height.unit(),
                Math.toDegrees(mission.inclination()));
    }

    /**
     * @param vehicle sized vehicle
     * @return it with its tanks, to scale
     */
    public static Drawing scale(VehicleSizing vehicle) {
        return SlideFiles.drawing("vehicle-scale", EngineSlides.of(vehicle).get(0));
    }

    /**
     * @param vehicle sized vehicle
     * @return how its start mass adds up
     */
    public static Drawing masses(VehicleSizing vehicle) {
        return VehicleTables.masses(vehicle);
    }

    /**
     * @param vehicle sized vehicle
     * @param software what the numbers were made with
     * @return the page
     */
    public static String html(VehicleSizing vehicle, Software software) {
        return html(vehicle, List.of(), vehicle.warnings(), software);
    }

    /**
     * @param flown vehicle and flight
     * @param software what the numbers were made with
     * @return the page
     */
    public static String html(FlownSizing flown, Software software) {
        return html(flown, List.of(), software);
    }

    /**
     * @param flown vehicle and flight
     * @param orbits its payload to other orbits, if that was asked for
     * @param software what the numbers were made with
     * @return the page
     */
    public static String html(FlownSizing flown, List<PayloadToOrbit> orbits, Software software) {
        List<PageSection> sections = new ArrayList<>(List.of(FlightView.section(flown)));
        if (!orbits.isEmpty()) {
            sections.add(PayloadView.section(orbits));
        }
        return html(flown.sizing(), sections, flown.warnings(), software);
    }

    private static String html(
            VehicleSizing vehicle, List<PageSection> more, List<Warning> warnings, Software software) {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("title", vehicle.plan().name());
        model.put("subtitle", vehicle.plan().description());
        model.put("kind", kind(vehicle));
        model.put(
                "figures",
                Stream.of("start_mass_kg", "propellant_mass_kg", "dry_mass_kg", "payload_kg", "payload_fraction")
                        .map(VehicleFigures.ALL::figure)
                        .map(f ->
                                Map.of("name", f.title(), "value", f.text(vehicle), "unit", f.unit(), "trail", f.key()))
                        .toList());
        model.put(
                "warnings",
                FigureJson.each(
                        CheckFigures.WARNINGS, warnings.stream().distinct().toList()));
        List<PageSection> parts = new ArrayList<>();
        parts.add(VehicleTables.section(vehicle).beginning(scale(vehicle)));
        parts.addAll(more);
        parts.add(InputsAndWarnings.of(vehicle));
        model.put("parts", parts);
        TrailPart trail = new TrailPart(VehicleFigures.trail(vehicle));
        model.put("models", trail.models());
        model.put("numbers", trail.numbers());
        model.put("assumptions", Cautions.ofVehicle());
        model.put("cautions", Cautions.dangersOf(vehicle));
        model.put("software", software);
        model.put("file", "CASE");
        return Pages.fill("vehicle.ftlh", model);
    }
}
