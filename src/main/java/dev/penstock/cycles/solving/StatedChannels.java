package dev.penstock.cycles.solving;

import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.concept.CoolingCircuit;
import dev.penstock.cycles.sheet.CarriedValues;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * What channels of stated size take of the coolant's pressure at the first guess of its flow. It is computed before any balance is
 * sought, so a refusal can tell of it without claiming that it is the reason.
 */
final class StatedChannels {

    /** Pressure drop over chamber pressure from which a refusal speaks of it (-); usual jackets take 0.1 to 0.5. */
    private static final double MUCH = 1;

    private StatedChannels() {}

    /**
     * @param concept what is asked for
     * @param guess what is taken for granted at first, if that can be computed; asked only where channels are stated
     * @return what the channels take and what would make it less, as an end of a sentence; nothing if that is not much
     */
    static Optional<String> tooNarrow(Concept concept, Supplier<Optional<CarriedValues>> guess) {
        return concept.cooling().stream().allMatch(c -> c.jacket().channels().open())
                ? Optional.empty()
                : guess.get().flatMap(first -> tooNarrow(concept, first));
    }

    private static Optional<String> tooNarrow(Concept concept, CarriedValues first) {
        List<CoolingCircuit> circuits = concept.cooling();
        for (int i = 0; i < circuits.size(); i++) {
            double drop = first.jackets().get(i).pressureDrop();
            if (!circuits.get(i).jacket().channels().open() && drop > MUCH * concept.chamberPressure()) {
                return Optional.of(String.format(
                        Locale.ROOT,
                        "larger %s, or an end_area_ratio nearer to the throat: the channels stated for the %s take about %.0f bar"
                                + " of the coolant's pressure, %.3g times the chamber pressure",
                        keys(circuits.get(i)),
                        circuits.get(i).jacket().circuit().label(),
                        drop / 1e5,
                        drop / concept.chamberPressure()));
            }
        }
        return Optional.empty();
    }

    /** One size everywhere comes from these keys, several from a table. */
    private static String keys(CoolingCircuit circuit) {
        return circuit.jacket().channels().sections().size() == 1
                ? "channel_height, channel_width or channel_count"
                : "channels in its sections";
    }
}
