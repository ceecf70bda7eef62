package dev.penstock.turbomachinery.mass;

import static dev.penstock.provenance.Place.Role.BEFORE;
import static dev.penstock.provenance.Place.Role.OUTLET;
import static dev.penstock.provenance.Place.Role.SHAFT;
import static dev.penstock.provenance.Place.fixed;
import static dev.penstock.provenance.Place.given;
import static dev.penstock.provenance.Place.of;
import static dev.penstock.provenance.Place.own;
import static dev.penstock.provenance.Place.stated;
import static dev.penstock.provenance.Place.values;
import static dev.penstock.quantities.Notation.significant;

import dev.penstock.provenance.FigureTable;
import dev.penstock.provenance.ModelCard;
import dev.penstock.provenance.Origin;
import dev.penstock.provenance.Place;
import dev.penstock.quantities.Notation;
import java.util.List;
import java.util.stream.Stream;

/** What the mass of an engine publishes: a part, and the whole. */
public final class MassFigures {

    private static final ModelCard THRUST_TO_WEIGHT = ModelCard.definition(
            "turbomachinery.thrust-to-weight", "Thrust over weight", "F/(m g₀), F in vacuum", "everywhere");

    private static final Place.Source THRUST = fixed("engine.thrust_vacuum_N");
    private static final Place.Source GRAVITY = fixed("constants.standard_gravity_m_s2");
    private static final Place.Source CHAMBERS = stated("engine.chambers");
    private static final Place.Source THROAT = fixed("engine.throat_diameter_m");
    private static final List<Place.Source> FLOW =
            List.of(of(OUTLET, "mass_flow_kg_s"), of(OUTLET, "pressure_Pa"), of(OUTLET, "density_kg_m3"));

    /** Figures of one part. */
    public static final FigureTable<MassItem> ITEMS = FigureTable.named(MassItem::name)
            .word("name", "part", MassItem::name)
            .number("low_kg", "lowest", Notation.MASS, item -> item.mass().low())
            .by(item -> item.part().card(), own("mass_kg"))
            .number("mass_kg", "mass", Notation.MASS, item -> item.mass().mode())
            .from(MassFigures::made)
            .number("high_kg", "highest", Notation.MASS, item -> item.mass().high())
            .by(item -> item.part().card(), own("mass_kg"))
            .word("source", "source", MassItem::source)
            .table();

    /** Headline figures of the whole. */
    public static final FigureTable<EngineMass> TOTALS = FigureTable.<EngineMass>ofOne()
            .number("mass_kg", "engine mass, dry", Notation.MASS, m -> m.total().mode())
            .from((mass, at) -> new Origin(EngineMassModel.CARD, items(mass, "mass_kg")))
            .lessIsBetter()
            .number("mass_low_kg", "engine mass, lowest", Notation.MASS, m -> m.total()
                    .low())
            .from((mass, at) -> Origin.of(EngineMassModel.CARD, own("mass_kg").paths(at), items(mass, "low_kg")))
            .number("mass_high_kg", "engine mass, highest", Notation.MASS, m -> m.total()
                    .high())
            .from((mass, at) -> Origin.of(EngineMassModel.CARD, own("mass_kg").paths(at), items(mass, "high_kg")))
            .number("thrust_to_weight", "thrust to weight", significant("", 3), m -> m.thrustToWeight()
                    .mode())
            .by(THRUST_TO_WEIGHT, THRUST, GRAVITY, own("mass_kg"))
            .moreIsBetter()
            .number("thrust_to_weight_low", "thrust to weight, lowest", significant("", 3), m -> m.thrustToWeight()
                    .low())
            .by(THRUST_TO_WEIGHT, THRUST, GRAVITY, own("mass_high_kg"))
            .number("thrust_to_weight_high", "thrust to weight, highest", significant("", 3), m -> m.thrustToWeight()
                    .high())
            .by(THRUST_TO_WEIGHT, THRUST, GRAVITY, own("mass_low_kg"))
            .table();

    private MassFigures() {}

    private static List<String> items(EngineMass mass, String key) {
        return ITEMS.paths("mass.items", mass.items(), key);
    }

    private static Origin made(MassItem item, Place at) {
        MassPart part = item.part();
        Stream<Place.Source> from = Stream.concat(
                sources(part).stream(),
                MassPart.scaled().contains(part)
                        ? Stream.of(stated(
                                "mass." + part.factor().key(),
                                "mass." + MassPart.ENGINE.factor().key()))
                        : Stream.empty());
        return new Origin(
                part.card(),
                from.flatMap(source -> source.paths(at).stream()).distinct().toList());
    }

    private static List<Place.Source> sources(MassPart part) {
        return switch (part) {
            case CHAMBER ->
                List.of(
                        THROAT,
                        CHAMBERS,
                        fixed("engine.chamber_pressure_Pa"),
                        stated("chamber.", "nozzle.", "cooling."));
            case EXTENSION ->
                List.of(
                        THROAT,
                        CHAMBERS,
                        fixed("engine.area_ratio"),
                        stated("nozzle.", "cooling.extension"),
                        given("end_area_ratio"));
            case INJECTOR -> List.of(THROAT, CHAMBERS, stated("chamber."));
            case TURBOPUMP -> List.of(of(SHAFT, "mass_kg"));
            case BURNER, VALVE -> FLOW;
            case DUCT ->
                List.of(
                        FLOW.get(0),
                        FLOW.get(1),
                        FLOW.get(2),
                        fixed("engine.exit_diameter_m"),
                        THROAT,
                        stated("chamber."));
            case LINE -> List.of(FLOW.get(0), FLOW.get(1), FLOW.get(2), fixed("engine.exit_diameter_m"));
            case ELECTRIC -> List.of(of(SHAFT, "power_delivered_W"), stated("electric."));
            case FRAME -> List.of(THRUST, THROAT, CHAMBERS, fixed("engine.exit_diameter_m"), stated("chamber."));
            case REST -> List.of(values(BEFORE));
            case ENGINE -> List.of();
            case WHOLE -> List.of(THRUST, fixed("engine.area_ratio"));
            case GIMBAL -> List.of(THRUST);
        };
    }
}
