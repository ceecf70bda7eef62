package dev.penstock.cycles.hardware;

import dev.penstock.provenance.FigureTable;
import dev.penstock.provenance.Origin;
import java.util.function.ToIntFunction;

/** What the count of parts publishes. */
public final class HardwareFigures {

    private static final Origin COUNTED =
            Origin.given("counted in the arrangement", "the cycle's arrangement of parts");

    /** Counts of an engine. */
    public static final FigureTable<HardwareCount> ALL = counts();

    private HardwareFigures() {}

    private static FigureTable<HardwareCount> counts() {
        FigureTable.Builder<HardwareCount> table = FigureTable.ofOne();
        count(table, "parts", "parts to build", HardwareCount::parts)
                .briefly("parts")
                .lessIsBetter();
        count(table, "machines", "machines", HardwareCount::machines).lessIsBetter();
        count(table, "pumps", "pumps", HardwareCount::pumps);
        count(table, "turbines", "turbines", HardwareCount::turbines);
        count(table, "motors", "motors", HardwareCount::motors);
        count(table, "rotors", "rotors", HardwareCount::rotors);
        count(table, "gears", "gears", HardwareCount::gears);
        count(table, "burners", "gas generators and preburners", HardwareCount::burners);
        count(table, "chambers", "thrust chambers", HardwareCount::chambers);
        count(table, "injectors", "injectors", HardwareCount::injectors);
        count(table, "jackets", "cooling jackets", HardwareCount::jackets);
        count(table, "valves", "valves", HardwareCount::valves);
        count(table, "moving_parts", "parts that move", HardwareCount::movingParts)
                .briefly("moving")
                .lessIsBetter();
        count(table, "joints", "joints", HardwareCount::joints);
        count(table, "hot_joints", "hot joints", HardwareCount::hotJoints).lessIsBetter();
        return table.table();
    }

    private static FigureTable.Builder<HardwareCount> count(
            FigureTable.Builder<HardwareCount> table, String key, String title, ToIntFunction<HardwareCount> value) {
        return table.count(key, title, value).from((count, at) -> COUNTED);
    }
}
