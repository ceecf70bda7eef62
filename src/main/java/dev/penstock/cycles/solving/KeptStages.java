package dev.penstock.cycles.solving;

import dev.penstock.cycles.concept.MachineChoices;
import dev.penstock.cycles.concept.StageSet;
import dev.penstock.cycles.concept.TurbinePlace;
import dev.penstock.cycles.origin.PartKey;
import dev.penstock.cycles.origin.PumpKey;
import dev.penstock.errors.Warning;
import dev.penstock.turbomachinery.pump.PumpDesign;
import dev.penstock.turbomachinery.turbine.TurbineDesign;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;

/** Says where machines have other stages than their answer would choose: those close no balance, or ask for these in turn. */
final class KeptStages {

    private KeptStages() {}

    /**
     * @param choices machines of a balance, behind its last pass
     * @param pumps pumps that it has
     * @param turbines turbines that it has
     * @return what differs; empty where the answer has the stages that it asks for
     */
    static Optional<Warning> of(MachineChoices choices, Collection<PumpKey> pumps, Collection<TurbinePlace> turbines) {
        StageSet held = choices.stages();
        return choices.askedOtherwise().map(asked -> {
            List<String> differences = new ArrayList<>();
            for (PumpKey key : pumps) {
                PumpDesign is = held.pumps().get(key.id());
                PumpDesign would = asked.pumps().get(key.id());
                if (is != null && would != null) {
                    differ(key.label(), is.type(), is.stages(), would.type(), would.stages(), differences);
                }
            }
            for (TurbinePlace place : turbines) {
                TurbineDesign is = held.turbines().get(PartKey.turbine(place).id());
                TurbineDesign would =
                        asked.turbines().get(PartKey.turbine(place).id());
                if (is != null && would != null) {
                    differ(place.title(), is.type(), is.stages(), would.type(), would.stages(), differences);
                }
            }
            return new Warning(
                            "stages",
                            "numbers of stages are not those that this answer would choose: "
                                    + String.join("; ", differences)
                                    + "; with those no balance closes, or it would choose these again")
                    .asAside();
        });
    }

    private static void differ(
            String machine, Enum<?> type, OptionalInt is, Enum<?> other, OptionalInt would, List<String> differences) {
        if (type != other) {
            differences.add(machine + " " + words(type, is) + ", not " + words(other, would));
        } else if (!is.equals(would)) {
            differences.add(machine + " " + is.orElse(0) + ", not " + would.orElse(0));
        }
    }

    private static String words(Enum<?> type, OptionalInt stages) {
        return stages.orElse(0) + " " + type.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
