package dev.penstock.reports.slide;

import dev.penstock.cycles.concept.BoostDesign;
import dev.penstock.cycles.concept.PressurizationDesign;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.origin.PartKind;
import dev.penstock.cycles.origin.PumpKey;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.sheet.Station;
import dev.penstock.fluids.Propellant;
import dev.penstock.quantities.Notation;
import dev.penstock.reports.diagram.DrawnEngine;
import dev.penstock.reports.diagram.FlowOutline;
import dev.penstock.turbomachinery.pump.PumpSizing;
import dev.penstock.vehicle.stage.VehicleSizing;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The drawings for an audience that an engine, a vehicle or several engines have. */
public final class EngineSlides {

    private EngineSlides() {}

    /**
     * @param balance balanced engine
     * @return flow diagram in steps, pressures, powers, and the chamber cut open
     */
    public static List<Slide> of(EngineBalance balance) {
        FlowSlides flow =
                new FlowSlides(FlowOutline.of(DrawnEngine.of(balance), FlowSlides::width, FlowSlides.boxHeight()));
        List<Slide> slides = new ArrayList<>();
        for (FlowSlides.Step step : FlowSlides.Step.values()) {
            if (flow.has(step)) {
                slides.add(new Slide(
                        "flow-" + step.name().toLowerCase(Locale.ROOT),
                        title(step),
                        sentence(step, balance),
                        (pencil, room) -> flow.draw(step, pencil, room)));
            }
        }
        slides.add(LadderSlide.of(balance));
        slides.add(EnergySlide.of(balance));
        slides.add(CutawaySlide.of(balance));
        return slides;
    }

    /**
     * @param balance balanced engine
     * @param vehicle vehicle that its concept describes
     * @return the drawings of the engine, then that of the vehicle
     */
    public static List<Slide> of(EngineBalance balance, Optional<VehicleSizing> vehicle) {
        List<Slide> slides = new ArrayList<>(of(balance));
        vehicle.ifPresent(v -> slides.addAll(of(v)));
        return slides;
    }

    /**
     * @param vehicle sized vehicle
     * @return the vehicle to scale
     */
    public static List<Slide> of(VehicleSizing vehicle) {
        return List.of(VehicleSlide.of(vehicle));
    }

    /**
     * @param engines balanced engines, at least one
     * @return the engines side by side
     */
    public static List<Slide> of(List<EngineBalance> engines) {
        return List.of(ComparisonSlide.of(engines));
    }

    private static String title(FlowSlides.Step step) {
        return switch (step) {
            case TANKS -> "Two tanks";
            case PUMPS -> "Pumps raise the pressure";
            case DRIVE -> "What drives the pumps";
            case JACKET -> "The jacket cools the chamber";
            case CHAMBER -> "The chamber makes thrust";
        };
    }

    private static String sentence(FlowSlides.Step step, EngineBalance b) {
        return switch (step) {
            case TANKS -> {
                List<Station> tanks = b.components().stream()
                        .filter(c -> c.kind() == PartKind.TANK)
                        .map(c -> b.station(c.outlets().get(0)))
                        .toList();
                yield tanks.stream()
                                .map(s -> name(b, s.medium()) + " at "
                                        + Notation.TEMPERATURE.writeWithUnit(s.temperature()) + " and "
                                        + Notation.PRESSURE.writeWithUnit(s.pressure()))
                                .collect(Collectors.joining(" and "))
                        + ": together "
                        + Notation.MASS_FLOW.writeWithUnit(b.engine().massFlow()) + "."
                        + b.concept()
                                .pressurization()
                                .map(EngineSlides::pressurant)
                                .orElse("");
            }
            case PUMPS ->
                "Pumps raise the pressure to "
                        + mainPumps(b)
                                .map(p -> Notation.PRESSURE.writeWithUnit(
                                                p.duty().dischargePressure()) + " ("
                                        + (p.duty()
                                                        .propellant()
                                                        .equals(b.concept().oxidizer())
                                                ? "oxidizer)"
                                                : "fuel)"))
                                .collect(Collectors.joining(" and "))
                        + " and take " + EnergySlide.power(mainPower(b)) + ".";
            case DRIVE -> drive(b);
            case JACKET ->
                b.cooling().stream()
                                .map(j -> "Coolant runs through the chamber wall: it takes up "
                                        + EnergySlide.power(j.heatLoad()) + " and keeps the metal at "
                                        + Notation.TEMPERATURE.writeWithUnit(j.peakWallTemperature()) + " at most")
                                .collect(Collectors.joining("; "))
                        + ".";
            case CHAMBER ->
                "At " + Notation.PRESSURE.writeWithUnit(b.engine().chamberPressure()) + " and "
                        + Notation.TEMPERATURE.writeWithUnit(
                                b.chamber().ideal().chamber().temperature())
                        + " the gas leaves the nozzle with a thrust of "
                        + Notation.FORCE.writeWithUnit(b.engine().vacuumThrust()) + " in vacuum, a specific impulse of "
                        + Notation.fixed(b.engine().vacuumIsp(), 1) + " s.";
        };
    }

    /** What people call a propellant; what is none keeps its own name. */
    private static String name(EngineBalance b, String medium) {
        return Stream.of(b.concept().oxidizer(), b.concept().fuel())
                .filter(propellant -> propellant.id().equals(medium))
                .findFirst()
                .map(Propellant::name)
                .orElse(medium);
    }

    private static Stream<PumpSizing> mainPumps(EngineBalance b) {
        return b.machines().pumps().entrySet().stream()
                .filter(entry -> entry.getKey().role() != PumpKey.Role.BOOST)
                .map(Map.Entry::getValue);
    }

    private static double mainPower(EngineBalance b) {
        return mainPumps(b).mapToDouble(PumpSizing::power).sum();
    }

    private static String pressurant(PressurizationDesign design) {
        return design.feed() == PressurizationDesign.Feed.BLOWDOWN
                ? " Gas closed into the tanks expands and pushes them out."
                : " " + design.gas().name() + " from a bottle at "
                        + Notation.PRESSURE.writeWithUnit(design.bottlePressure()) + " pushes them out.";
    }

    private static String drive(EngineBalance b) {
        String onLiquid = Stream.of(Side.values())
                .filter(side -> b.concept()
                        .feed(side)
                        .boost()
                        .filter(boost -> boost.drive() == BoostDesign.Drive.LIQUID)
                        .isPresent())
                .map(Side::key)
                .collect(Collectors.joining(" and "));
        if (b.turbines().isEmpty()) {
            return "Electric motors give the pumps " + EnergySlide.power(mainPower(b))
                    + b.electric()
                            .map(e -> "; the battery gives " + EnergySlide.power(e.batteryPower()) + " and weighs "
                                    + Notation.MASS.writeWithUnit(e.batteryMass()))
                            .orElse("")
                    + ".";
        }
        return b.turbines().stream()
                        .map(t -> "Gas at "
                                + Notation.TEMPERATURE.writeWithUnit(t.inlet().temperature()) + " gives the " + t.name()
                                + " " + EnergySlide.power(t.power()))
                        .collect(Collectors.joining("; "))
                + "."
                + (onLiquid.isEmpty()
                        ? ""
                        : " Liquid from behind its main pump turns each boost pump (" + onLiquid + ").");
    }
}
